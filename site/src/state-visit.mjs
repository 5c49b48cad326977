/**
 * Opening pages: what was left there is recalled, what a link brings is put in, and Python is asked.
 * @typedef {import("./shapes").Sum} Sum
 * @typedef {import("./state-open.mjs").Left} Left
 * @typedef {import("./state-open.mjs").Brought} Brought
 */

import { remember } from "./state-answer.mjs";
import { keep } from "./state-keep.mjs";
import { dataOf, recalledSum, reopened } from "./state-open.mjs";
import { broughtBy, follow, move } from "./state-route.mjs";
import { titleOf } from "./state.mjs";

/** @param {import("./state-store.mjs").Store} store @param {{ ask: () => void }} answering */
export function makeVisits(store, { ask }) {
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
    if (sum && (brought || Object.keys(over).length)) keep(`entry:${sum.id}`, told.entry);
    document.title = titleOf(sum);
    remember(store);
    ask();
  }

  /**
   * Open a page; an opening that was overtaken by another comes to nothing.
   * @param {string} page
   * @param {Brought | null} brought
   */
  async function open(page, brought) {
    const turn = ++latest;
    const sum = await dataOf(page, store.get().catalogue);
    const left = await recalledSum(sum);
    if (turn !== latest) return false;
    enter(page, sum, left, {}, brought);
    return true;
  }

  /** @param {string} page @param {URL} address */
  async function go(page, address) {
    const texts = broughtBy(address);
    const from = store.get().sum?.title ?? "a link";
    const brought = Object.keys(texts).length ? { texts, from } : null;
    if (!(await open(page, brought).catch(() => leave(address)))) return;
    move(address);
    arrive(0);
  }

  /** @param {string} page @param {number} scroll */
  async function back(page, scroll) {
    if (page !== store.get().page && (await open(page, null).catch(() => leave(new URL(location.href)))))
      arrive(scroll);
  }
  return { enter, follow: () => follow(store.get().catalogue, go, back) };
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
