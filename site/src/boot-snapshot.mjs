// Starting Python from a snapshot: a picture of the started interpreter's memory, made by the build (site/make/snapshot.mjs).
//
// Nothing is imported and next to nothing runs; what is left is to compile and instantiate the wasm and to put the pages of
// memory back. The downloads and the compiling go on side by side. This leans on what Pyodide does inside, which the build
// holds to one release: whatever does not fit throws, and the ordinary start takes its place.
import { loadPyodide, version } from "pyodide";
import { mark, marked } from "./marks.mjs";
import { MEMORY, opened } from "./snapshot.mjs";

/** The release whose insides are leaned on; another is started the ordinary way until this has been looked at again. */
export const RELEASE = "314.0.7";

/** A zip with nothing in it, in the standard library's place: all that is needed is in the snapshot. */
const EMPTY_ZIP = Uint8Array.of(80, 75, 5, 6, ...new Array(18).fill(0));
const STDLIB = "empty.zip";
const NOTHING = new Uint8Array(16); // only tells Pyodide that a snapshot is coming

/**
 * @typedef {object} Parts
 * @property {import("pyodide").PyodideConfig} config where the interpreter's own files are
 * @property {Promise<{ default: (settings: any) => Promise<any> }>} glue the script that the snapshot was made with
 * @property {Promise<WebAssembly.Module>} wasm compiled
 * @property {Promise<ArrayBuffer>} snapshot the file
 */

/**
 * Python as it was when the snapshot was made. Rejects when the snapshot cannot be used.
 * @param {Parts} parts
 */
export async function wake({ config, glue, wasm, snapshot }) {
  if (version !== RELEASE) throw new Error(`Pyodide is ${version}; the snapshot's way in is for ${RELEASE}`);
  /** @param {any} settings */
  const createPyodideModule = async (settings) => {
    const reading = snapshot.then((bytes) => opened(bytes, settings.API.config.BUILD_ID));
    const linking = marked("linked", glue.then(({ default: link }) => link(Object.assign(settings, { INITIAL_MEMORY: MEMORY }))));
    const [made, found] = await Promise.all([linking, reading]);
    made.API.restoreSnapshot = () => {
      if (made.HEAPU8.length !== found.memory) throw new Error("the memory is not as large as the snapshot's");
      found.apply(made.HEAPU8);
      mark("restored");
      return JSON.parse(new TextDecoder().decode(found.state));
    };
    return made;
  };
  const giveBack = lend(config.indexURL ?? "", wasm);
  try {
    return await loadPyodide({ stdLibURL: `${config.indexURL}${STDLIB}`, ...config, createPyodideModule, _loadSnapshot: NOTHING });
  } finally {
    giveBack();
  }
}

/**
 * Until given back, Pyodide gets an empty standard library, the wasm that is compiled already, and the same small module
 * each time it wants one of the same bytes (one for each of its own functions that the interpreter may call).
 * @param {string} home @param {Promise<WebAssembly.Module>} wasm
 */
function lend(home, wasm) {
  const { fetch: own } = globalThis;
  const { instantiateStreaming, Module } = WebAssembly;
  globalThis.fetch = async (wanted, options) => {
    if (String(wanted) === `${home}${STDLIB}`) return new Response(EMPTY_ZIP);
    if (String(wanted) === `${home}pyodide.asm.wasm`) return new Response();
    return own(wanted, options);
  };
  WebAssembly.instantiateStreaming = async (_, imports) => {
    const module = await wasm;
    return { module, instance: await WebAssembly.instantiate(module, imports) };
  };
  WebAssembly.Module = remembering(Module);
  return () => {
    globalThis.fetch = own;
    Object.assign(WebAssembly, { instantiateStreaming, Module });
  };
}

/** Makes a module of the same bytes once only. @param {typeof WebAssembly.Module} own */
function remembering(own) {
  /** @type {Map<string, WebAssembly.Module>} */
  const made = new Map();
  return new Proxy(own, {
    construct(_, [bytes]) {
      const key = String(bytes);
      const module = made.get(key) ?? new own(bytes);
      made.set(key, module);
      return module;
    },
  });
}
