// The page's side of being offline: has the service worker keep everything, says truly how far that is, and changes to a new
// release when the user says so.
import { settled } from "./python.mjs";

const HOUR = 3_600_000;
const LATEST = 60_000;
const PATIENCE = 15_000;
const CANNOT = "This browser does not let the page keep itself for use offline.";

/** @typedef {import("./shapes").Offline} Offline */

/**
 * Start keeping the page. `onState` is told: `whole` once every file has been read back and found right; `fetching` with the
 * bytes done and in all; `update` when a new release is here, whole; `problem`, a sentence, or "".
 * @param {{ onState: (state: Offline) => void }} wanted
 */
export function startOffline({ onState }) {
  const keeping = new Keeping(onState);
  if (navigator.serviceWorker) keeping.begin(navigator.serviceWorker).catch(() => keeping.set({ problem: CANNOT }));
  else keeping.set({ problem: CANNOT });
  return { applyUpdate: () => keeping.update() };
}

class Keeping {
  /** @type {Offline} */
  state = { whole: false, fetching: null, update: false, problem: "" };
  /** @type {ServiceWorkerRegistration | undefined} */
  registration;

  /** @param {(state: Offline) => void} onState */
  constructor(onState) {
    this.onState = onState;
  }

  /** @param {Partial<Offline>} change */
  set(change) {
    this.state = { ...this.state, ...change };
    this.onState(this.state);
  }

  /** @param {ServiceWorkerContainer} container */
  async begin(container) {
    reloadWhenReplaced(container);
    container.addEventListener("message", ({ data }) => this.hear(data));
    await container.register(new URL("../sw.js", import.meta.url), { updateViaCache: "none" });
    this.attend(await container.ready);
  }

  /** @param {ServiceWorkerRegistration} registration */
  attend(registration) {
    this.registration = registration;
    const watch = () => registration.installing?.addEventListener("statechange", () => this.look());
    registration.addEventListener("updatefound", watch);
    watch();
    this.look();
    lookForUpdates(registration);
    Promise.race([settled, sleep(LATEST)]).then(() => this.keep());
  }

  /** Is a new release waiting its turn? */
  look() {
    const update = Boolean(this.registration?.waiting);
    this.set({ update, fetching: this.registration?.installing || !update ? this.state.fetching : null });
  }

  /** The service worker may be stopped at any time, or the signal lost: it is asked again until everything is here. */
  async keep() {
    for (let seen = null; !this.state.whole; await Promise.race([sleep(PATIENCE), backOnline()])) {
      const silent = seen === null || seen === this.state;
      if (silent || this.state.problem) this.registration?.active?.postMessage({ say: "keep" });
      seen = this.state;
    }
  }

  /** @param {{ whole?: boolean, fetching?: { done: number, total: number }, problem?: string }} told */
  hear({ whole = this.state.whole, fetching, problem = "" }) {
    this.set({ whole, fetching: fetching ?? null, problem });
    if (whole) void askToPersist();
  }

  update() {
    this.registration?.waiting?.postMessage({ say: "take over" });
  }
}

/**
 * Once another worker has taken over, this page is of the release before: open it again. What is typed is kept as it is typed.
 * @param {ServiceWorkerContainer} container
 */
function reloadWhenReplaced(container) {
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

/** Browsers throw away what is kept by pages not used for a while, unless asked not to. */
async function askToPersist() {
  const { storage } = navigator;
  if (storage?.persist && !(await storage.persisted())) await storage.persist();
}

/** @param {number} time */
function sleep(time) {
  return new Promise((done) => setTimeout(done, time));
}

function backOnline() {
  return new Promise((done) => addEventListener("online", done, { once: true }));
}
