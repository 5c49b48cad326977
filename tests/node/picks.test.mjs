// Narrowing a choice of many by a part of a name.
import assert from "node:assert/strict";
import { test } from "node:test";
import { isNamed, picks } from "../../site/src/state-picks.mjs";

const option = (label) => ({ key: label, label });
const WOODS = ["Ash, black (Fraxinus nigra)", "Ash, white (Fraxinus americana)", "Whitewood (Picea abies)"].map(option);
const SIZES = ["1 x 12", "1 x 2", "2 x 4"].map(option);
const found = (options, typed) => picks(options, typed).map(({ label }) => label);

test("a part of a common or of a botanical name narrows", () => {
  assert.deepEqual(found(WOODS, "fraxinus ni"), ["Ash, black (Fraxinus nigra)"]);
  assert.deepEqual(found(WOODS, "wood"), ["Whitewood (Picea abies)"]);
});

test("whole words come before beginnings, in any order of the words", () => {
  assert.equal(found(WOODS, "WHITE")[0], "Ash, white (Fraxinus americana)");
  assert.deepEqual(found(WOODS, "white ash"), ["Ash, white (Fraxinus americana)"]);
});

test("a number is looked for from its beginning", () => {
  assert.deepEqual(found(SIZES, "1 x 2"), ["1 x 2"]);
  assert.deepEqual(found(SIZES, "12"), ["1 x 12"]);
});

test("a size is found with and without spaces", () => {
  assert.deepEqual(found(SIZES, "2x4"), ["2 x 4"]);
  assert.deepEqual(found(SIZES, "1x12"), ["1 x 12"]);
});

test("nothing typed offers all; nothing like it offers none", () => {
  assert.equal(found(WOODS, " ").length, 3);
  assert.deepEqual(found(WOODS, "xyl"), []);
});

test("a whole name needs no list", () => {
  assert.ok(isNamed(WOODS, "Ash, black (Fraxinus nigra)"));
  assert.ok(!isNamed(WOODS, "ash"));
});
