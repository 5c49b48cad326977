/**
 * The pieces kept on this device, each under a name of its own. A piece that another tab has changed since it was read here is
 * never written over: `save` answers "elsewhere", and the caller keeps its own as another piece.
 * @typedef {import("./shapes-piece").Kept} Kept
 * @typedef {import("./shapes-piece").OnShelf} OnShelf
 */

import { del, get, getMany, keys, update } from "idb-keyval";
import { store } from "./state-keep.mjs";
import { noted, notes, putAway, write } from "./state-note.mjs";

const PREFIX = "piece:";
const PATIENCE = 1500;
/** A deleted piece can be had back for so long, in milliseconds: thirty days. */
const BACK = 30 * 24 * 3600 * 1000;

/** Keep a piece that stood at `was` when it was read; it is noted before anything else.
 * @param {Kept} kept @param {string} was @returns {Promise<"kept" | "elsewhere" | "shut">} */
export async function save(kept, was) {
  const name = PREFIX + kept.id;
  const note = write(name, { kept, was });
  let clash = false;
  try {
    await update(
      name,
      (/** @type {Kept | undefined} */ old) => ((clash = isAnothers(old, kept, was)) ? /** @type {Kept} */ (old) : kept),
      store(),
    );
    putAway(name, note);
    return clash ? "elsewhere" : "kept";
  } catch {
    return "shut";
  }
}

/** @param {Kept | undefined} old @param {Kept} kept @param {string} was */
function isAnothers(old, kept, was) {
  return !!old && old.rev !== was && old.rev !== kept.rev;
}

/** A piece that was kept. @param {string} id @returns {Promise<Kept | undefined>} */
export async function recallPiece(id) {
  try {
    return await get(PREFIX + id, store());
  } catch {
    return noted(PREFIX + id)?.kept;
  }
}

/** Every piece that is kept, those written last first; pieces deleted long ago are let go of.
 * @returns {Promise<OnShelf[]>} */
export async function allPieces() {
  return (await Promise.race([read(), new Promise((go) => setTimeout(go, PATIENCE, []))])) ?? [];
}

/** What was being written when a page was closed: each with what it was written over.
 * @returns {{ kept: Kept, was: string }[]} */
export function unwritten() {
  return notes(PREFIX).map(noted).filter((one) => one?.kept?.record);
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
