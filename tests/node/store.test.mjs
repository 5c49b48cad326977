// What is kept on this device, against a cache and a host made of Maps.
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { test } from "node:test";
import { Store, fileAt, hashOf } from "../../site/src/store.mjs";

const BASE = "https://bench.example/shop/";
const quiet = () => {};

function cacheOfMap() {
  const kept = new Map();
  return {
    kept,
    match: async (key) => kept.get(key)?.clone(),
    put: async (key, response) => void kept.set(key, response),
    delete: async (key) => kept.delete(key.url ?? key),
    keys: async () => [...kept.keys()].map((url) => ({ url })),
  };
}

const line = (url, text) => ({
  url,
  hash: createHash("sha256").update(text).digest("hex"),
  bytes: text.length,
  part: "runtime",
});

/** A store over a host that has these texts by name; `asked` fills with what is fetched, and how. */
function storeOver(texts) {
  const asked = [];
  const get = async (url, { cache }) => {
    const name = url.slice(BASE.length);
    asked.push(`${name} ${cache}`);
    const text = texts[`${name} ${cache}`] ?? texts[name];
    return text === undefined ? new Response("lost", { status: 404 }) : new Response(text);
  };
  const cache = cacheOfMap();
  return { store: new Store(cache, BASE, get), asked, cache };
}

test("a hash is the SHA-256 of FIPS 180-4, whose example for “abc” begins ba7816bf", async () => {
  const hash = await hashOf(new TextEncoder().encode("abc"));
  assert.equal(hash, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
});

test("a URL means its file whatever follows a ? or #, and the folder means index.html", () => {
  const files = [line("index.html", "a"), line("slope.html", "b")];
  const named = (url) => fileAt(files, BASE, url)?.url;
  assert.equal(named(BASE), "index.html");
  assert.equal(named(`${BASE}?from=home`), "index.html");
  assert.equal(named(`${BASE}slope.html?x=1#rise`), "slope.html");
});

test("what is not ours is left alone", () => {
  const files = [line("slope.html", "b")];
  for (const url of [`${BASE}lost.html`, "https://bench.example/slope.html", "https://other.example/shop/slope.html"]) {
    assert.equal(fileAt(files, BASE, url), undefined);
  }
});

test("filling fetches what is missing, and only that", async () => {
  const { store, asked } = storeOver({ "a.js": "one", "b.js": "two" });
  const files = [line("a.js", "one"), line("b.js", "two")];
  await store.fill([files[0]], quiet);
  await store.fill(files, quiet);
  assert.deepEqual(asked, ["a.js default", "b.js default"]);
  assert.ok(await store.whole(files[1]));
});

test("a file under a new name is not fetched when its content is here", async () => {
  const { store, asked } = storeOver({ "a-1.js": "one" });
  await store.fill([line("a-1.js", "one")], quiet);
  await store.fill([line("a-2.js", "one")], quiet);
  assert.deepEqual(asked, ["a-1.js default"]);
});

test("of two files with the same content one is fetched", async () => {
  const { store, asked } = storeOver({ "a.js": "one", "b.js": "one" });
  await store.fill([line("a.js", "one"), line("b.js", "one")], quiet);
  assert.equal(asked.length, 1);
});

test("a damaged file is not whole, and is fetched again", async () => {
  const { store, cache, asked } = storeOver({ "a.js": "one" });
  const file = line("a.js", "one");
  await store.fill([file], quiet);
  await cache.put(store.key(file.hash), new Response("0ne"));
  assert.equal(await store.whole(file), false);
  await store.fill([file], quiet);
  assert.ok(await store.whole(file));
  assert.equal(asked.length, 2);
});

test("an out-of-date copy on the way is passed over", async () => {
  const { store, asked } = storeOver({ "a.js default": "old", "a.js reload": "new" });
  await store.fill([line("a.js", "new")], quiet);
  assert.deepEqual(asked, ["a.js default", "a.js reload"]);
});

test("a file that does not arrive as it was made is never kept", async () => {
  const { store, cache } = storeOver({ "a.js": "other" });
  await assert.rejects(store.fill([line("a.js", "one")], quiet), /did not arrive as it was made/);
  assert.equal(cache.kept.size, 0);
});

test("a file that cannot be read back is not taken for kept", async () => {
  const { store, cache } = storeOver({ "a.js": "one" });
  cache.put = async () => {};
  await assert.rejects(store.fill([line("a.js", "one")], quiet), /could not be read back/);
});

test("broken off and begun again, it goes on where it stopped", async () => {
  const texts = { "a.js": "1", "c.js": "333" };
  const { store, asked } = storeOver(texts);
  const files = [line("a.js", "1"), line("b.js", "22"), line("c.js", "333")];
  await assert.rejects(store.fill(files, quiet), /b\.js could not be fetched \(404\)/);
  texts["b.js"] = "22";
  await store.fill(files, quiet);
  assert.deepEqual(asked, ["a.js default", "b.js default", "c.js default", "b.js default"]);
});

test("progress counts the bytes that were missing", async () => {
  const { store } = storeOver({ "a.js": "1", "b.js": "22", "c.js": "333" });
  const files = [line("c.js", "333"), line("b.js", "22"), line("a.js", "1")];
  await store.fill([files[2]], quiet);
  const told = [];
  await store.fill(files, (done, total) => told.push([done, total]));
  assert.deepEqual(told, [[0, 5], [2, 5], [5, 5]]);
});

test("pruning keeps what is needed and the list", async () => {
  const { store, cache } = storeOver({ "a.js": "1", "b.js": "22" });
  const [a, b] = [line("a.js", "1"), line("b.js", "22")];
  await store.fill([a, b], quiet);
  await store.use({ version: "2", files: [b] });
  await store.prune([b]);
  assert.deepEqual([...cache.kept.keys()].sort(), [store.key("list"), store.key(b.hash)].sort());
});

test("a URL is answered by the list in use", async () => {
  const { store } = storeOver({ "a.js": "one" });
  await store.fill([line("a.js", "one")], quiet);
  assert.equal(await store.named(`${BASE}a.js`), undefined);
  await store.use({ version: "1", files: [line("a.js", "one")] });
  assert.equal(await (await store.named(`${BASE}a.js?x`)).text(), "one");
});

test("what is kept carries the type that it will be asked for as", async () => {
  const { store } = storeOver({ "a.js": "one", "b.wasm": "two" });
  const types = async (file) => (await store.fetch(file)).headers.get("content-type");
  assert.match(await types(line("a.js", "one")), /^text\/javascript/);
  assert.equal(await types(line("b.wasm", "two")), "application/wasm");
});
