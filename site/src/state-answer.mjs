/**
 * From the fields to the answers: asks on every change, takes only the reply to what stands in the fields now, and lets a
 * half-typed entry be before it is refused.
 * @typedef {import("./shapes").State} State
 * @typedef {import("./shapes").Reply} Reply
 * @typedef {import("./shapes").Result} Result
 */

import { keyOf, makeAsker } from "./state-ask.mjs";
import { borrowed } from "./state-entry.mjs";
import { keep } from "./state-keep.mjs";
import { makeRest } from "./state-rest.mjs";
import { asking, currentKey, worked } from "./state.mjs";

const RECENT = 3;
/** How long the hand must have rested before an answer is written down, in milliseconds: what it was typed from is kept at once. */
const PAUSE = 300;

/**
 * @param {import("./state-store.mjs").Store} store
 * @param {import("./shapes").Ask} python
 */
export function makeAnswering(store, python) {
  const asker = makeAsker(python, took);
  const { rest, settled, never } = makeRest();
  const keeping = makeRest(PAUSE);

  /** @param {import("./shapes").Request} request @param {Reply} reply */
  function took(request, reply) {
    const key = keyOf(request);
    if (key !== currentKey(store.get())) return;
    if (reply.more) return begun(key, reply.answer);
    if (reply.ok && reply.answer) return answered(key, reply.answer);
    const said = reply.refusals ?? [];
    store.set({ readings: { key, givens: reply.givens ?? {} } });
    rest(
      () => key === currentKey(store.get()) && refused(said, reply.fault ?? (said.length ? "" : "no reason was given")),
    );
    if (!store.get().focus) settled();
  }

  /** The answers are there; drawing and working stay as they were for the moment that the rest takes.
   * @param {string} key @param {Result | undefined} part */
  function begun(key, part) {
    const { shown } = store.get();
    if (!part || shown?.answer.sum !== part.sum) return;
    store.set({ shown: { key, answer: { ...shown.answer, ...part }, kept: false }, refusals: [], fault: "" });
  }

  /** @param {string} key @param {Result} answer */
  function answered(key, answer) {
    store.together(() => {
      store.set({ shown: { key, answer, kept: false }, refusals: [], fault: "" });
      remember(store);
    });
    const { sum, catalogue, recent } = store.get();
    keeping.rest(() => {
      keep(`answer:${sum?.id}`, { version: catalogue.version, key, answer });
      keep("recent", recent);
    });
    rest(() => store.set({ spoken: mainOf(answer) }));
  }

  /** @param {import("./shapes").Refusal[]} refusals @param {string} fault */
  function refused(refusals, fault) {
    store.set({ refusals, fault, spoken: refusals.map((one) => one.text).join(" ") || fault });
  }

  /**
   * Ask what the fields ask now. What is known already is shown at once, and asked all the same: that wakes the sum.
   */
  function ask() {
    const { sum, entry, bench, shown } = store.get();
    if (!sum) return;
    const key = currentKey(store.get());
    const sure = [shown, worked(sum)].find((one) => one?.key === key && !one.kept);
    if (sure) {
      never();
      store.set({ shown: sure, refusals: [], fault: "" });
    }
    asker(asking(sum, entry, bench));
  }
  return { ask, settled, leave: keeping.settled };
}

/** The sum at hand goes to the top of what was open last. @param {import("./state-store.mjs").Store} store */
export function remember(store) {
  const { sum, shown, recent, entry } = store.get();
  if (!sum || !shown) return;
  const lent = borrowed(entry, sum).length > 0;
  const main = shown.answer.answers.find((one) => one.kind !== "rows");
  const top =
    lent || !main
      ? { id: sum.id, label: sum.question, text: "" }
      : { id: sum.id, label: main.label, text: main.text ?? "" };
  const next = [top, ...recent.filter(({ id }) => id !== sum.id)].slice(0, RECENT);
  store.set({ recent: next });
}

/** The main answer as it is read aloud. @param {Result} answer */
function mainOf({ answers }) {
  const main = answers.find((one) => one.kind !== "rows") ?? answers[0];
  return main ? [main.label, main.text, main.left].filter(Boolean).join(", ") : "";
}
