/** Before the first paint the look is put on. After it, since reading comes first, Python's thread is started and the page comes to life. */

import { painted } from "./painted.mjs";
import { recallLook, wear } from "./state-look.mjs";
import { startEarly } from "./thread.mjs";

const page = document.currentScript?.dataset.page;

wear(recallLook());
for (const wish of ["(prefers-color-scheme: dark)", "(prefers-contrast: more)"]) {
  matchMedia(wish).addEventListener("change", () => wear(recallLook()));
}
if (page) void live(page);

/** @param {string} page */
async function live(page) {
  await painted();
  startEarly(page);
  await import(new URL(APP, document.baseURI).href);
}
