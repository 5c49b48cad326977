/** The look of the page, kept where it can be read before the first paint. A shut store only means that it is not remembered. */

const LOOK = "tenpenny-look";

/** Keep the look. @param {string} look */
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
