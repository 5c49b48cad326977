/**
 * What is kept on this device between visits, in the browser's own store. Where the store is shut everything goes on:
 * nothing is recalled, and `keep` answers false.
 */

import { createStore, get, set } from "idb-keyval";

/** A store that has not answered by then is taken to be shut, in milliseconds. */
const PATIENCE = 1500;

/** @type {import("idb-keyval").UseStore | undefined} */
let opened;

const store = () => (opened ??= createStore("tenpenny", "kept"));

/** What was kept under a name; undefined when nothing was, or the store is shut.
 * @param {string} name @returns {Promise<any>} */
export async function recall(name) {
  try {
    return await Promise.race([get(name, store()), new Promise((go) => setTimeout(go, PATIENCE))]);
  } catch {
    return undefined;
  }
}

/** Keep a value; false when the store is shut.
 * @param {string} name @param {unknown} value @returns {Promise<boolean>} */
export async function keep(name, value) {
  try {
    await set(name, value, store());
    return true;
  } catch {
    return false;
  }
}
