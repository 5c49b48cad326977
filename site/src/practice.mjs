// Practice. What a browser runs for the first times it runs the slow way; what has run often it compiles well, and keeps so for
// the next visit. So when Python has answered and nobody asks, the same question is answered again, for nobody, until that
// comes no sooner; anew, since what is remembered would leave little to do. A question that somebody does ask waits for one
// such round at most, and seldom for any: when a field is taken in hand, the page says so, and there is a lull.

/** What the page says when a question is about to be typed. */
export const HUSH = "hush";

const REST = 300; // milliseconds after an answer: whoever is typing is left alone
const LULL = 2000; // milliseconds after a hush
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
 * `asked` is to be told when a question comes, `answered` when it has been answered, `hush` when one is about to be typed.
 * @param {(request: string) => Promise<unknown>} ask
 */
export function makePractice(ask, clock = CLOCK) {
  let [spent, idle, best] = [0, 0, Infinity];
  /** @type {unknown} */
  let timer;
  /** The question to practise. */
  let latest = "";

  const asked = () => clock.never(timer);

  async function round() {
    const began = clock.now();
    await ask(latest);
    const took = clock.now() - began;
    spent += took;
    idle = took < best * SOONER ? 0 : idle + took;
    best = Math.min(best, took);
    next(0);
  }

  /** @param {number} after */
  function next(after) {
    asked();
    if (spent < LONGEST && idle < IDLE) timer = clock.later(() => void round().catch(() => {}), after);
  }

  /** @param {string} text */
  function answered(text) {
    const request = JSON.parse(text);
    if (!WORTH.has(request.op)) return;
    latest = JSON.stringify({ ...request, anew: true });
    next(REST);
  }

  const hush = () => latest && next(LULL);
  return { asked, answered, hush };
}
