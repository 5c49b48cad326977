/**
 * What the page knows, from its first moment; the same at build time and in the browser, so that both draw the same page.
 * @typedef {import("./shapes").State} State
 * @typedef {import("./shapes").Sum} Sum
 * @typedef {import("./shapes").Bench} Bench
 */

import { keyOf } from "./state-ask.mjs";
import { fresh, sent } from "./state-entry.mjs";
import { begun, isPiece, keyOfPiece } from "./state-piece.mjs";

/** How a maker measures until they say otherwise; the same as calc's own. @type {Bench} */
export const BENCH = { unit: "in", mark: "1/16", angles: "tenths", currency: "" };

/** The page as it is first drawn.
 * @param {string} page @param {import("./shapes").Catalogue} catalogue @param {Sum | null} sum @returns {State} */
export function initial(page, catalogue, sum) {
  return {
    page,
    catalogue,
    ...opened(sum),
    bench: BENCH,
    look: "",
    search: "",
    recent: [],
    keeps: true,
    wide: true,
    python: "waking",
    said: "",
    pieces: [],
    removed: "",
    offline: { whole: false, fetching: null, update: false, problem: "" },
  };
}

/** The parts of the state that belong to one open sum, with its worked example in it.
 * @param {Sum | null} sum */
export function opened(sum) {
  const entry = sum ? fresh(sum) : { texts: {}, order: [], origin: {}, undo: null };
  return {
    sum,
    entry,
    shown: sum && worked(sum),
    readings: { key: "", givens: {} },
    refusals: [],
    fault: "",
    focus: "",
    spoken: "",
    kept: sum && isPiece(sum) ? begun(sum, BENCH) : null,
    settled: null,
    changed: null,
    notice: "",
    about: null,
  };
}

/** What a page is called in the browser's own frame. @param {Sum | null} sum */
export function titleOf(sum) {
  return sum ? `${sum.title} · Tenpenny` : "Tenpenny: sums for the bench";
}

/** The worked example as an answer that needs no asking. @param {Sum} sum @returns {import("./shapes").Shown} */
export function worked(sum) {
  const key = isPiece(sum) ? keyOfPiece(begun(sum, BENCH), BENCH) : keyOf(asking(sum, fresh(sum), BENCH));
  return { key, answer: sum.worked, kept: false };
}

/** The question that the fields ask now.
 * @param {Sum} sum
 * @param {import("./shapes").Entry} entry
 * @param {Bench} bench
 * @returns {import("./shapes").Request} */
export function asking(sum, entry, bench) {
  return { op: "answer", sum: sum.id, givens: sent(entry, sum), bench };
}

/** The last question named: it is asked after many times for each drawing. @type {{ of: unknown[], key: string }} */
let named = { of: [], key: "" };

/** The name of that question; "" on a page without a sum. @param {State} state */
export function currentKey({ sum, entry, bench, kept }) {
  const of = [sum, entry, bench, kept];
  if (of.some((one, at) => one !== named.of[at])) {
    named = { of, key: kept ? keyOfPiece(kept, bench) : sum ? keyOf(asking(sum, entry, bench)) : "" };
  }
  return named.key;
}

/** How the answers on the page stand to the fields: "now", "kept" from an earlier visit, "waiting", "refused", or
 * "open" where a piece is not decided or does not hold together.
 * @param {State} state @returns {"now" | "kept" | "waiting" | "refused" | "open"} */
export function standing(state) {
  if (state.refusals.length || state.fault) return "refused";
  if (state.settled?.told && !state.settled.told.whole && state.settled.key === currentKey(state)) return "open";
  if (state.shown?.key !== currentKey(state)) return "waiting";
  return state.shown.kept ? "kept" : "now";
}
