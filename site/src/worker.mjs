// Python's own thread. Says {"ready": true} once Python is awake; from then on each message is a request as JSON text, with
// an id, and each reply is JSON text with the same id; one that says "more" is followed by its other part. A hush is
// no request: it makes practice wait. Python wakes from the snapshot, or else starts the ordinary way.
import { boot } from "./boot.mjs";
import { wake } from "./boot-snapshot.mjs";
import { anywhere, base, file, interpreter, memory, named, unpacked } from "./fetching.mjs";
import { asking, filesOf } from "./late.mjs";
import { mark, marked } from "./marks.mjs";
import { HUSH, makePractice } from "./practice.mjs";
import { Store } from "./store.mjs";

const core = new URL(CORE.home, import.meta.url).href;
self.fetch = anywhere;

/** @typedef {import("./late.mjs").Told} Told */
/** @typedef {{ ask: (request: string) => Promise<string>, told: Told, way: "snapshot" | "ordinary" }} Python */

/** @type {import("pyodide").PyodideConfig} */
const config = { indexURL: core, packageBaseUrl: core, lockFileContents: { info: CORE.info, packages: {} } };
const LACKING = /"fault": ?"ModuleNotFoundError/;
const WANTING = "not all that this needs is on this device yet; connect once and ask again";

/**
 * From the snapshot. What is fetched comes side by side, the largest first; so does the code of the sum that the page shows,
 * which is named in this worker's address.
 * @returns {Promise<Python>}
 */
async function quickly() {
  const shown = self.location.hash.slice(1);
  const snapshot = marked("snapshot", memory(CORE.snapshot));
  const wasm = marked("wasm", interpreter(CORE.wasm));
  const waking = marked("woken", wake({ config, glue: marked("glue", import(`${core}glue.js`)), wasm, snapshot }));
  const { sums } = await marked("names", named());
  const coming = new Map(filesOf(sums, shown).map((name) => [name, marked("code", file(name))]));
  const { bring, ask, told } = asking(await waking, sums, (name) => coming.get(name) ?? file(name));
  await bring(shown);
  mark("brought");
  return { ask, told, way: "snapshot" };
}

/** With everything imported anew. @returns {Promise<Python>} */
async function ordinarily() {
  const stdLibURL = `${core}python_stdlib.zip`;
  const glue = import(`${core}glue.js`);
  const createPyodideModule = async (/** @type {unknown} */ settings) => (await glue).default(settings);
  const files = named().then(({ parts }) => Promise.all(parts.map(unpacked)));
  const answer = await boot({ config: { ...config, stdLibURL, createPyodideModule }, files });
  const ask = async (/** @type {string} */ request) => answer(request);
  return { ask, told: ask, way: "ordinary" };
}

/** The second way when the first fails: said in the console, and what may be damaged is fetched again for the next time. */
async function started() {
  if (self.name === "ordinary") return ordinarily();
  try {
    return await quickly();
  } catch (fault) {
    console.warn(`Python starts the ordinary way: ${fault}`);
    const found = await ordinarily();
    void mend().catch(() => {}); // offline: there is nothing to mend with
    return found;
  }
}

/**
 * What is told sooner is posted at once. A question that needs a module which the snapshot lacks is asked again of a Python
 * that has them all.
 * @param {string} request
 */
async function answered(request) {
  const { told, way } = await python;
  const reply = await told(request, (part) => self.postMessage(part)).catch((fault) => lost(request, `ModuleNotFoundError: ${fault}`));
  if (way === "ordinary" || !LACKING.test(reply)) return reply;
  const whole = ordinarily();
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
const practice = makePractice(async (request) => (await python).ask(request));
self.onmessage = async ({ data }) => {
  if (data === HUSH) return practice.hush();
  practice.asked();
  self.postMessage(await marked("answered", answered(data)));
  practice.answered(data);
};
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
