// Our own keys: marks are counted as on a rule.
import assert from "node:assert/strict";
import { test } from "node:test";
import { keysFor, pressed } from "../../site/src/state-keys.mjs";

const INCHES = { unit: "in", mark: "1/16", angles: "tenths", currency: "" };
const MILLIMETRES = { unit: "mm", mark: "mm", angles: "tenths", currency: "" };
const names = (kind, bench, units) =>
  keysFor({ kind, units }, bench)
    .flat()
    .map(({ label }) => label);

/** The inches in a plain mixed number. */
function inches(text) {
  const [, whole, top, bottom] = /^(?:(\d+)(?: |$))?(?:(\d+)\/(\d+))?$/.exec(text);
  return Number(whole ?? 0) + Number(top ?? 0) / Number(bottom ?? 1);
}

test("each touch of a mark is one more of it, whatever stands there", () => {
  for (const parts of [2, 4, 8, 16, 32]) {
    let text = "";
    for (let touched = 1; touched <= 70; touched += 1) {
      text = pressed({ mark: parts }, text);
      assert.equal(inches(text), touched / parts, text);
    }
  }
});

test("marks of several sizes add up, and are in lowest terms", () => {
  assert.equal(pressed({ mark: 16 }, "5 1/4"), "5 5/16");
  assert.equal(pressed({ mark: 8 }, "5 7/8"), "6");
  assert.equal(pressed({ mark: 4 }, "1/4"), "1/2");
});

test("a mark goes before the unit of inches, and apart from other words", () => {
  assert.equal(pressed({ mark: 8 }, "3 in"), "3 1/8 in");
  assert.equal(pressed({ mark: 8 }, '5 3/8"'), '5 1/2"');
  assert.equal(pressed({ mark: 8 }, "5 ft"), "5 ft 1/8");
});

test("a mark leaves a decimal as it is, to be refused in words", () => {
  assert.equal(pressed({ mark: 8 }, "5.5"), "5.5 1/8");
});

test("units stand apart by one space, and rubbing out takes one sign", () => {
  assert.equal(pressed({ text: " mm" }, "16"), "16 mm");
  assert.equal(pressed({ text: " mm" }, "16 "), "16 mm");
  assert.equal(pressed({ act: "rub" }, "16 m"), "16 ");
});

test("the keys fit the kind of entry and the rule in hand", () => {
  assert.ok(names("length", INCHES).includes("1/16"));
  assert.ok(!names("length", INCHES).includes("1/32"));
  assert.ok(names("length", { ...INCHES, mark: "1/64" }).includes("1/32"));
  assert.ok(!names("length", MILLIMETRES).includes("½"));
  assert.ok(names("reckoning", INCHES).includes("÷"));
  assert.ok(names("angle", INCHES).includes("°"));
  assert.deepEqual(names("count", INCHES), []);
  assert.deepEqual(names("mass", INCHES, ["kg", "lb"]).slice(0, 2), ["kg", "lb"]);
});

test("many units have a row to themselves; below nothing there is a minus", () => {
  const rows = keysFor({ kind: "pressure", units: ["GPa", "kPa", "MPa", "psi"] }, INCHES);
  assert.deepEqual(rows[0].map(({ label }) => label), ["GPa", "kPa", "MPa", "psi"]);
  const cold = keysFor({ kind: "temperature", units: ["°C", "°F"], limit: { low: "-10 °C" } }, INCHES);
  assert.deepEqual(cold.flat().slice(0, 3).map(({ label }) => label), ["−", "°C", "°F"]);
});
