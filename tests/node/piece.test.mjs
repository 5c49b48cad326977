// A piece as plain values: what waits, what is taken up, what is undone, and the file it is kept in.
import assert from "node:assert/strict";
import { test } from "node:test";
import { acts, base, lastStep, taken, undoing } from "../../site/src/state-acted.mjs";
import { fileName, fileOf, inFile, pieceIn } from "../../site/src/state-file.mjs";
import * as piece from "../../site/src/state-piece.mjs";

const given = (name, kind = "length") => ({ name, kind, label: name });
const BOX = {
  id: "box",
  moment: "piece",
  givens: ["depth", "back", "front", "angle"].map((name) => given(name)),
  any_of: { count: 2, names: ["back", "front", "angle"] },
  example: { givens: { depth: "6 in", back: "8 in", front: "5 in" } },
};
const BENCH = { unit: "in", mark: "1/16", angles: "tenths", currency: "" };
const fresh = () => piece.begun(BOX, BENCH);

/** What Python would make of it. */
function done(kept) {
  const [next] = kept.pending;
  let entries = base(kept, next);
  for (const one of acts(kept, next, BOX))
    entries = one.act === "undo" ? entries.slice(0, -1) : [...entries, { ...one, unit: "in", mark: "1/16" }];
  return taken(kept, next, { ok: true, record: { ...kept.record, entries } }, BOX);
}
const cut = (kept, name, text) => done(piece.recorded(kept, name, text));
const texts = (kept) => piece.entryOf(kept, BOX).texts;

test("a piece first met holds the example, marked as such, and nothing of it is undone", () => {
  assert.deepEqual(texts(fresh()), BOX.example.givens);
  assert.equal(piece.entryOf(fresh(), BOX).origin.depth, "example");
  assert.equal(lastStep(fresh()), 0);
});

test("what is typed in one hold of a field is one entry, whatever came on the way", () => {
  let kept = fresh();
  for (const text of ["7", "7 ", "7 1/2 in"]) kept = done(piece.typed(kept, "depth", text, "first"));
  assert.equal(kept.record.entries.length, 4);
  assert.equal(kept.record.entries[3].text, "7 1/2 in");
  kept = done(piece.typed(kept, "depth", "8 in", "second"));
  assert.equal(kept.record.entries.length, 5);
});

test("another field typed in the same hold, as a list is chosen from without the caret, is an entry of its own", () => {
  const kept = done(piece.typed(done(piece.typed(fresh(), "depth", "7 in", "one")), "lid", "1 in", "one"));
  assert.deepEqual(kept.record.entries.slice(3).map(({ name }) => name), ["depth", "lid"]);
});

test("a space at the end stays in the field while it is typed", () => {
  const kept = done(piece.typed(fresh(), "depth", "7 ", "one"));
  assert.equal(kept.record.entries[3].text, "7");
  assert.equal(texts(kept).depth, "7 ");
});

test("of any two, the one typed longest ago makes room, is still at hand, and one undo brings it back", () => {
  const kept = done(piece.typed(fresh(), "angle", "14", "one"));
  assert.deepEqual(kept.record.entries.slice(3).map(({ name, text }) => [name, text]), [["back", ""], ["angle", "14"]]);
  assert.equal(texts(kept).back, "8 in");
  const back = done(piece.doing(kept, { act: "undo", name: "", text: "" }));
  assert.deepEqual(back.record, fresh().record);
});

test("what Python refuses stays in its field, and the record is as it was", () => {
  const asked = piece.typed(fresh(), "depth", "wide", "one");
  const kept = taken(asked, asked.pending[0], { ok: false }, BOX);
  assert.deepEqual([kept.record, kept.drafts, kept.pending], [fresh().record, { depth: "wide" }, []]);
  assert.equal(texts(kept).depth, "wide");
});

test("undo goes back to the first entry and says what it will undo", () => {
  let kept = cut(cut(fresh(), "lid", "7 in"), "bottom", "5.123456 in");
  assert.equal(undoing(kept, (name) => name), "bottom cut, 5.12 in");
  for (const _ of [1, 2]) kept = done(piece.doing(kept, { act: "undo", name: "", text: "" }));
  assert.deepEqual(kept.record, fresh().record);
  assert.equal(undoing(kept, (name) => name), "");
});

test("clearing is one step", () => {
  const kept = done(piece.doing(fresh(), { act: "clear", name: "", text: "" }));
  assert.deepEqual([lastStep(kept), undoing(kept, String)], [3, "clearing"]);
});

test("a copy has the cuts, another of the same has none", () => {
  const kept = piece.titled(cut(fresh(), "lid", "7 in"), "Card box");
  const title = piece.nextTitle("Card box", ["Card box", "Card box 2"]);
  assert.equal(title, "Card box 3");
  assert.equal(piece.copied(kept, title).record.entries.length, 4);
  assert.deepEqual(piece.another(kept, title).record.entries, fresh().record.entries);
  assert.notEqual(piece.copied(kept, title).id, kept.id);
});

test("a name that cannot be printed is made printable, and is no longer than a file takes", () => {
  assert.equal(piece.titled(fresh(), "a\u0000b\u00a0c\u200d<b>").record.title, "ab c<b>");
  assert.equal(piece.titled(fresh(), "x".repeat(200)).record.title.length, 80);
});

test("the file is the one the command line writes, to the byte", () => {
  const record = { ...fresh().record, title: "Card “box”", entries: [{ act: "give", name: "depth", text: "6 in", unit: "in", mark: "1/16" }] };
  const lines = [
    "{",
    '  "format": "tenpenny piece",',
    '  "version": 1,',
    '  "piece": "box",',
    '  "title": "Card “box”",',
    '  "bench": {"unit": "in", "mark": "1/16", "angles": "tenths", "currency": ""},',
    '  "entries": [',
    '    {"act": "give", "name": "depth", "text": "6 in", "unit": "in", "mark": "1/16"}',
    "  ]",
    "}",
    "",
  ];
  assert.equal(fileOf(record), lines.join("\n"));
  assert.equal(fileName(record), "card-box.json");
});

test("a damaged or monstrous file is refused with a sentence, and a hostile key is nothing", () => {
  assert.match(inFile("{").refusal, /damaged/);
  assert.match(inFile("[".repeat(3_000_000)).refusal, /too large/);
  const { told } = inFile('{"__proto__": {"piece": "box"}, "piece": "<img>"}');
  assert.equal(pieceIn(told, ["tray", "box"]), "tray");
  assert.equal({}.piece, undefined);
});
