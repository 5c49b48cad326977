// Notes of what is being written to the store.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { noted, putAway, write } from "../../site/src/state-note.mjs";

beforeEach(() => {
  const held = new Map();
  globalThis.localStorage = {
    getItem: (name) => held.get(name) ?? null,
    setItem: (name, text) => void held.set(name, text),
    removeItem: (name) => void held.delete(name),
  };
});

test("a value that was never put away is there the next time", () => {
  write("entry:slope", { texts: { rise: "3 in" } });
  assert.deepEqual(noted("entry:slope"), { texts: { rise: "3 in" } });
  assert.equal(noted("entry:bevel"), undefined);
});

test("a note is put away when its value is kept, but not a later one", () => {
  const first = write("bench", 1);
  const second = write("bench", 2);
  putAway("bench", first);
  assert.equal(noted("bench"), 2);
  putAway("bench", second);
  assert.equal(noted("bench"), undefined);
});

test("a long value gets no note, and an old shorter one does not stand in for it", () => {
  write("answer:slope", "x");
  const note = write("answer:slope", "x".repeat(30_000));
  assert.equal(note, "");
  assert.equal(noted("answer:slope"), undefined);
});

test("a shut store is no fault", () => {
  globalThis.localStorage = undefined;
  assert.equal(write("bench", 1), "");
  assert.equal(noted("bench"), undefined);
  putAway("bench", "");
});

test("a damaged note is as none", () => {
  globalThis.localStorage.setItem("tenpenny bench", "{");
  assert.equal(noted("bench"), undefined);
});
