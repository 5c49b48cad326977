/**
 * What stands in a sum's fields, and every change to it, as plain values: no change is made in place, none loses a text.
 * @typedef {import("./shapes").Entry} Entry
 * @typedef {import("./shapes").Sum} Sum
 */

import { plainRows } from "./state-rows.mjs";

export const EXAMPLE = "example";

/** @type {Entry} */
const EMPTY = { texts: {}, order: [], origin: {}, undo: null };

/** The fields as first met: the worked example's texts, each marked as such.
 * @param {Sum} sum @returns {Entry} */
export function fresh(sum) {
  const names = Object.keys(sum.example.givens);
  return { texts: { ...sum.example.givens }, order: names, origin: every(names, EXAMPLE), undo: null };
}

/** A text typed: it becomes the maker's own and the last in order.
 * @param {Entry} entry @param {string} name @param {string} text @returns {Entry} */
export function typed(entry, name, text) {
  return {
    ...entry,
    texts: { ...entry.texts, [name]: text },
    order: last(entry.order, [name]),
    origin: without(entry.origin, name),
  };
}

/** A text that was set aside counts again, as if typed last.
 * @param {Entry} entry @param {string} name @returns {Entry} */
export function reused(entry, name) {
  return { ...entry, order: last(entry.order, [name]) };
}

/** Everything cleared, to be undone.
 * @param {Entry} entry @returns {Entry} */
export function cleared(entry) {
  return { ...EMPTY, undo: before(entry, "clearing") };
}

/** The example's texts put in, to be undone.
 * @param {Entry} entry @param {Sum} sum @returns {Entry} */
export function exampled(entry, sum) {
  return { ...fresh(sum), undo: before(entry, "the example") };
}

/** Texts brought from another sum, to be undone. Texts of the example left beside them stay marked.
 * @param {Entry} entry @param {Record<string, string>} texts @param {string} from @returns {Entry} */
export function carried(entry, texts, from) {
  const names = Object.keys(texts);
  return {
    texts: { ...entry.texts, ...texts },
    order: last(entry.order, names),
    origin: { ...entry.origin, ...every(names, from) },
    undo: before(entry, `what came from ${from}`),
  };
}

/** The entry as it was before; doing it twice comes back.
 * @param {Entry} entry @returns {Entry} */
export function undone(entry) {
  return entry.undo ? { ...entry.undo, undo: before(entry, "that") } : entry;
}

/** The texts Python is asked with: every text, but of "any two of" only the two typed last.
 * @param {Entry} entry @param {Sum} sum @returns {Record<string, string>} */
export function sent(entry, sum) {
  const left = new Set(setAside(entry, sum));
  const told = sum.givens.filter((given) => !left.has(given.name)).map((given) => [given.name, asked(given, entry)]);
  return Object.fromEntries(told.filter(([, text]) => text));
}

/** Of "any two of": the names whose text does not count, or which are answered.
 * @param {Entry} entry @param {Sum} sum @returns {string[]} */
export function setAside(entry, sum) {
  if (!sum.any_of) return [];
  const { count, names } = sum.any_of;
  const filled = entry.order.filter((name) => names.includes(name) && entry.texts[name]?.trim());
  const kept = filled.slice(-count);
  return kept.length < count ? [] : names.filter((name) => !kept.includes(name));
}

/** The names whose text is still the example's and counts.
 * @param {Entry} entry @param {Sum} sum @returns {string[]} */
export function borrowed(entry, sum) {
  const counted = sent(entry, sum);
  return sum.givens.map((given) => given.name).filter((name) => entry.origin[name] === EXAMPLE && name in counted);
}

/** @param {import("./shapes").Given} given @param {Entry} entry */
function asked(given, entry) {
  const text = entry.texts[given.name] ?? "";
  return given.kind === "rows" ? plainRows(text) : text.trim();
}

/** @param {Entry} entry @param {string} label @returns {Entry["undo"]} */
function before({ texts, order, origin }, label) {
  return { label, texts, order, origin };
}

/** @param {string[]} order @param {string[]} names */
function last(order, names) {
  return [...order.filter((name) => !names.includes(name)), ...names];
}

/** @param {string[]} names @param {string} value */
function every(names, value) {
  return Object.fromEntries(names.map((name) => [name, value]));
}

/** @param {Record<string, string>} record @param {string} name */
function without(record, name) {
  return Object.fromEntries(Object.entries(record).filter(([key]) => key !== name));
}
