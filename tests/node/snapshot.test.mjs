// The file that holds a memory: put back as it was, and refused when it is not what it says.
import assert from "node:assert/strict";
import { test } from "node:test";
import { hexadecimal, opened, packed } from "../../site/src/snapshot.mjs";

const PAGE = 4096;
const build = Uint8Array.from({ length: 32 }, (_, at) => at);
const state = new TextEncoder().encode('{"odd":"length"}');

/** A memory of ten pages, in some of which something was written since it was fresh. */
function memories() {
  const fresh = new Uint8Array(10 * PAGE).fill(7, 0, 3 * PAGE);
  const heap = fresh.slice();
  heap.set([1, 2, 3], PAGE + 5);
  heap.fill(0, 2 * PAGE, 2 * PAGE + 9);
  heap.fill(9, 6 * PAGE, 8 * PAGE);
  return { fresh, heap };
}

const made = () => packed(memories().heap, memories().fresh, { state, build });

test("over a fresh memory, the file gives the memory that it was made of", () => {
  const { fresh, heap } = memories();
  const found = opened(made().buffer, hexadecimal(build));
  found.apply(fresh);
  assert.deepEqual(fresh, heap);
  assert.equal(found.memory, heap.length);
  assert.deepEqual(found.state, state);
});

test("only pages that differ are in the file", () => {
  assert.equal(made().length, 64 + 2 * 8 + 16 + 4 * PAGE);
});

test("the same memory makes the same file", () => {
  assert.deepEqual(made(), made());
});

test("a change to any part of the file is noticed", () => {
  const { length } = made();
  for (const at of [0, 9, 13, 17, 21, 25, 40, 66, 81, 100, 64 + 32 + 5, length - PAGE, length - 1]) {
    const file = made();
    file[at] ^= 4;
    assert.throws(() => opened(file.buffer, hexadecimal(build)), /not a snapshot|a snapshot (of|that)/, `byte ${at}`);
  }
});

test("a file that was cut short, or is empty, or is something else, is not opened", () => {
  const file = made();
  for (const length of [0, 3, 64, 80, PAGE, file.length - 4]) {
    assert.throws(() => opened(file.slice(0, length).buffer, hexadecimal(build)));
  }
  assert.throws(() => opened(new TextEncoder().encode("<!doctype html>".repeat(20)).buffer, hexadecimal(build)));
});

test("a snapshot of another build of Pyodide is not opened", () => {
  assert.throws(() => opened(made().buffer, "00".repeat(32)), /another build of Pyodide/);
});
