/**
 * The pieces kept on this device, each under a name of its own. A piece that another tab has changed since it was read here is
 * never written over: `save` answers "elsewhere", and the caller keeps its own as another piece.
 * @typedef {import("./shapes-piece").Kept} Kept
 * @typedef {import("./shapes-piece").OnShelf} OnShelf
 */

import { del, get, getMany, keys, update } from "idb-keyval";
import { store } from "./state-keep.mjs";
import { drop, noted, notes, putAway, write } from "./state-note.mjs";
import { newName } from "./state-piece.mjs";

const PREFIX = "piece:";
/** Each page writes notes of its own, so that none is written over by another tab's. */
const HERE = newName();
const PATIENCE = 1500;
const LONGEST = 1_000_000;
/** A deleted piece can be had back for so long, in milliseconds: thirty days. */
const BACK = 30 * 24 * 3600 * 1000;

/** How each piece stood since the store last surely held it: while much is entered at once, none of that is another tab's.
 * @type {Map<string, string[]>} */
const under = new Map();

/** What was recalled from a note: whatever is entered here after that stands on it. @type {Set<string>} */
const recalled = new Set();

/** Keep a piece that stood at `was` when it was read; it is noted before anything else.
 * @param {Kept} kept @param {string | string[]} was @returns {Promise<"kept" | "elsewhere" | "shut">} */
export async function save(kept, was) {
  const name = PREFIX + kept.id;
  const stood = [...new Set([...(under.get(kept.id) ?? []), ...[was].flat()])];
  under.set(kept.id, stood);
  const note = write(`${name} ${HERE}`, { kept, was: stood }, LONGEST);
  let clash = false;
  try {
    await update(
      name,
      (/** @type {Kept | undefined} */ old) => ((clash = isAnothers(old, kept, stood)) ? /** @type {Kept} */ (old) : kept),
      store(),
    );
    putAway(`${name} ${HERE}`, note);
    const since = under.get(kept.id) ?? [];
    under.set(kept.id, since.includes(kept.rev) ? since.slice(since.indexOf(kept.rev)) : []);
    return clash ? "elsewhere" : "kept";
  } catch {
    return "shut";
  }
}

/** @param {Kept | undefined} old @param {Kept} kept @param {string[]} stood */
function isAnothers(old, kept, stood) {
  return !!old && old.rev !== kept.rev && !stood.includes(old.rev);
}

/** A piece that was kept, or was just being kept when a page was closed.
 * @param {string} id @returns {Promise<Kept | undefined>} */
export async function recallPiece(id) {
  const old = await stored(PREFIX + id);
  const late = unwritten(id).filter(({ kept, was }) => !isAnothers(old, kept, was)).sort((a, b) => b.kept.at - a.kept.at)[0];
  if (!late) return old;
  under.set(id, late.was);
  recalled.add(late.kept.rev);
  return late.kept;
}

/** @param {string} name @returns {Promise<Kept | undefined>} */
async function stored(name) {
  try {
    return await get(name, store());
  } catch {
    return undefined; // the store is shut
  }
}

/** Every piece that is kept, those written last first; pieces deleted long ago are let go of.
 * @returns {Promise<OnShelf[]>} */
export async function allPieces() {
  return (await Promise.race([read(), new Promise((go) => setTimeout(go, PATIENCE, []))])) ?? [];
}

/** What was being written when a page was closed, of one piece or of all: each with how it stood before, and its note.
 * @param {string} [id] @returns {{ kept: Kept, was: string[], name: string }[]} */
export function unwritten(id = "") {
  const found = notes(PREFIX + id).map((name) => ({ name, ...noted(name) }));
  return found.filter(({ kept }) => kept?.record).map(({ name, kept, was }) => ({ name, kept, was: [was].flat() }));
}

/** Whether what is open here has gone on from what a note says. @param {Kept} kept @param {Kept | null} now */
export function isBehind(kept, now) {
  return now?.id === kept.id && now.rev !== kept.rev && recalled.has(kept.rev);
}

/** A note that is not wanted any more: what it says is kept elsewhere by now. @param {{ kept: Kept, name: string }} late */
export function setAside({ kept, name }) {
  if (noted(name)?.kept?.rev === kept.rev) drop(name);
}

/** A line of the list. @param {Kept} kept @returns {OnShelf} */
export function onShelf({ id, at, gone, record }) {
  const cuts = new Map(record.entries.filter((one) => one.act !== "give").map((one) => [one.name, one.act !== "uncut"]));
  return { id, piece: record.piece, title: record.title, at, gone, cuts: [...cuts.values()].filter(Boolean).length };
}

/** @returns {Promise<OnShelf[]>} */
async function read() {
  try {
    const names = (await keys(store())).filter((key) => typeof key === "string" && key.startsWith(PREFIX));
    const found = /** @type {Kept[]} */ (await getMany(names, store())).filter((one) => one?.record);
    const old = found.filter((one) => one.gone && one.gone < Date.now() - BACK);
    for (const { id } of old) await Promise.all([del(PREFIX + id, store()), del(`stood:${id}`, store())]);
    return found.filter((one) => !old.includes(one)).map(onShelf).sort((a, b) => b.at - a.at);
  } catch {
    return [];
  }
}
