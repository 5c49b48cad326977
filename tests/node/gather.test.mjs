// Writing that is put off: once for all that changes meanwhile, and nothing left unwritten.
import assert from "node:assert/strict";
import { test } from "node:test";
import { makeGathering } from "../../site/src/state-gather.mjs";

/** A store that says what was written, and a clock that goes when it is told to. */
function gathering(write = async () => {}) {
  const [written, due] = [[], []];
  const put = makeGathering(
    (name, value) => (written.push([name, value]), write(name, value)),
    (go, after) => due.push({ go, after }),
  );
  const pass = async () => {
    due.splice(0).forEach(({ go }) => go());
    await new Promise(setImmediate);
  };
  return { put, written, due, pass };
}

test("what is typed letter by letter is written once, as it stood last", async () => {
  const { put, written, due, pass } = gathering();
  const all = ["1", "12", "12 in"].map((text) => put("entry:slope", text, 250));
  assert.deepEqual([written, due.length, due[0].after], [[], 1, 250]);
  await pass();
  await Promise.all(all);
  assert.deepEqual(written, [["entry:slope", "12 in"]]);
});

test("each name waits by itself, and waits anew after it was written", async () => {
  const { put, written, pass } = gathering();
  put("entry:slope", "1", 250);
  put("bench", "mm", 250);
  await pass();
  put("entry:slope", "2", 250);
  await pass();
  assert.deepEqual(written, [["entry:slope", "1"], ["bench", "mm"], ["entry:slope", "2"]]);
});

test("what has no note is written at once, and takes along what waits under its name", async () => {
  const { put, written, pass } = gathering();
  const earlier = put("entry:tally", "short", 250);
  await put("entry:tally", "long", 0);
  await earlier;
  await pass();
  assert.deepEqual(written, [["entry:tally", "long"]]);
});

test("a shut store is told to all who wait, and the next value is tried again", async () => {
  let shut = true;
  const { put, written, pass } = gathering(async () => {
    if (shut) throw new Error("shut");
  });
  const both = [put("bench", 1, 250), put("bench", 2, 250)].map((one) => assert.rejects(one, /shut/));
  await pass();
  await Promise.all(both);
  shut = false;
  const again = put("bench", 3, 250);
  await pass();
  await again;
  assert.deepEqual(written, [["bench", 2], ["bench", 3]]);
});
