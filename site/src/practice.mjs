// Practice. What a browser runs for the first times it runs the slow way; what has run often it compiles well, and keeps so for
// the next visit. So when Python has answered and nobody asks, the same question is answered again, for nobody, until that
// comes no sooner; anew, since what is remembered would leave little to do. A question that somebody does ask waits for one
// such round at most.

const REST = 300; // milliseconds after an answer: whoever is typing is left alone
const LONGEST = 3000; // milliseconds of practice in all
const IDLE = 1000; // milliseconds of practice that made it no sooner
const SOONER = 0.95; // of the best time so far
const WORTH = new Set(["answer", "piece"]); // what is asked as one types

const CLOCK = {
  now: () => performance.now(),
  /** @param {() => void} what @param {number} after */
  later: (what, after) => setTimeout(what, after),
  /** @param {any} timer */
  never: (timer) => clearTimeout(timer),
};

/**
 * `asked` is to be told when a question comes, `answered` when it has been answered.
 * @param {(request: string) => Promise<unknown>} ask
 */
export function makePractice(ask, clock = CLOCK) {
  let [spent, idle, best] = [0, 0, Infinity];
  /** @type {unknown} */
  let timer;

  const asked = () => clock.never(timer);

  /** @param {string} request */
  async function round(request) {
    const began = clock.now();
    await ask(request);
    const took = clock.now() - began;
    spent += took;
    idle = took < best * SOONER ? 0 : idle + took;
    best = Math.min(best, took);
    next(request, 0);
  }

  /** @param {string} request @param {number} after */
  function next(request, after) {
    asked();
    if (spent < LONGEST && idle < IDLE) timer = clock.later(() => void round(request).catch(() => {}), after);
  }

  /** @param {string} text */
  function answered(text) {
    const request = JSON.parse(text);
    if (WORTH.has(request.op)) next(JSON.stringify({ ...request, anew: true }), REST);
  }
  return { asked, answered };
}
