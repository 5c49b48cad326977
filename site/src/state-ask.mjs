/**
 * Asking Python: one question under way and the latest waiting, so that typing never queues up.
 * @typedef {import("./shapes").Request} Request
 * @typedef {import("./shapes").Reply} Reply
 */

/** The one name of a question: two with the same name have the same answer.
 * @param {Request} request @returns {string} */
export function keyOf({ sum, givens, bench }) {
  return JSON.stringify([
    sum,
    Object.entries(givens).sort(([a], [b]) => (a < b ? -1 : 1)),
    bench.unit,
    bench.mark,
    bench.angles,
    bench.currency,
  ]);
}

/** A function to ask with. `took` is called with each reply, and with what is known of one sooner (it says "more"); questions
 * overtaken while one was under way are never asked.
 * @param {import("./shapes").Ask} ask @param {(request: Request, reply: Reply) => void} took
 * @returns {(request: Request) => void} */
export function makeAsker(ask, took) {
  let busy = false;
  /** @type {Request | null} */
  let next = null;
  async function run() {
    busy = true;
    while (next) {
      const request = next;
      next = null;
      const reply = await ask(request, (part) => took(request, part)).catch(failed);
      took(request, reply);
    }
    busy = false;
  }
  return (request) => {
    next = request;
    if (!busy) run();
  };
}

/** @param {unknown} error @returns {Reply} */
function failed(error) {
  return { ok: false, refusals: [], fault: error instanceof Error ? error.message : String(error) };
}
