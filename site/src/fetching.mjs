// What Python's thread fetches: from the network, or from what is kept on this device.
import { Store } from "./store.mjs";

export const base = new URL("../", import.meta.url).href;
const network = self.fetch.bind(self);

/**
 * From the network, or else from what is kept on this device: Firefox refuses a worker's fetch while offline, even where a
 * service worker would answer it (Mozilla bug 2067202).
 * @param {RequestInfo | URL} wanted
 * @param {RequestInit} [options]
 */
export async function anywhere(wanted, options) {
  try {
    const response = await network(wanted, options);
    if (response.ok) return response;
  } catch {
    // offline, or refused: look at what is kept
  }
  const url = wanted instanceof Request ? wanted.url : String(wanted);
  const kept = await (await Store.open(base)).named(url);
  if (!kept) throw new Error(`${url} could not be fetched and is not kept on this device`);
  return kept;
}

/** @param {string} name */
export async function file(name) {
  return (await anywhere(new URL(name, base))).arrayBuffer();
}

/**
 * The snapshot: straight from what is kept on this device, which is far sooner there than through the service worker.
 * @param {Kept} file
 */
export async function memory({ url, hash }) {
  const kept = await Store.open(base).then((store) => store.kept(hash)).catch(() => undefined); // there is no store on some hosts
  return (await (kept ?? anywhere(new URL(url, base)))).arrayBuffer();
}

/** @type {Promise<Response>} */
let held;

/**
 * The interpreter, compiled while it comes. Fetched by its own name and held as long as the thread lives: only then does the
 * browser keep beside it what it has compiled, well where it ran often, and begin with that the next time.
 * @param {Kept} file
 */
export function interpreter({ url }) {
  held = anywhere(new URL(url, base));
  return WebAssembly.compileStreaming(held);
}

/** What is in a gzipped JSON file. @param {string} name */
export async function unpacked(name) {
  const { body } = await anywhere(new URL(name, base));
  return new Response(body?.pipeThrough(new DecompressionStream("gzip"))).json();
}

/** What changes from release to release: the parts of our source, and the files of each sum's code. */
export async function named() {
  return (await anywhere(new URL("python.json", base), { cache: "no-cache" })).json();
}
