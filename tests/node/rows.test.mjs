// A list as one text, and back.
import assert from "node:assert/strict";
import { test } from "node:test";
import { cells, changed, kept, plainRows } from "../../site/src/state-rows.mjs";

test("a text as Python writes it falls into its cells", () => {
  assert.deepEqual(cells("3 x 16 mm x 1.8 m; 1 × 1 in × 4 ft", 3), [
    ["3", "16 mm", "1.8 m"],
    ["1", "1 in", "4 ft"],
  ]);
});

test("nothing yet is one empty row", () => {
  assert.deepEqual(cells("", 2), [["", ""]]);
});

test("whatever is typed into a cell stays in it", () => {
  for (const text of ["", "2 x 4", "a;b", "1 ft 3"]) {
    const rows = changed(
      [
        ["1", "2"],
        ["3", "4"],
      ],
      1,
      0,
      text,
    );
    assert.deepEqual(cells(kept(rows), 2), [
      ["1", "2"],
      [text, "4"],
    ]);
  }
});

test("a tab or a new line that is pasted in becomes a space", () => {
  assert.deepEqual(changed([["", ""]], 0, 1, "1\t2\n3"), [["", "1 2 3"]]);
});

test("a list of one column keeps its empty rows while it is typed", () => {
  assert.deepEqual(cells(kept([["5"], [""]]), 1), [["5"], [""]]);
});

test("Python reads the rows that hold something", () => {
  assert.equal(
    plainRows(
      kept([
        ["2", " 1 in "],
        ["", ""],
        ["3", ""],
      ]),
    ),
    "2 x 1 in; 3 x ",
  );
});

test("where the first cell is free text, an x may stand in it", () => {
  assert.deepEqual(cells("Box lid x 70 mm; X-ray film ✕ 4 in; x 30 mm", 2, true), [
    ["Box lid", "70 mm"],
    ["X-ray film", "4 in"],
    ["", "30 mm"],
  ]);
});
