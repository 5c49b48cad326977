// What a page is opened with while the service worker sleeps, against caches and an install event made of Maps.
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { afterEach, test } from "node:test";
import { Opening } from "../../site/src/opening.mjs";

const BASE = "https://bench.example/my (own)/shop/";
const HOME = new URL(BASE).href;

/** Caches by name, each a Map of texts by address. */
function cachesOfMaps() {
  const all = new Map();
  const cache = (texts) => ({
    match: async (address) => (texts.has(address) ? new Response(texts.get(address)) : undefined),
    put: async (address, response) => void texts.set(address, await response.text()),
  });
  globalThis.caches = {
    open: async (name) => cache(all.get(name) ?? all.set(name, new Map()).get(name)),
    keys: async () => [...all.keys()],
    delete: async (name) => all.delete(name),
  };
  return all;
}

afterEach(() => delete globalThis.caches);

const line = (url, text) => ({ url, hash: createHash("sha256").update(text).digest("hex") });
const FILES = [
  line("index.html", "home"),
  line("slope.html", "slope"),
  line("about/slope.html", "about"),
  line("code/app-1.js", "app"),
  line("python/calc.gzip", "calc"),
];
const TEXTS = ["home", "slope", "about", "app", "calc"];
const store = { kept: async (hash) => kept(TEXTS, hash) };
const kept = (texts, hash) => texts.filter((text) => line("", text).hash === hash).map((text) => new Response(text))[0];

test("pages and their code are copied by address, the folder as its index.html, nothing else", async () => {
  const all = cachesOfMaps();
  const opening = new Opening(BASE, "7", true);
  await opening.fill(store, FILES);
  const found = Object.fromEntries(all.get(opening.name));
  const wanted = { "": "home", "index.html": "home", "slope.html": "slope", "code/app-1.js": "app" };
  assert.deepEqual(found, Object.fromEntries(Object.entries(wanted).map(([name, text]) => [HOME + name, text])));
});

test("what is not in the store yet is not copied; a damaged copy is made again", async () => {
  const all = cachesOfMaps();
  const opening = new Opening(BASE, "7", true);
  await opening.fill({ kept: async (hash) => kept(["slope"], hash) }, FILES);
  assert.deepEqual([...all.get(opening.name).keys()], [`${HOME}slope.html`]);
  all.get(opening.name).set(`${HOME}slope.html`, "rubbish");
  await opening.fill(store, FILES);
  assert.equal(all.get(opening.name).get(`${HOME}slope.html`), "slope");
});

test("only other releases' copies of these pages are let go of", async () => {
  const all = cachesOfMaps();
  const opening = new Opening(BASE, "7", true);
  const others = ["tenpenny /shop/", new Opening("https://bench.example/", "6", true).name];
  for (const name of [opening.name, new Opening(BASE, "6", true).name, ...others]) await caches.open(name);
  await opening.prune();
  assert.deepEqual([...all.keys()].sort(), [opening.name, ...others].sort());
});

test("pages are routed while the service worker sleeps, code always; a sign in the folder's name means itself", () => {
  /** @type {any[]} */
  const routes = [];
  const opening = new Opening(BASE, "7", true);
  opening.route({ waitUntil: () => {}, addRoutes: (rules) => void routes.push(...rules) });
  const home = "/my%20\\(own\\)/shop/";
  const found = routes.map(({ condition, source }) => [condition.urlPattern.pathname, condition.runningStatus, source.cacheName]);
  const asleep = "not-running";
  const wanted = [["", asleep], [":page.html", asleep], ["code/*", undefined]];
  assert.deepEqual(found, wanted.map(([path, status]) => [home + path, status, opening.name]));
});

test("a browser that knows no static routes is left as it is", async () => {
  const all = cachesOfMaps();
  const opening = new Opening(BASE, "7");
  opening.route({ waitUntil: assert.fail });
  await opening.fill(store, FILES);
  assert.equal(all.size, 0);
});
