// Practice: the last question is answered again while nobody asks, until it comes no sooner.
import assert from "node:assert/strict";
import { test } from "node:test";
import { makePractice } from "../../site/src/practice.mjs";

const QUESTION = JSON.stringify({ op: "answer", sum: "slope" });

/** The question as it is practised: without the help of what is remembered. */
const anew = (question) => JSON.stringify({ ...JSON.parse(question), anew: true });

/** A practice by a clock that stands still but for the answers, the n-th of which takes `takes(n)` milliseconds. */
function practising(takes) {
  const asked = [];
  let [time, waiting] = [0, null];
  const ask = async (request) => {
    time += takes(asked.length);
    asked.push(request);
  };
  const clock = { now: () => time, later: (what, after) => (waiting = { what, after }), never: () => (waiting = null) };
  const practice = makePractice(ask, clock);
  /** One round, if one is waiting. */
  async function step() {
    const due = waiting;
    waiting = null;
    due?.what();
    await new Promise(setImmediate);
    return due?.after;
  }
  async function all() {
    while ((await step()) !== undefined);
    return asked.length;
  }
  return { practice, asked, step, all };
}

test("it begins a while after an answer and then goes on at once", async () => {
  const { practice, asked, step } = practising(() => 50);
  practice.answered(QUESTION);
  assert.ok((await step()) >= 200);
  assert.equal(await step(), 0);
  assert.deepEqual(asked, [anew(QUESTION), anew(QUESTION)]);
});

test("it ends when a second of it was of no use", async () => {
  const { practice, all } = practising((n) => (n < 5 ? 100 - 10 * n : 50));
  practice.answered(QUESTION);
  assert.equal(await all(), 6 + 1000 / 50); // the sixth is the last that came sooner
});

test("it ends after three seconds, however much sooner each answer comes", async () => {
  const { practice, all } = practising((n) => 400 * 0.9 ** n);
  practice.answered(QUESTION);
  const rounds = await all();
  const spent = (count) => Array.from({ length: count }, (_, n) => 400 * 0.9 ** n).reduce((sum, one) => sum + one, 0);
  assert.ok(spent(rounds) >= 3000 && spent(rounds - 1) < 3000);
  practice.answered(QUESTION);
  assert.equal(await all(), rounds);
});

test("a question stops it, and its answer begins it again with that question", async () => {
  const { practice, asked, step } = practising(() => 50);
  practice.answered(QUESTION);
  await step();
  practice.asked();
  assert.equal(await step(), undefined);
  const another = JSON.stringify({ op: "piece", sum: "wall-shelf" });
  practice.answered(another);
  await step();
  assert.deepEqual(asked, [anew(QUESTION), anew(another)]);
});

test("what is not asked as one types is not practised", async () => {
  const { practice, all } = practising(() => 50);
  practice.answered(JSON.stringify({ op: "backwards", sum: "slope" }));
  assert.equal(await all(), 0);
});

test("a hush, when a field is taken in hand, makes it wait a good while, and it then goes on", async () => {
  const { practice, asked, step } = practising(() => 50);
  practice.answered(QUESTION);
  await step();
  practice.hush();
  assert.ok((await step()) >= 1000);
  assert.equal(await step(), 0);
  assert.deepEqual(asked, [anew(QUESTION), anew(QUESTION), anew(QUESTION)]);
});

test("a hush before anything was answered begins nothing", async () => {
  const { practice, all } = practising(() => 50);
  practice.hush();
  assert.equal(await all(), 0);
});

test("a hush when practice has come to its end does not begin it again", async () => {
  const { practice, all } = practising(() => 50);
  practice.answered(QUESTION);
  const rounds = await all();
  practice.hush();
  assert.equal(await all(), rounds);
});
