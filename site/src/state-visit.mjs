/**
 * Opening pages: what was left there is recalled, what a link brings is put in, and Python is asked.
 * @typedef {import("./shapes").Sum} Sum
 * @typedef {import("./state-open.mjs").Left} Left
 * @typedef {import("./state-open.mjs").Brought} Brought
 */

import { remember } from "./state-answer.mjs";
import { keep, recall } from "./state-keep.mjs";
import { dataOf, recalledSum, reopened } from "./state-open.mjs";
import { isPiece } from "./state-piece.mjs";
import { broughtBy, follow, move } from "./state-route.mjs";
import { titleOf } from "./state.mjs";

/**
 * @param {import("./state-store.mjs").Store} store
 * @param {{ ask: () => void, put: (change: (kept: any) => any) => void }} answering
 * @param {{ opening: (sum: Sum, id: string) => Promise<import("./shapes-piece").Kept> }} shelf
 */
export function makeVisits(store, { ask, put }, shelf) {
  let latest = 0;

  /** Stand on a page whose data and past are at hand.
   * @param {string} page
   * @param {Sum | null} sum
   * @param {Left} left
   * @param {Record<string, string>} over
   * @param {Brought | null} brought */
  function enter(page, sum, left, over, brought) {
    const told = reopened(sum, left, store.get(), over, brought);
    store.set({ page, search: "", ...told });
    document.title = titleOf(sum);
    remember(store);
    keep("recent", store.get().recent);
    const typed = brought || Object.keys(over).length;
    if (isPiece(sum)) return typed ? put((kept) => kept) : ask();
    if (sum && typed) keep(`entry:${sum.id}`, told.entry);
    ask();
  }

  /** What was left of a sum here; of a piece, the one named, or the one open last.
   * @param {Sum | null} sum @param {string} [id] @returns {Promise<Left>} */
  async function left(sum, id = "") {
    if (!sum || !isPiece(sum)) return recalledSum(sum);
    const kept = await shelf.opening(sum, id);
    return { kept, stood: await recall(`stood:${kept.id}`) };
  }

  /**
   * Open a page; an opening that was overtaken by another comes to nothing.
   * @param {string} page
   * @param {Brought | null} brought
   * @param {string} [id]
   */
  async function open(page, brought, id) {
    const turn = ++latest;
    const sum = await dataOf(page, store.get().catalogue);
    const was = await left(sum, id);
    if (turn !== latest) return false;
    enter(page, sum, was, {}, brought);
    return true;
  }

  /** @param {string} page @param {URL} address */
  async function go(page, address) {
    const { kept, ...texts } = broughtBy(address);
    const from = store.get().sum?.title ?? "a link";
    const brought = Object.keys(texts).length ? { texts, from } : null;
    if (!(await open(page, brought, kept).catch(() => leave(address)))) return;
    move(address);
    arrive(0);
  }

  /** @param {string} page @param {number} scroll */
  async function back(page, scroll) {
    if (page !== store.get().page && (await open(page, null).catch(() => leave(new URL(location.href)))))
      arrive(scroll);
  }
  return { enter, left, follow: () => follow(store.get().catalogue, go, back) };
}

/** When a page's data cannot be had here, the browser goes there by itself. @param {URL} address */
function leave(address) {
  location.assign(address);
  return false;
}

/** Stand at the top of the new page, or where it was left, with the heading in hand. @param {number} scroll */
function arrive(scroll) {
  const heading = document.querySelector("h1");
  if (heading instanceof HTMLElement) heading.focus({ preventScroll: true });
  scrollTo(0, scroll);
}
