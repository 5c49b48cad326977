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
  const app = new URL(APP, document.baseURI).href;
  if (!navigator.serviceWorker?.controller) fetchEarly(app);
  await painted();
  startEarly(page);
  await import(app);
}

/** What must come over the network may do so meanwhile; what is kept is read and compiled once the page is painted. @param {string} href */
function fetchEarly(href) {
  document.head.append(Object.assign(document.createElement("link"), { rel: "modulepreload", href }));
}
