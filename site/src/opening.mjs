// What a page is opened with, kept once more by its address: a browser that knows static routes takes it from there and need not wake
// the service worker first (Service Workers, `InstallEvent.addRoutes`). Other browsers have no such copy. Each release has its own:
// pages never mix. A page that has no copy yet is asked of the host; while the service worker is awake it answers for pages itself,
// and says so when one is not here.
import { abreast } from "./abreast.mjs";
import { hashOf } from "./store.mjs";

/** @typedef {import("./store.mjs").File} File */
/** @typedef {import("./store.mjs").Store} Store */

const OPENS = /^[^/]+\.html$|^code\//;
/** The same as patterns, each with what else must hold. */
const RULES = [
  { path: "", only: { runningStatus: "not-running" } },
  { path: ":page.html", only: { runningStatus: "not-running" } },
  { path: "code/*", only: {} },
];

/** A text as a pattern that means itself. @param {string} text */
const plain = (text) => text.replace(/[\\:*+?(){}]/g, "\\$&");

/** The folder itself is its index.html. @param {File} file */
const addresses = ({ url }) => (url === "index.html" ? [url, ""] : [url]);

export class Opening {
  /** @param {string} base @param {string} version @param {boolean} [known] whether the browser knows static routes */
  constructor(base, version, known = "addRoutes" in (Reflect.get(globalThis, "InstallEvent")?.prototype ?? {})) {
    this.base = base;
    this.known = known;
    this.every = `tenpenny opens ${new URL(base).pathname} `;
    this.name = this.every + version;
  }

  /** Have the browser answer from here. @param {any} install the event */
  route(install) {
    if (!this.known) return;
    const home = plain(new URL(this.base).pathname);
    const rules = RULES.map(({ path, only }) => ({
      condition: { ...only, requestMethod: "GET", urlPattern: { pathname: home + path, search: "" } },
      source: { cacheName: this.name },
    }));
    install.waitUntil(install.addRoutes(rules));
  }

  /** Copy from the store what is there, unless it is here as it is there. @param {Store} store @param {File[]} files */
  async fill(store, files) {
    if (!this.known) return;
    const cache = await caches.open(this.name);
    const copies = files.filter(({ url }) => OPENS.test(url)).flatMap((file) => addresses(file).map((to) => ({ file, to })));
    await abreast(copies, ({ file, to }) => copy(store, cache, file, new URL(to, this.base).href));
  }

  /** Let go of what other releases were opened with. */
  async prune() {
    const names = (await caches.keys()).filter((name) => name.startsWith(this.every) && name !== this.name);
    await Promise.all(names.map((name) => caches.delete(name)));
  }
}

/** @param {Store} store @param {Cache} cache @param {File} file @param {string} address */
async function copy(store, cache, file, address) {
  const here = await cache.match(address);
  if (here && (await hashOf(await here.arrayBuffer())) === file.hash) return;
  const kept = await store.kept(file.hash);
  if (kept) await cache.put(address, kept);
}
