/**
 * What is kept on this device between visits, in the browser's own store. A page may be gone before the store has written, so
 * what is under way also stands in a note that is written at once; the store is then written to when the hand rests. Where the store is shut everything goes on: nothing is
 * recalled, and `keep` answers false.
 */

import { createStore, get, set } from "idb-keyval";
import { makeGathering } from "./state-gather.mjs";
import { noted, putAway, write } from "./state-note.mjs";

/** A store that has not answered by then is taken to be shut, in milliseconds. */
const PATIENCE = 1500;
/** How long what is noted may wait for the store, in milliseconds. */
const REST = 250;

/** @type {import("idb-keyval").UseStore | undefined} */
let opened;

/** The one store. */
export const store = () => (opened ??= createStore("tenpenny", "kept"));

const put = makeGathering((name, value) => set(name, value, store()));

/**
 * What was kept under a name; undefined when nothing was, or the store is shut.
 * @param {string} name
 * @returns {Promise<any>}
 */
export async function recall(name) {
  const late = noted(name);
  if (late !== undefined) {
    keep(name, late);
    return late;
  }
  try {
    return await Promise.race([get(name, store()), new Promise((go) => setTimeout(go, PATIENCE))]);
  } catch {
    return undefined;
  }
}

/**
 * Keep a value; false when the store is shut.
 * @param {string} name
 * @param {unknown} value
 * @returns {Promise<boolean>}
 */
export async function keep(name, value) {
  const note = write(name, value);
  try {
    await put(name, value, note ? REST : 0);
    putAway(name, note);
    return true;
  } catch {
    return false;
  }
}
