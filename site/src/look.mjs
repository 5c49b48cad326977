/** Puts the chosen look on before the first paint; runs before anything else, so it stands alone. */

import { recallLook } from "./state-look.mjs";

document.documentElement.dataset.look = recallLook();
