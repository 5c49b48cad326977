// A piece told in two parts: how it stands is taken up with the first, the drawings follow.
import assert from "node:assert/strict";
import { test } from "node:test";
import { makeBuilding } from "../../site/src/state-build.mjs";
import { begun, recorded } from "../../site/src/state-piece.mjs";
import { makeStore } from "../../site/src/state-store.mjs";
import { standing } from "../../site/src/state.mjs";

const BENCH = { unit: "in", mark: "1/16", angles: "tenths", currency: "" };
const SUM = { id: "box", moment: "piece", givens: [], answers: [], any_of: null, example: { givens: {} } };
const TOLD = { whole: true, sizes: [], givens: [], gaps: [] };
const CHANGES = { sizes: [], gaps: [], alike: [], broken: [], impossible: [] };
const OLD = { sum: "box", answers: ["8 in"], figure: "old", working: "old" };

/** A piece being built with a Python that the test plays: `asked` holds each question with the way to answer it. */
function atTheBench(shown = { key: "", answer: OLD, kept: false }) {
  const [asked, saved] = [[], []];
  const store = makeStore(() => {});
  const python = (request, sooner) => new Promise((answer) => asked.push({ request, sooner, answer }));
  const building = makeBuilding(store, python, (kept) => saved.push(kept));
  const kept = begun(SUM, BENCH);
  store.begin({ kept, sum: SUM, bench: BENCH, shown, catalogue: { version: "1" }, refusals: [], fault: "", focus: "", settled: null, changed: null });
  building.put((one) => recorded(one, "back", "7 in"));
  return { store, asked, saved, building };
}

/** The reply to a question, in two parts. */
function partsOf({ request }) {
  const entries = [...request.record.entries, ...request.do.map((one) => ({ ...one, unit: "in", mark: "1/16" }))];
  const reply = { ok: true, record: { ...request.record, entries }, settled: TOLD, changes: CHANGES };
  const part = { ...reply, more: true, answer: { sum: "box", answers: ["7 in"] } };
  return { part, whole: { ...reply, answer: { ...part.answer, figure: "new", working: "new" } } };
}
const soon = () => new Promise(setImmediate);

test("how it stands is taken up and kept with the first part, and drawn with the second", async () => {
  const { store, asked, saved } = atTheBench();
  const { part, whole } = partsOf(asked[0]);
  asked[0].sooner(part);
  assert.deepEqual(store.get().shown.answer, { ...OLD, answers: ["7 in"] });
  assert.equal(store.get().settled.told, TOLD);
  assert.deepEqual(store.get().kept.pending, []);
  assert.equal(saved.at(-1).record.entries.at(-1).text, "7 in");
  asked[0].answer(whole);
  await soon();
  assert.deepEqual(store.get().shown.answer, whole.answer);
  assert.equal(standing(store.get()), "now");
  assert.equal(asked.length, 1);
});

test("an entry made between the parts is asked for after them", async () => {
  const { store, asked, building } = atTheBench();
  const { part, whole } = partsOf(asked[0]);
  asked[0].sooner(part);
  building.put((one) => recorded(one, "front", "5 in"));
  assert.equal(standing(store.get()), "waiting");
  asked[0].answer(whole);
  await soon();
  assert.equal(store.get().shown.answer.figure, "new");
  assert.deepEqual(asked[1].request.do, [{ act: "cut", name: "front", text: "5 in" }]);
  assert.equal(asked[1].request.record.entries.length, 1);
});

test("parts told again, by a Python that was started again, are taken up once", async () => {
  const { store, asked, saved } = atTheBench();
  const { part, whole } = partsOf(asked[0]);
  asked[0].sooner(part);
  const count = saved.length;
  asked[0].sooner(part);
  asked[0].answer(whole);
  await soon();
  assert.equal(saved.length, count);
  assert.equal(store.get().kept.record.entries.length, 1);
});

test("a drawing that fails is a fault, and the entry stays taken up", async () => {
  const { store, asked } = atTheBench();
  asked[0].sooner(partsOf(asked[0]).part);
  asked[0].answer({ ok: false, refusals: [], fault: "lost the pencil" });
  await soon();
  assert.equal(store.get().fault, "lost the pencil");
  assert.equal(standing(store.get()), "refused");
  assert.equal(store.get().kept.record.entries.length, 1);
});

test("another piece opened between the parts is not drawn over", async () => {
  const { store, asked } = atTheBench();
  const { part, whole } = partsOf(asked[0]);
  asked[0].sooner(part);
  store.set({ kept: begun(SUM, BENCH), shown: { key: "its own", answer: OLD, kept: false } });
  asked[0].answer(whole);
  await soon();
  assert.equal(store.get().shown.answer, OLD);
});

test("with nothing shown of this piece yet, all of it is taken up at once", async () => {
  const { store, asked } = atTheBench(null);
  const { part, whole } = partsOf(asked[0]);
  asked[0].sooner(part);
  assert.equal(store.get().kept.pending.length, 1);
  asked[0].answer(whole);
  await soon();
  assert.equal(store.get().shown.answer.figure, "new");
  assert.deepEqual(store.get().kept.pending, []);
});
