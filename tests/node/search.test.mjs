// Finding a sum by a question in one's own words.
import assert from "node:assert/strict";
import { test } from "node:test";
import { search } from "../../site/src/state-search.mjs";

const sum = (id, title, question, asks, purpose = "") => ({ id, title, question, asks, purpose });
const SUMS = [
  sum("slope", "Slope", "How steep is it, and how long along the slope?", [
    "angle from rise and run",
    "pitch of a lid",
  ]),
  sum("nail", "Nail", "How long a nail, and what hole for it?", [
    "which nail for this thickness",
    "size of the pilot hole",
  ]),
  sum("board-measure", "Board measure", "How many board feet is it, and what does it cost?", [
    "what will the wood cost",
  ]),
  sum("tally", "Tally", "What do these sizes come to?", ["add fractions of an inch", "take one length from another"]),
];
const found = (typed) => search(SUMS, typed).map(({ id }) => id);

test("the question itself finds its sum first", () => {
  for (const { id, question } of SUMS) assert.equal(found(question)[0], id);
});

test("plurals and -ing make no difference", () => {
  assert.equal(found("nails")[0], "nail");
  assert.equal(found("adding fractions")[0], "tally");
});

test("another word of the trade finds it too", () => {
  assert.equal(found("price of timber")[0], "board-measure");
  assert.equal(found("bore")[0], "nail");
});

test("a word half typed is enough", () => {
  assert.equal(found("frac")[0], "tally");
});

test("nothing typed, or nothing in common, finds nothing", () => {
  assert.deepEqual(found(""), []);
  assert.deepEqual(found("  ?! "), []);
  assert.deepEqual(found("xylophone"), []);
});
