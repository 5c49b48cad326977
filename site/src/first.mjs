/** Before the first paint: the look is put on, and Python's thread is started, which takes longest. */

import { recallLook, wear } from "./state-look.mjs";
import { startEarly } from "./thread.mjs";

const page = document.currentScript?.dataset.page;
if (page) startEarly(page);
wear(recallLook());
for (const wish of ["(prefers-color-scheme: dark)", "(prefers-contrast: more)"]) {
  matchMedia(wish).addEventListener("change", () => wear(recallLook()));
}
