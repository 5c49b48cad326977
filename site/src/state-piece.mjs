/**
 * A piece that is being built, and every change to it, as plain values. What is entered waits in `pending` until Python has taken
 * it up, so that it is kept from the first moment; what Python refuses stays in `drafts`. Nothing typed is lost.
 * @typedef {import("./shapes").Sum} Sum
 * @typedef {import("./shapes").Bench} Bench
 * @typedef {import("./shapes-piece").Kept} Kept
 * @typedef {import("./shapes-piece").Saved} Saved
 * @typedef {import("./shapes-piece").Pending} Pending
 */

import { givenIn } from "./state-acted.mjs";

const FORMAT = "tenpenny piece";
const VERSION = 1;
const LONGEST_TITLE = 80;

/** Whether a sum is a piece, which is built and not only answered. @param {Sum | null} sum */
export function isPiece(sum) {
  return sum?.moment === "piece";
}

/** A name that nothing else has. */
export function newName() {
  return Array.from(crypto.getRandomValues(new Uint32Array(3)), (part) => part.toString(36)).join("");
}

/** A piece around a record.
 * @param {Saved} record @param {Partial<Kept>} [told] @returns {Kept} */
export function around(record, told = {}) {
  const fresh = { id: newName(), rev: "", at: 0, gone: 0, steps: [], floor: 0, hold: "", lent: [], drafts: {}, pending: [] };
  return { ...fresh, record, ...told };
}

/** A piece as first met, with the worked example's sizes in it, each marked as such.
 * @param {Sum} sum @param {Bench} bench */
export function begun(sum, bench) {
  const given = Object.entries(sum.example.givens);
  const entries = given.map(([name, text]) => ({ act: /** @type {const} */ ("give"), name, text, unit: bench.unit, mark: bench.mark }));
  const record = { format: FORMAT, version: VERSION, piece: sum.id, title: "", bench, entries };
  return around(record, { floor: entries.length, lent: given.map(([name]) => name) });
}

/** A piece that has changed, and when. @param {Kept} kept @returns {Kept} */
export function stamped(kept) {
  return { ...kept, rev: newName(), at: Date.now() };
}

/** The same in a piece of its own, cuts and all. @param {Kept} kept @param {string} title */
export function copied(kept, title) {
  return titled({ ...kept, id: newName(), rev: "", gone: 0 }, title);
}

/** The same givens in a piece of its own, with nothing cut. @param {Kept} kept @param {string} title */
export function another(kept, title) {
  const given = givenIn(kept.record.entries);
  const entries = kept.record.entries.filter((one) => one.act === "give" && given.get(one.name) === one);
  const { lent, drafts } = kept;
  const typed = Object.fromEntries(Object.entries(drafts).filter(([field]) => !field.startsWith("cut:")));
  return titled(around({ ...kept.record, entries }, { floor: entries.length, lent, drafts: typed }), title);
}

/** The name that the maker gives it: what cannot be printed is left out.
 * @param {Kept} kept @param {string} title @returns {Kept} */
export function titled(kept, title) {
  const clean = title.replace(/\p{Zs}/gu, " ").replace(/[\p{C}\p{Zl}\p{Zp}]/gu, "");
  return { ...kept, record: { ...kept.record, title: [...clean].slice(0, LONGEST_TITLE).join("") } };
}

/** A name for the next of its kind: "Card box 2" after "Card box". @param {string} title @param {string[]} taken */
export function nextTitle(title, taken) {
  const bare = (title || "Piece").replace(/ \d+$/, "");
  for (let number = 2; ; number += 1) if (!taken.includes(`${bare} ${number}`)) return `${bare} ${number}`;
}

/** A text typed for a given: it waits for Python, and takes the place of what was typed before in the same hold of the field.
 * @param {Kept} kept @param {string} name @param {string} text @param {string} held @returns {Kept} */
export function typed(kept, name, text, held) {
  const hold = held && `${name} ${held}`;
  const waiting = kept.pending.filter((one) => !(one.act === "give" && one.name === name && one.hold === hold));
  const lent = kept.lent.filter((one) => one !== name);
  return { ...kept, lent, drafts: without(kept.drafts, name), pending: [...waiting, { act: "give", name, text, hold }] };
}

/** Something done: it waits for Python. @param {Kept} kept @param {Omit<Pending, "hold">} what @returns {Kept} */
export function doing(kept, what) {
  return { ...kept, pending: [...kept.pending, { ...what, hold: "" }] };
}

/** What came out, while it is being typed. @param {Kept} kept @param {string} name @param {string} text @returns {Kept} */
export function drafted(kept, name, text) {
  return { ...kept, drafts: { ...kept.drafts, [`cut:${name}`]: text } };
}

/** A size recorded as cut, the draft of it taken up. @param {Kept} kept @param {string} name @param {string} text */
export function recorded(kept, name, text) {
  return doing({ ...kept, drafts: without(kept.drafts, `cut:${name}`) }, { act: "cut", name, text });
}

/** What stands in the fields, as for any sum.
 * @param {Kept} kept @param {Sum} sum @returns {import("./shapes").Entry} */
export function entryOf(kept, sum) {
  /** @type {Map<string, string>} */
  const texts = new Map();
  kept.record.entries.forEach((one, at, all) => {
    if (one.act !== "give" || isSetAside(all, at, sum)) return;
    texts.delete(one.name);
    texts.set(one.name, one.text);
  });
  for (const [name, text] of Object.entries(kept.drafts)) if (!name.startsWith("cut:")) texts.set(name, text);
  for (const one of kept.pending) if (one.act === "give") texts.delete(one.name), texts.set(one.name, one.text);
  const origin = Object.fromEntries(kept.lent.map((name) => [name, "example"]));
  return { texts: Object.fromEntries(texts), order: [...texts.keys()], origin, undo: null };
}

/** Whether a given was emptied only because another of "any two of" was given after it: then its text is still at hand.
 * @param {import("./shapes-piece").Did[]} entries @param {number} at @param {Sum} sum */
function isSetAside(entries, at, sum) {
  const names = sum.any_of?.names ?? [];
  const [one, next] = [entries[at], entries[at + 1]];
  return !!one && !!next && !one.text && names.includes(one.name) && next.act === "give" && names.includes(next.name) && !!next.text;
}

/** The one name of how it stands: two with the same name have the same answer.
 * @param {Kept} kept @param {Bench} bench */
export function keyOfPiece({ record, pending, drafts }, bench) {
  const typed = Object.entries(drafts).filter(([name]) => !name.startsWith("cut:"));
  const { unit, mark, angles, currency } = bench;
  const entries = record.entries.map((one) => [one.act, one.name, one.text, one.unit, one.mark]);
  return JSON.stringify([record.piece, entries, pending, typed, unit, mark, angles, currency]);
}

/** @param {Record<string, string>} record @param {string} name */
function without(record, name) {
  return Object.fromEntries(Object.entries(record).filter(([key]) => key !== name));
}
