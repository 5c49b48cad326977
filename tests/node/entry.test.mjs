// What stands in the fields, and every change to it.
import assert from "node:assert/strict";
import { test } from "node:test";
import * as entry from "../../site/src/state-entry.mjs";

const given = (name, kind = "length") => ({ name, kind, label: name });
const SLOPE = {
  givens: ["rise", "run", "length", "angle"].map((name) => given(name)),
  any_of: { count: 2, names: ["rise", "run", "length", "angle"] },
  example: { givens: { rise: "3 in", run: "1 ft" } },
};
const BOARDS = {
  givens: [given("boards", "rows"), given("price")],
  any_of: null,
  example: { givens: { boards: "2 x 1 in", price: "9" } },
};

test("a sum first met holds its example, marked as such", () => {
  const first = entry.fresh(SLOPE);
  assert.deepEqual(entry.sent(first, SLOPE), { rise: "3 in", run: "1 ft" });
  assert.deepEqual(entry.borrowed(first, SLOPE), ["rise", "run"]);
});

test("a text typed is one's own, and the rest of the example is still told of", () => {
  const typed = entry.typed(entry.fresh(SLOPE), "rise", "4 in");
  assert.deepEqual(entry.sent(typed, SLOPE), { rise: "4 in", run: "1 ft" });
  assert.deepEqual(entry.borrowed(typed, SLOPE), ["run"]);
});

test("of any two, the two typed last are sent and the others are set aside", () => {
  const typed = entry.typed(entry.fresh(SLOPE), "angle", "30");
  assert.deepEqual(entry.sent(typed, SLOPE), { run: "1 ft", angle: "30" });
  assert.deepEqual(entry.setAside(typed, SLOPE), ["rise", "length"]);
});

test("a text set aside is not lost: it counts again when the later one is emptied, or is asked for", () => {
  const typed = entry.typed(entry.fresh(SLOPE), "angle", "30");
  assert.deepEqual(entry.sent(entry.typed(typed, "angle", " "), SLOPE), { rise: "3 in", run: "1 ft" });
  assert.deepEqual(entry.sent(entry.reused(typed, "rise"), SLOPE), { rise: "3 in", angle: "30" });
});

test("with fewer than are wanted nothing is set aside", () => {
  const typed = entry.typed(entry.cleared(entry.fresh(SLOPE)), "angle", "30");
  assert.deepEqual(entry.setAside(typed, SLOPE), []);
});

test("clearing is undone, and the undoing too", () => {
  const typed = entry.typed(entry.fresh(SLOPE), "rise", "4 in");
  const cleared = entry.cleared(typed);
  assert.deepEqual(entry.sent(cleared, SLOPE), {});
  assert.deepEqual(entry.sent(entry.undone(cleared), SLOPE), { rise: "4 in", run: "1 ft" });
  assert.deepEqual(entry.sent(entry.undone(entry.undone(cleared)), SLOPE), {});
});

test("the example put in over one's own numbers is undone", () => {
  const typed = entry.typed(entry.fresh(SLOPE), "rise", "4 in");
  const example = entry.exampled(typed, SLOPE);
  assert.deepEqual(entry.sent(example, SLOPE), { rise: "3 in", run: "1 ft" });
  assert.equal(entry.sent(entry.undone(example), SLOPE).rise, "4 in");
});

test("what another sum brings says where it came from, takes the place of what was there, and is undone", () => {
  const brought = entry.carried(entry.fresh(SLOPE), { angle: "14.5" }, "Bevel gauge");
  assert.deepEqual(entry.sent(brought, SLOPE), { run: "1 ft", angle: "14.5" });
  assert.equal(brought.origin.angle, "Bevel gauge");
  assert.deepEqual(entry.borrowed(brought, SLOPE), ["run"]);
  assert.deepEqual(entry.sent(entry.undone(brought), SLOPE), { rise: "3 in", run: "1 ft" });
});

test("a list is sent as Python reads it, without its empty rows", () => {
  const typed = entry.typed(entry.fresh(BOARDS), "boards", "3\t1 in\t\n\t\t\n1\t2 in\t");
  assert.equal(entry.sent(typed, BOARDS).boards, "3 x 1 in; 1 x 2 in");
});

test("no change is made in place", () => {
  const first = Object.freeze(entry.fresh(SLOPE));
  for (const part of Object.values(first)) Object.freeze(part);
  entry.undone(entry.cleared(entry.carried(entry.typed(first, "rise", "1"), { run: "2" }, "Tally")));
  assert.deepEqual(first, entry.fresh(SLOPE));
});
