// The page's side of being offline: has the service worker keep everything, says truly how far that is, and changes to a new
// release when the user says so.
import { settled } from "./python.mjs";

const HOUR = 3_600_000;
const LATEST = 60_000;
const PATIENCE = 30_000;
const CANNOT = "This browser does not let the page keep itself for use offline.";

/** @typedef {import("./shapes").Offline} Offline */

/**
 * Start keeping the page. `onState` is told: `whole` once every file has been read back and found right; `fetching` with the
 * bytes done and in all; `update` when a new release is here, whole; `problem`, a sentence, or "".
 * @param {{ onState: (state: Offline) => void }} wanted
 */
export function startOffline({ onState }) {
  /** @type {Offline} */
  let state = { whole: false, fetching: null, update: false, problem: "" };
  /** @param {Partial<Offline>} change */
  const set = (change) => onState((state = { ...state, ...change }));
  const container = navigator.serviceWorker;
  /** @type {ServiceWorkerRegistration | undefined} */
  let registration;

  if (!container) set({ problem: CANNOT });
  else {
    reloadWhenReplaced(container);
    container.addEventListener("message", ({ data }) => hear(data));
    register(container).then(attend, () => set({ problem: CANNOT }));
  }
  return { applyUpdate: () => registration?.waiting?.postMessage({ say: "take over" }) };

  /** @param {ServiceWorkerRegistration} found */
  async function attend(found) {
    registration = found;
    found.installing?.addEventListener("statechange", look);
    found.addEventListener("updatefound", () => found.installing?.addEventListener("statechange", look));
    look();
    lookForUpdates(found);
    await Promise.race([settled, sleep(LATEST)]);
    await keepUntilWhole(found);
  }

  function look() {
    const update = Boolean(registration?.waiting && registration.active);
    set({ update, fetching: registration?.installing || !update ? state.fetching : null });
  }

  /** @param {{ whole?: boolean, fetching?: { done: number, total: number }, problem?: string }} told */
  function hear({ whole = state.whole, fetching, problem = "" }) {
    set({ whole, fetching: fetching ?? null, problem });
    if (whole) void navigator.storage?.persist?.();
  }

  /** The service worker may be stopped at any time, or the signal lost: it is asked again until everything is here. */
  async function keepUntilWhole(/** @type {ServiceWorkerRegistration} */ found) {
    for (let seen = null; !state.whole; await sleep(PATIENCE)) {
      if (seen === null || seen === state) found.active?.postMessage({ say: "keep" });
      seen = state;
    }
  }
}

/** @param {ServiceWorkerContainer} container */
async function register(container) {
  await container.register(new URL("../sw.js", import.meta.url), { updateViaCache: "none" });
  return container.ready;
}

/** Once another worker has taken over, this page is of the release before: open it again. What is typed is kept as it is typed. */
function reloadWhenReplaced(/** @type {ServiceWorkerContainer} */ container) {
  let before = container.controller;
  container.addEventListener("controllerchange", () => {
    if (before) location.reload();
    before = container.controller;
  });
}

/** @param {ServiceWorkerRegistration} registration */
function lookForUpdates(registration) {
  let last = Date.now();
  const look = () => {
    if (document.hidden || Date.now() - last < HOUR) return;
    last = Date.now();
    registration.update().catch(() => {}); // offline: the next look will do
  };
  document.addEventListener("visibilitychange", look);
  setInterval(look, HOUR);
}

/** @param {number} time */
function sleep(time) {
  return new Promise((done) => setTimeout(done, time));
}
