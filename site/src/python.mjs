// Asking Python, which runs in a thread of its own. A question asked before Python wakes waits there for it; a worker that dies or
// falls silent is started once more and asked again; after that the page says so, and goes on without.

import { HUSH } from "./practice.mjs";
import { startThread } from "./thread.mjs";

/**
 * @typedef {"waking" | "ready" | "failed"} Waking
 * @typedef {import("./shapes").Request} Request
 * @typedef {import("./shapes").Reply} Reply
 * @typedef {(reply: Reply) => void} Told
 * @typedef {{ text: string, answer: Told, sooner: Told, part?: Reply }} Question
 * @typedef {{ onState: (state: Waking, say: string) => void, start?: (page: string, ordinary: boolean) => Worker, page?: string }} Wanted
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
 * `sooner` is told what is known before the whole reply is. `ask` never rejects: when Python is lost the reply is not ok, and its `fault` is that sentence.
 * `hush` says that a question is about to be typed.
 * @param {Wanted} wanted
 */
export function startPython(wanted) {
  const python = new Python(wanted);
  python.begin();
  return {
    ask: (/** @type {Request} */ request, /** @type {Told} */ sooner = () => {}) => python.ask(request, sooner),
    hush: () => python.worker?.postMessage(HUSH),
  };
}

class Python {
  /** @type {Worker | null} */
  worker = null;
  /** The questions that are not answered yet, and of each what has been told of its answer. @type {Map<number, Question>} */
  questions = new Map();
  ready = false;
  starts = 0;
  last = 0;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  clock;

  /** @param {Wanted} wanted */
  constructor({ onState, start = startThread, page = "" }) {
    this.page = page;
    this.onState = onState;
    this.start = start;
  }

  /** @param {Request} request @param {Told} sooner @returns {Promise<Reply>} */
  ask(request, sooner) {
    const id = ++this.last;
    return new Promise((answer) => {
      this.questions.set(id, { text: JSON.stringify({ ...request, id }), answer, sooner });
      if (this.worker) this.put(id);
      else this.lose();
    });
  }

  begin() {
    this.starts += 1;
    this.ready = false;
    this.onState("waking", "");
    const made = (this.worker = this.start(this.page, this.starts > 1));
    made.onmessage = ({ data }) => this.worker === made && this.hear(JSON.parse(data));
    made.onerror = (event) => {
      event.preventDefault();
      if (this.worker === made) this.again();
    };
    for (const id of this.questions.keys()) this.put(id);
    this.wait(LONGEST_START);
  }

  /** @param {Reply & { id: number, more?: boolean, ready?: boolean, failed?: string }} told */
  hear(told) {
    if (told.failed) return this.again();
    if (told.ready) this.wake();
    else if (told.more) this.begun(told);
    else this.answer(told);
    this.wait(this.questions.size ? LONGEST_ANSWER : 0);
  }

  wake() {
    this.ready = true;
    this.onState("ready", "");
    settle();
  }

  /** @param {number} id */
  put(id) {
    this.worker?.postMessage(this.questions.get(id)?.text);
    if (this.ready && this.questions.size === 1) this.wait(LONGEST_ANSWER);
  }

  /** @param {Reply & { id: number }} reply */
  begun({ id, ...reply }) {
    const question = this.questions.get(id);
    if (!question) return;
    question.part = reply;
    question.sooner(reply);
  }

  /** @param {Reply & { id: number }} reply */
  answer({ id, ...reply }) {
    const question = this.questions.get(id);
    question?.answer(joined(question.part, reply));
    this.questions.delete(id);
    if (this.worker && !this.questions.size) this.starts = 1; // all is answered: what went wrong before is behind us
  }

  /** The worker is lost: once more, with the same questions, or not at all. */
  again() {
    this.worker?.terminate();
    this.worker = null;
    this.wait(0);
    if (this.starts < 2) return this.begin();
    this.lose();
    this.onState("failed", LOST);
    settle();
  }

  lose() {
    for (const id of this.questions.keys()) this.answer({ id, ok: false, refusals: [], fault: LOST });
  }

  /** Give the worker so long to say something; 0 for as long as it likes. @param {number} time */
  wait(time) {
    clearTimeout(this.clock);
    if (time) this.clock = setTimeout(() => this.again(), time);
  }
}

/** What was told sooner and the rest, as one. @param {Reply | undefined} part @param {Reply} rest @returns {Reply} */
function joined(part, rest) {
  if (!part?.answer || !rest.answer) return rest;
  const { more: _, ...told } = part;
  return { ...told, ...rest, answer: { ...told.answer, ...rest.answer } };
}
