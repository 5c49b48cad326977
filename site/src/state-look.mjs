/** The look of the page: chosen, or that of the device. Kept where it can be read before the first paint. */

const LOOK = "tenpenny-look";

/** Keep the look. A shut store only means that it is not remembered. @param {string} look */
export function keepLook(look) {
  try {
    localStorage.setItem(LOOK, look);
  } catch {
    return;
  }
}

/** The look chosen earlier; "" for that of the device. @returns {string} */
export function recallLook() {
  try {
    return localStorage.getItem(LOOK) ?? "";
  } catch {
    return "";
  }
}

/** Put a look on: "light", "dark", "sun", or "" for what the device asks for. @param {string} look */
export function wear(look) {
  const dark = matchMedia("(prefers-color-scheme: dark)").matches;
  const strong = matchMedia("(prefers-contrast: more)").matches;
  document.documentElement.dataset.look = look || (dark ? "dark" : strong ? "sun" : "light");
}
