// Python's own thread. Says {"ready": true} once Python is awake; from then on each message is a request as JSON text, with
// an id, and each reply is JSON text with the same id. Python wakes from the snapshot, or else starts the ordinary way.
import { boot } from "./boot.mjs";
import { wake } from "./boot-snapshot.mjs";
import { asking, filesOf } from "./late.mjs";
import { mark, marked } from "./marks.mjs";
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

/** @typedef {(request: string) => Promise<string>} Ask */

/** @type {import("pyodide").PyodideConfig} */
const config = { indexURL: core, packageBaseUrl: core, lockFileContents: { info: CORE.info, packages: {} } };
const LACKING = /"fault": ?"ModuleNotFoundError/;
const WANTING = "not all that this needs is on this device yet; connect once and ask again";

/** @param {string} name */
async function file(name) {
  return (await anywhere(new URL(name, base))).arrayBuffer();
}

/**
 * A large file: straight from what is kept on this device, which is far sooner there than through the service worker.
 * @param {Kept} file
 */
async function large({ url, hash }) {
  const kept = await Store.open(base).then((store) => store.kept(hash)).catch(() => undefined); // there is no store on some hosts
  return kept ?? anywhere(new URL(url, base));
}

/** What is in a gzipped JSON file. @param {string} name */
async function unpacked(name) {
  const { body } = await anywhere(new URL(name, base));
  return new Response(body?.pipeThrough(new DecompressionStream("gzip"))).json();
}

/** What changes from release to release: the parts of our source, and the files of each sum's code. */
async function named() {
  return (await anywhere(new URL("python.json", base), { cache: "no-cache" })).json();
}

/**
 * From the snapshot. What is fetched comes side by side, the largest first; so does the code of the sum that the page shows,
 * which is named in this worker's address.
 * @returns {Promise<Ask>}
 */
async function quickly() {
  const shown = self.location.hash.slice(1);
  const snapshot = marked("snapshot", large(CORE.snapshot).then((found) => found.arrayBuffer()));
  const wasm = marked("wasm", WebAssembly.compileStreaming(large(CORE.wasm)));
  const waking = marked("woken", wake({ config, glue: marked("glue", import(`${core}glue.js`)), wasm, snapshot }));
  const { sums } = await marked("names", named());
  const coming = new Map(filesOf(sums, shown).map((name) => [name, marked("code", file(name))]));
  const { bring, ask } = asking(await waking, sums, (name) => coming.get(name) ?? file(name));
  await bring(shown);
  mark("brought");
  return ask;
}

/** With everything imported anew. @returns {Promise<Ask>} */
async function ordinarily() {
  const stdLibURL = `${core}python_stdlib.zip`;
  const glue = import(`${core}glue.js`);
  const createPyodideModule = async (/** @type {unknown} */ settings) => (await glue).default(settings);
  const files = named().then(({ parts }) => Promise.all(parts.map(unpacked)));
  const answer = await boot({ config: { ...config, stdLibURL, createPyodideModule }, files });
  return async (request) => answer(request);
}

/** The second way when the first fails: said in the console, and what may be damaged is fetched again for the next time. */
async function started() {
  if (self.name === "ordinary") return { ask: await ordinarily(), way: "ordinary" };
  try {
    return { ask: await quickly(), way: "snapshot" };
  } catch (fault) {
    console.warn(`Python starts the ordinary way: ${fault}`);
    const ask = await ordinarily();
    void mend().catch(() => {}); // offline: there is nothing to mend with
    return { ask, way: "ordinary" };
  }
}

/**
 * A question that needs a module which the snapshot lacks is asked again of a Python that has them all.
 * @param {string} request
 */
async function answered(request) {
  const { ask, way } = await python;
  const reply = await ask(request).catch((fault) => lost(request, `ModuleNotFoundError: ${fault}`));
  if (way === "ordinary" || !LACKING.test(reply)) return reply;
  const whole = ordinarily().then((again) => ({ ask: again, way: "ordinary" }));
  return whole.then(
    (found) => ((python = whole), found.ask(request)),
    () => lost(request, WANTING),
  );
}

/** @param {string} request @param {string} fault */
function lost(request, fault) {
  return JSON.stringify({ id: JSON.parse(request).id, ok: false, refusals: [], givens: {}, fault });
}

let python = started();
self.onmessage = async ({ data }) => self.postMessage(await marked("answered", answered(data)));
python.then(
  ({ way }) => self.postMessage(JSON.stringify({ ready: true, way })),
  async (fault) => {
    await mend().catch(() => {}); // offline: there is nothing to mend with
    self.postMessage(JSON.stringify({ failed: String(fault?.message ?? fault) }));
  },
);

/** Perhaps a file that is kept was damaged. What is, is fetched again before the next try. */
async function mend() {
  const store = await Store.open(base);
  const files = (await store.listed())?.files ?? [];
  await store.fill(files.filter(({ url }) => url.startsWith("python")), () => {});
}
