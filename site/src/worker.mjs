// Python's own thread. Says {"ready": true} once Python is awake; from then on each message is a request as JSON text, with
// an id, and each reply is JSON text with the same id.
import { boot } from "./boot.mjs";
import { Store } from "./store.mjs";

const base = new URL("../", import.meta.url).href;
const core = new URL(CORE.home, import.meta.url).href;
const network = self.fetch.bind(self);
self.fetch = anywhere;

/**
 * From the network, or else from what is kept on this device: Firefox refuses a worker's fetch while offline, even where a
 * service worker would answer it (Mozilla bug 2067202).
 * @param {RequestInfo | URL} wanted
 * @param {RequestInit} [options]
 */
async function anywhere(wanted, options) {
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

/** What is in a gzipped JSON file. @param {string} name */
async function unpacked(name) {
  const { body } = await fetch(new URL(name, base));
  return new Response(body?.pipeThrough(new DecompressionStream("gzip"))).json();
}

async function files() {
  const parts = await (await fetch(new URL("python.json", base), { cache: "no-cache" })).json();
  return Promise.all(parts.map(unpacked));
}

/** @type {import("pyodide").PyodideConfig} */
const config = {
  indexURL: core,
  packageBaseUrl: core,
  stdLibURL: `${core}python_stdlib.zip`,
  lockFileContents: { info: CORE.info, packages: {} },
  createPyodideModule: async (/** @type {unknown} */ settings) => (await glue).default(settings),
};
const glue = import(`${core}pyodide.asm.js`);

const door = boot({ config, files: files() });
self.onmessage = async ({ data }) => self.postMessage((await door)(data));
door.then(
  () => self.postMessage('{"ready": true}'),
  async (fault) => {
    await mend().catch(() => {}); // offline: there is nothing to mend with
    self.postMessage(JSON.stringify({ failed: String(fault?.message ?? fault) }));
  },
);

/** Python did not start: perhaps a file that is kept was damaged. What is, is fetched again before the next try. */
async function mend() {
  const store = await Store.open(base);
  const files = (await store.listed())?.files ?? [];
  await store.fill(files.filter(({ url }) => url.startsWith("python")), () => {});
}
