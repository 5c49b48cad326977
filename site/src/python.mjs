// Asking Python, which runs in a thread of its own. A question asked before Python wakes waits for it; a worker that dies or
// falls silent is started once more and asked again; after that the page says so, and goes on without.

/**
 * @typedef {"waking" | "ready" | "failed"} Waking
 * @typedef {import("./shapes").Request} Request
 * @typedef {import("./shapes").Reply} Reply
 * @typedef {{ text: string, settle: (reply: Reply) => void }} Question
 */

const LONGEST_START = 60_000;
const LONGEST_ANSWER = 10_000;
const LOST = "Python stopped on this page and did not start again. What you typed is kept: open the page again to go on.";

/** @type {(value?: unknown) => void} */
let settle;

/** Settled once Python is awake, or has failed: from then on the line is free for other things. */
export const settled = new Promise((done) => void (settle = done));

/**
 * Start Python. `onState(state, say)` is told "waking", "ready", and "failed" with a sentence.
 * `ask` never rejects: when Python is lost the reply is not ok, and its `fault` is that sentence.
 * @param {{ onState: (state: Waking, say: string) => void, start?: () => Worker }} wanted
 */
export function startPython({ onState, start = startWorker }) {
  /** @type {Map<number, Question>} */
  const questions = new Map();
  /** @type {Worker | null} */
  let worker = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let clock;
  let ready = false;
  let starts = 0;
  let last = 0;

  begin();
  return { ask };

  /** @param {Request} request @returns {Promise<Reply>} */
  function ask(request) {
    const id = ++last;
    return new Promise((done) => {
      questions.set(id, { text: JSON.stringify({ ...request, id }), settle: done });
      if (!worker) return lose();
      if (ready) put(id);
    });
  }

  function begin() {
    starts += 1;
    ready = false;
    onState("waking", "");
    const made = (worker = start());
    made.onmessage = ({ data }) => made === worker && hear(JSON.parse(data));
    made.onerror = (event) => {
      event.preventDefault();
      if (made === worker) again();
    };
    wait(LONGEST_START);
  }

  /** @param {Reply & { id: number, ready?: boolean, failed?: string }} told */
  function hear(told) {
    if (told.failed) return again();
    if (told.ready) wake();
    else answer(told);
    watch();
  }

  function wake() {
    ready = true;
    for (const id of questions.keys()) put(id);
    onState("ready", "");
    settle();
  }

  /** @param {Reply & { id: number }} reply */
  function answer({ id, ...reply }) {
    questions.get(id)?.settle(reply);
    questions.delete(id);
    if (worker && !questions.size) starts = 1; // all is answered: what went wrong before is behind us
  }

  /** @param {number} id */
  function put(id) {
    worker?.postMessage(questions.get(id)?.text);
    if (questions.size === 1) watch();
  }

  /** The clock runs while a question is out, and begins again with each answer. */
  function watch() {
    wait(questions.size ? LONGEST_ANSWER : 0);
  }

  /** @param {number} time */
  function wait(time) {
    clearTimeout(clock);
    if (time) clock = setTimeout(again, time);
  }

  /** The worker is lost: once more, with the same questions, or not at all. */
  function again() {
    worker?.terminate();
    worker = null;
    wait(0);
    if (starts < 2) return begin();
    lose();
    onState("failed", LOST);
    settle();
  }

  function lose() {
    for (const id of questions.keys()) answer({ id, ok: false, refusals: [], fault: LOST });
  }
}

function startWorker() {
  return new Worker(new URL(WORKER, import.meta.url), { type: "module", name: "python" });
}
