// The service worker: answers from what is kept, and sees to it that what is kept is whole.
//
// The first time it keeps the small shell only; the rest follows while the page is in use. A later release is fetched and
// verified whole before it may wait its turn, takes over when the user says so (or when no page is open), and only then
// lets go of what the old one kept: pages and files of two releases never mix.
import { Opening } from "./opening.mjs";
import { Store, fileAt } from "./store.mjs";

const here = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));
const base = here.registration.scope;
const { files, version } = LISTED;
const opening = new Opening(base, version);

const LATER = "Not everything could be fetched yet; it is tried again by itself.";
const FULL = "There is not room enough on this device to keep the page for use offline.";

/** @param {object} message */
async function tell(message) {
  for (const page of await here.clients.matchAll({ includeUncontrolled: true })) page.postMessage(message);
}

/** Tells how far it is at each hundredth: more often would only keep the page busy. */
function telling() {
  let last = -1;
  return (/** @type {number} */ done, /** @type {number} */ total) => {
    const share = Math.floor((100 * done) / total);
    if (share > last) void tell({ fetching: { done, total } });
    last = share;
  };
}

/** @param {import("./store.mjs").File[]} wanted */
async function fill(wanted) {
  const store = await Store.open(base);
  try {
    await store.fill(wanted, telling());
    await opening.fill(store, wanted);
  } catch (fault) {
    await tell({ problem: fault instanceof DOMException && fault.name === "QuotaExceededError" ? FULL : LATER });
    throw fault;
  }
  return store;
}

/** One at a time, over every worker of these pages. @param {() => Promise<unknown>} work */
const alone = (work) => navigator.locks.request(`tenpenny ${base}`, work);

here.addEventListener("install", (event) => {
  const first = !here.registration.active;
  opening.route(event);
  event.waitUntil(alone(() => fill(first ? files.filter((file) => file.part === "shell") : files)));
});

here.addEventListener("activate", (event) => {
  event.waitUntil(use().then(() => here.clients.claim()));
});

async function use() {
  await (await Store.open(base)).use(LISTED);
  await opening.prune();
}

here.addEventListener("message", (event) => {
  if (event.data.say === "take over") event.waitUntil(here.skipWaiting());
  if (event.data.say === "keep") event.waitUntil(keep());
});

/** @type {Promise<unknown> | undefined} */
let keeping;

async function keep() {
  keeping ??= alone(keepAll);
  try {
    await keeping;
    await tell({ whole: true });
  } catch {
    keeping = undefined; // what went wrong has been told; the page asks again
  }
}

async function keepAll() {
  const store = await fill(files);
  if ((await store.listed())?.settled) return;
  await store.prune(files);
  await store.use({ ...LISTED, settled: true });
}

here.addEventListener("fetch", (event) => {
  const file = event.request.method === "GET" ? fileAt(files, base, event.request.url) : undefined;
  if (file) event.respondWith(answer(file, event.request.mode === "navigate"));
});

/** @param {import("./store.mjs").File} file @param {boolean} page */
async function answer(file, page) {
  const store = await Store.open(base);
  const kept = await store.kept(file.hash);
  return kept ?? store.fetch(file).catch(() => (page ? sorry() : Response.error()));
}

function sorry() {
  const say = "This page is not on this device yet, and it cannot be fetched just now. Connect once and open it again; what you typed elsewhere is kept.";
  void here.registration.update().catch(() => {});
  return new Response(say, { status: 503, headers: { "content-type": "text/plain; charset=utf-8" } });
}
