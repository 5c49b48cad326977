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

/** A piece opened, with a Python that the test plays: `asked` holds each question with the way to answer it. */
function opened() {
  const [asked, saved] = [[], []];
  const store = makeStore(() => {});
  const python = (request, sooner) => new Promise((answer) => asked.push({ request, sooner, answer }));
  const building = makeBuilding(store, python, (kept) => saved.push(kept));
  const shown = { key: "", answer: { ...OLD, figure: "another's" }, kept: false };
  const fresh = { shown, catalogue: { version: "1" }, refusals: [], fault: "", focus: "", settled: null, changed: null };
  store.begin({ kept: begun(SUM, BENCH), sum: SUM, bench: BENCH, ...fresh });
  building.ask();
  return { store, asked, saved, building };
}

/** The same, drawn once, when the back has just been cut. */
async function cutting() {
  const bench = opened();
  const { asked, building } = bench;
  asked[0].answer({ ...partsOf(asked[0]).whole, answer: OLD });
  await soon();
  asked.length = 0;
  building.put((one) => recorded(one, "back", "7 in"));
  return bench;
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
  const { store, asked, saved } = await cutting();
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
  const { store, asked, building } = await cutting();
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
  const { store, asked, saved } = await cutting();
  const { part, whole } = partsOf(asked[0]);
  asked[0].sooner(part);
  const count = saved.length;
  asked[0].sooner(part);
  asked[0].answer(whole);
  await soon();
  assert.equal(saved.length, count);
  assert.equal(store.get().kept.record.entries.length, 1);
});

for (const [what, reply] of [
  ["fails", { ok: false, refusals: [], fault: "lost the pencil" }],
  ["is refused", { ok: false, refusals: [{ text: "lost the pencil" }] }],
])
  test(`a drawing that ${what} is a fault, and the entry stays taken up`, async () => {
    const { store, asked } = await cutting();
    asked[0].sooner(partsOf(asked[0]).part);
    asked[0].answer(reply);
    await soon();
    assert.equal(store.get().fault, "lost the pencil");
    assert.equal(standing(store.get()), "refused");
    assert.equal(store.get().kept.record.entries.length, 1);
  });

test("another piece opened between the parts is not drawn over, nor told of a fault", async () => {
  const { store, asked } = await cutting();
  asked[0].sooner(partsOf(asked[0]).part);
  store.set({ kept: begun(SUM, BENCH), shown: { key: "its own", answer: OLD, kept: false } });
  asked[0].answer({ ok: false, refusals: [], fault: "lost the pencil" });
  await soon();
  assert.equal(store.get().shown.answer, OLD);
  assert.equal(store.get().fault, "");
});

test("a piece just opened is taken up at once and whole: what is drawn until then is another's", async () => {
  const { store, asked } = opened();
  const { part, whole } = partsOf(asked[0]);
  asked[0].sooner(part);
  assert.equal(standing(store.get()), "waiting");
  asked[0].answer(whole);
  await soon();
  assert.equal(store.get().shown.answer.figure, "new");
  assert.equal(standing(store.get()), "now");
});

test("a reply by a rule that has been changed since is not taken for one by the new", async () => {
  const { store, asked } = await cutting();
  store.set({ bench: { ...BENCH, unit: "mm", mark: "mm" } });
  asked[0].answer(partsOf(asked[0]).whole);
  await soon();
  assert.equal(standing(store.get()), "waiting");
  assert.equal(asked[1].request.bench.unit, "mm");
});

test("a reply to how it stood before another tab changed it is let go of, and it is asked again", async () => {
  const { store, asked } = opened();
  const { kept } = store.get();
  const entries = [{ act: "cut", name: "back", text: "6 in", unit: "in", mark: "1/16" }];
  store.set({ kept: { ...kept, rev: "theirs", record: { ...kept.record, entries } } });
  const { part, whole } = partsOf(asked[0]);
  asked[0].sooner(part);
  asked[0].answer(whole);
  await soon();
  assert.deepEqual(asked[1].request.record.entries, entries);
  assert.equal(standing(store.get()), "waiting");
});
