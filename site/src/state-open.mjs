/**
 * Opening a page: its data fetched, what was typed there before recalled.
 * @typedef {import("./shapes").State} State
 * @typedef {import("./shapes").Sum} Sum
 * @typedef {import("./shapes").Catalogue} Catalogue
 */

import { keyOf } from "./state-ask.mjs";
import { carried, typed } from "./state-entry.mjs";
import { recall } from "./state-keep.mjs";
import { entryOf, keyOfPiece, typed as typedIn } from "./state-piece.mjs";
import { asking, BENCH, opened } from "./state.mjs";

/** JSON from an address of ours; raises when it cannot be had. The catalogue has one name for good: it is asked anew.
 * @param {string} address @returns {Promise<any>} */
export async function fetched(address) {
  const cache = address === "catalogue.json" ? "no-cache" : "default";
  const reply = await fetch(new URL(address, document.baseURI), { cache });
  if (!reply.ok) throw new Error(`${address}: ${reply.status}`);
  return await reply.json();
}

/** The data of a page; null for the first page.
 * @param {string} page @param {Catalogue} catalogue @returns {Promise<Sum | null>} */
export async function dataOf(page, catalogue) {
  const listed = catalogue.sums.find(({ id }) => id === page);
  return listed ? await fetched(listed.data) : null;
}

/**
 * What was settled for every page: how this maker measures, and what was open last.
 * @returns {Promise<Partial<State>>}
 */
export async function recalledBench() {
  const [bench, recent] = await Promise.all([recall("bench"), recall("recent")]);
  return { bench: { ...BENCH, ...bench }, recent: recent ?? [] };
}

/**
 * What was left of a sum on this device: its fields, its last answer.
 * @param {Sum | null} sum
 * @returns {Promise<Left>}
 */
export async function recalledSum(sum) {
  const [entry, last] = sum ? await Promise.all([recall(`entry:${sum.id}`), recall(`answer:${sum.id}`)]) : [];
  return { entry, last };
}

/**
 * @typedef {{ version: string, key: string, answer: import("./shapes").Result | null, told: import("./shapes-piece").Settled }} Stood
 * @typedef {{ kept?: import("./shapes-piece").Kept | null, stood?: Stood, entry?: import("./shapes").Entry, last?: { version: string, key: string, answer: import("./shapes").Result } }} Left
 */
/** @typedef {{ texts: Record<string, string>, from: string }} Brought */

/** The part of the state that belongs to a sum as it was left. Texts in `over` were typed since; those `brought` came in the
 * link that led here.
 * @param {Sum | null} sum
 * @param {Left} left
 * @param {Pick<State, "bench" | "catalogue">} state
 * @param {Record<string, string>} over
 * @param {Brought | null} brought */
export function reopened(sum, left, { bench, catalogue }, over, brought) {
  const open = opened(sum);
  if (!sum) return open;
  if (left.kept) return built(sum, left.kept, left.stood, { bench, catalogue }, { ...brought?.texts, ...over });
  const own = Object.entries(over).reduce((all, [name, text]) => typed(all, name, text), left.entry ?? open.entry);
  const entry = brought ? carried(own, known(sum, brought.texts), brought.from) : own;
  const key = keyOf(asking(sum, entry, bench));
  const fits = left.last?.version === catalogue.version && left.last.key === key && open.shown?.key !== key;
  return { ...open, entry, shown: fits && left.last ? { key, answer: left.last.answer, kept: true } : open.shown };
}

/** The same for a piece, whose texts wait until Python has taken them up.
 * @param {Sum} sum
 * @param {import("./shapes-piece").Kept} left
 * @param {Stood | undefined} stood
 * @param {Pick<State, "bench" | "catalogue">} state
 * @param {Record<string, string>} over */
function built(sum, left, stood, { bench, catalogue }, over) {
  const open = opened(sum);
  const kept = Object.entries(known(sum, over)).reduce((all, [name, text]) => typedIn(all, name, text, ""), left);
  const key = keyOfPiece(kept, bench);
  const told = { ...open, kept, entry: entryOf(kept, sum) };
  if (!stood?.answer || stood.version !== catalogue.version || stood.key !== key) return told;
  const shown = open.shown?.key === key ? open.shown : { key, answer: stood.answer, kept: true };
  return { ...told, shown, settled: { key: "", told: stood.told } };
}

/** @param {Sum} sum @param {Record<string, string>} texts */
function known(sum, texts) {
  return Object.fromEntries(Object.entries(texts).filter(([name]) => sum.givens.some((given) => given.name === name)));
}
