/** What the device does around the page: its keypad rises, its screen sleeps, its printer wants everything unfolded. */

/** Keep our keys above the device's own keypad, and the field in hand in sight between them. */
export function riseWithKeypad() {
  const view = window.visualViewport;
  view?.addEventListener("resize", rise);
  view?.addEventListener("scroll", rise);
}

function rise() {
  const { height = innerHeight, offsetTop = 0 } = window.visualViewport ?? {};
  const lift = Math.max(0, innerHeight - height - offsetTop);
  document.documentElement.style.setProperty("--lift", `${Math.round(lift)}px`);
  keepInSight(document.activeElement);
}

/** Scroll just as far as a field needs to be seen. @param {Element | null} field */
export function keepInSight(field) {
  if (field?.closest(".givens")) field.scrollIntoView({ block: "nearest" });
}

/** On paper nothing is folded; afterwards all is as it was. */
export function unfoldForPaper() {
  /** @type {HTMLDetailsElement[]} */
  let shut = [];
  addEventListener("beforeprint", () => {
    shut = [...document.querySelectorAll("details")].filter((one) => !one.open && !one.matches(".settled"));
    for (const one of shut) one.open = true;
  });
  addEventListener("afterprint", () => shut.forEach((one) => (one.open = false)));
}

/**
 * Keep the screen awake while a sum is open: hands at the bench are not free to wake it.
 * @param {() => boolean} working
 */
export function stayAwake(working) {
  /** @type {WakeLockSentinel | undefined} */
  let lock;
  async function look() {
    if (document.visibilityState !== "visible" || !("wakeLock" in navigator)) return;
    if (working() && (!lock || lock.released)) lock = await navigator.wakeLock.request("screen").catch(() => undefined);
    if (!working()) await lock?.release();
  }
  document.addEventListener("visibilitychange", look);
  document.addEventListener("pointerup", look);
}

/** Told when the page goes out of sight, which may be the last that is heard of it. @param {() => void} leave */
export function onLeaving(leave) {
  document.addEventListener("visibilitychange", () => document.hidden && leave());
}

/** Offer a text as a file to keep. @param {string} name @param {string} text */
export function offer(name, text) {
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = Object.assign(document.createElement("a"), { href: address, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
