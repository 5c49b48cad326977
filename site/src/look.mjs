/** Puts the look on before the first paint, and again when the device changes its own. */

import { recallLook, wear } from "./state-look.mjs";

wear(recallLook());
for (const wish of ["(prefers-color-scheme: dark)", "(prefers-contrast: more)"]) {
  matchMedia(wish).addEventListener("change", () => wear(recallLook()));
}
