// The file that holds the memory of the started interpreter: only those pages that differ from a fresh instance's.
//
//   bytes 0..8    "tenpenny"
//   bytes 8..32   six numbers: version of this form, memory in bytes, length of the state, runs of pages, nothing, checksum
//   bytes 32..64  which build of Pyodide it is of
//   then          the runs (first page, pages); the state that Pyodide hands back, as JSON; up to a multiple of 16, the pages
//
// Numbers are 32 bits, little end first. The checksum is over all that does not hold it.

const NAME = [...new TextEncoder().encode("tenpenny")];
const FORM = 1;
const HEAD = 64;
const PAGE = 4096;

/** How much memory the interpreter is started with, in bytes: known before the file is here, so that neither waits for the other. */
export const MEMORY = 30 * 1024 * 1024;

const SUM = 7; // which number the checksum is

/** @typedef {{ memory: number, build: Uint8Array, state: Uint8Array }} About what a snapshot says of itself */
/** @typedef {About & { apply: (heap: Uint8Array) => void }} Snapshot */

/** @param {number} length */
const aligned = (length) => Math.ceil(length / 16) * 16;

/**
 * The file for a memory, over that of a fresh instance.
 * @param {Uint8Array} heap @param {Uint8Array} fresh @param {Omit<About, "memory">} about
 */
export function packed(heap, fresh, { build, state }) {
  const runs = differing(heap, fresh);
  const pages = runs.reduce((sum, [, count]) => sum + count, 0);
  const begin = aligned(HEAD + runs.length * 8 + state.length);
  const file = new Uint8Array(begin + pages * PAGE);
  file.set(NAME);
  file.set(build, 32);
  const numbers = new Uint32Array(file.buffer, 0, HEAD / 4 + runs.length * 2);
  numbers.set(runs.flat(), HEAD / 4);
  file.set(state, HEAD + runs.length * 8);
  let at = begin;
  for (const [page, count] of runs) {
    file.set(heap.subarray(page * PAGE, (page + count) * PAGE), at);
    at += count * PAGE;
  }
  numbers.set([FORM, heap.length, state.length, runs.length, 0, 0], 2);
  numbers[SUM] = checksum(file);
  return file;
}

/** Runs of pages that are not the same. @param {Uint8Array} heap @param {Uint8Array} fresh */
function differing(heap, fresh) {
  const [now, before] = [words(heap), words(fresh)];
  /** @type {[number, number][]} */
  const runs = [];
  for (let page = 0; page < heap.length / PAGE; page += 1) {
    if (same(now, before, page)) continue;
    const last = runs.at(-1);
    if (last && last[0] + last[1] === page) last[1] += 1;
    else runs.push([page, 1]);
  }
  return runs;
}

/** @param {Uint32Array} now @param {Uint32Array} before @param {number} page */
function same(now, before, page) {
  const begin = (page * PAGE) / 4;
  for (let at = begin; at < begin + PAGE / 4; at += 1) if (now[at] !== (before[at] ?? 0)) return false;
  return true;
}

/**
 * Read a file. Throws a sentence when it is damaged, or of another form or build.
 * @param {ArrayBuffer} buffer @param {string} build in hexadecimal
 * @returns {Snapshot}
 */
export function opened(buffer, build) {
  const file = new Uint8Array(buffer);
  if (file.length < HEAD || file.length % 16 || NAME.some((byte, at) => file[at] !== byte)) throw new Error("not a snapshot");
  const [form = 0, memory = 0, length = 0, count = 0, , sum] = new Uint32Array(buffer, 8, 6);
  if (form !== FORM) throw new Error(`a snapshot of form ${form}, not ${FORM}`);
  if (hexadecimal(file.subarray(32, HEAD)) !== build) throw new Error("a snapshot of another build of Pyodide");
  if (checksum(file) !== sum) throw new Error("a snapshot that is damaged");
  const runs = new Uint32Array(buffer, HEAD, count * 2);
  const state = file.subarray(HEAD + count * 8, HEAD + count * 8 + length);
  const begin = aligned(HEAD + count * 8 + length);
  return { memory, build: file.subarray(32, HEAD), state, apply: (heap) => apply(heap, runs, file.subarray(begin)) };
}

/** @param {Uint8Array} heap @param {Uint32Array} runs @param {Uint8Array} pages */
function apply(heap, runs, pages) {
  let from = 0;
  for (let run = 0; run < runs.length; run += 2) {
    const [page = 0, count = 0] = runs.subarray(run, run + 2);
    heap.set(pages.subarray(from, from + count * PAGE), page * PAGE);
    from += count * PAGE;
  }
}

/** FNV-1a over 32-bit words, in four strands that a processor can work on side by side. @param {Uint8Array} file */
function checksum(file) {
  const all = words(file);
  let [a, b, c, d] = [1, 2, 3, file.length];
  for (let at = 0; at < all.length; at += 4) {
    a = Math.imul(a ^ (all[at] ?? 0), 0x01000193);
    b = Math.imul(b ^ (all[at + 1] ?? 0), 0x01000193);
    c = Math.imul(c ^ (all[at + 2] ?? 0), 0x01000193);
    d = Math.imul(d ^ (at + 3 === SUM ? 0 : (all[at + 3] ?? 0)), 0x01000193);
  }
  return [a, b, c, d].reduce((sum, strand) => Math.imul(sum ^ strand, 0x01000193), 0) >>> 0;
}

/** @param {Uint8Array} bytes */
function words(bytes) {
  return new Uint32Array(bytes.buffer, bytes.byteOffset, bytes.length / 4);
}

/** @param {Uint8Array} bytes */
export function hexadecimal(bytes) {
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
