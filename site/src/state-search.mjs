/**
 * Finding a sum by what one wants to know: words in common with its questions, the rarer the better, and best when many of
 * them stand in one question.
 * @typedef {import("./shapes").Listed} Listed
 * @typedef {{ sum: Listed, fields: { weight: number, words: string[] }[], phrases: string[][] }} Entry
 * @typedef {{ entries: Entry[], common: Map<string, number> }} Index
 */

import { GROUPS, words } from "./words.mjs";

const WEIGHTS = /** @type {const} */ ({ title: 4, question: 3, asks: 3, purpose: 1 });
const FIELDS = /** @type {const} */ (["title", "question", "asks", "purpose"]);
/** What a whole question of the sum's own is worth beside its words one by one. */
const PHRASE = 6;
/** Of the best score, what the last that is shown must have. */
const LEAST = 0.4;

/** @type {WeakMap<Listed[], Index>} */
const known = new WeakMap();

/** The sums that share most with what is typed, best first; none for nothing typed.
 * @param {Listed[]} sums @param {string} typed @returns {Listed[]} */
export function search(sums, typed) {
  const index = known.get(sums) ?? indexed(sums);
  known.set(sums, index);
  const wanted = [...new Set(words(typed))];
  const scored = index.entries.map((entry) => ({ sum: entry.sum, score: score(entry, wanted, index) }));
  const best = Math.max(...scored.map((one) => one.score));
  return scored
    .filter((one) => one.score > 0 && one.score >= best * LEAST)
    .sort((a, b) => b.score - a.score)
    .map((one) => one.sum);
}

/** @param {Listed[]} sums @returns {Index} */
function indexed(sums) {
  const entries = sums.map((sum) => ({
    sum,
    fields: FIELDS.map((field) => ({ weight: WEIGHTS[field], words: words([sum[field]].flat().join(" ")) })),
    phrases: [sum.title, sum.question, ...sum.asks].map(words),
  }));
  const common = new Map();
  for (const { fields } of entries)
    for (const word of new Set(fields.flatMap((one) => one.words))) common.set(word, (common.get(word) ?? 0) + 1);
  return { entries, common };
}

/** @param {Entry} entry @param {string[]} wanted @param {Index} index */
function score({ fields, phrases }, wanted, { entries, common }) {
  const rare = (/** @type {string} */ word) => Math.log(1 + entries.length / (common.get(word) ?? 1));
  const found = wanted.map((word) => Math.max(...fields.map((one) => one.weight * nearest(one.words, word))));
  if (found.filter(Boolean).length * 2 < wanted.length) return 0;
  const apart = wanted.reduce((all, word, at) => all + rare(word) * (found[at] ?? 0), 0);
  return apart + PHRASE * Math.max(...phrases.map((phrase) => likeness(phrase, wanted, rare)));
}

/** How much of what is wanted stands in one question, less for what else stands there.
 * @param {string[]} phrase @param {string[]} wanted @param {(word: string) => number} rare */
function likeness(phrase, wanted, rare) {
  const shared = wanted.reduce((all, word) => all + rare(word) * nearest(phrase, word), 0);
  const weight = (/** @type {string[]} */ some) => some.reduce((all, word) => all + rare(word), 0);
  return shared ? (shared * shared * 2) / (weight(wanted) + weight(phrase)) : 0;
}

/**
 * How near the nearest of the words comes: 1 the same, less for a beginning or another word for it.
 * @param {string[]} among
 * @param {string} word
 */
function nearest(among, word) {
  if (among.includes(word)) return 1;
  if (word.length > 2 && among.some((one) => one.startsWith(word))) return 0.7;
  const group = GROUPS.get(word);
  return group !== undefined && among.some((one) => GROUPS.get(one) === group) ? 0.5 : 0;
}
