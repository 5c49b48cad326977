// What is kept on this device. A file is kept under the SHA-256 of what is in it, so a new release fetches only what changed,
// and nothing is believed to be here that has not been read back and reckoned again.
import { abreast } from "./abreast.mjs";

/**
 * @typedef {object} File A line of the list that the build writes.
 * @property {string} url from the folder that the pages are in
 * @property {string} hash SHA-256 in hexadecimal
 * @property {number} bytes
 * @property {"shell" | "runtime"} part
 *
 * @typedef {{ version: string, files: File[], settled?: boolean }} Listed `settled`: what older releases kept is gone
 */

/** @type {Record<string, string>} */
const TYPES = {
  html: "text/html; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  mjs: "text/javascript; charset=utf-8",
  css: "text/css; charset=utf-8",
  json: "application/json",
  webmanifest: "application/manifest+json",
  svg: "image/svg+xml",
  png: "image/png",
  wasm: "application/wasm",
  txt: "text/plain; charset=utf-8",
};

/** @param {BufferSource} bytes */
export async function hashOf(bytes) {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/**
 * The file that a URL means: query and fragment ignored, the folder itself being index.html.
 * @param {File[]} files @param {string} base @param {string} url
 */
export function fileAt(files, base, url) {
  const { origin, pathname } = new URL(url, base);
  const home = new URL(base);
  if (origin !== home.origin || !pathname.startsWith(home.pathname)) return undefined;
  const name = pathname.slice(home.pathname.length) || "index.html";
  return files.find((file) => file.url === name);
}

export class Store {
  /** @param {Cache} cache @param {string} base @param {typeof fetch} [get] */
  constructor(cache, base, get = (...asked) => fetch(...asked)) {
    this.cache = cache;
    this.base = base;
    this.get = get;
  }

  /** The store of the pages under `base`. @param {string} base */
  static async open(base) {
    return new Store(await caches.open(`tenpenny ${new URL(base).pathname}`), base);
  }

  /** @param {string} hash */
  key(hash) {
    return new URL(`kept/${hash}`, this.base).href;
  }

  /** The file with this hash, as it is kept. @param {string} hash */
  kept(hash) {
    return this.cache.match(this.key(hash));
  }

  /** What is kept for a URL by the release in use. @param {string} url */
  async named(url) {
    const file = fileAt((await this.listed())?.files ?? [], this.base, url);
    return file && this.kept(file.hash);
  }

  /** The list of the release in use. @returns {Promise<Listed | undefined>} */
  async listed() {
    return (await this.kept("list"))?.json();
  }

  /** @param {Listed} listed */
  async use(listed) {
    await this.cache.put(this.key("list"), Response.json(listed));
  }

  /** Is this file here, whole? Reads it back and reckons its hash. @param {File} file */
  async whole(file) {
    const kept = await this.kept(file.hash);
    return kept !== undefined && (await hashOf(await kept.arrayBuffer())) === file.hash;
  }

  /** Fetch a file, hold it to its hash, keep it; a damaged one is let go of first. @param {File} file */
  async fetch(file) {
    await this.cache.delete(this.key(file.hash));
    const bytes = (await this.ask(file, "default")) ?? (await this.ask(file, "reload"));
    if (!bytes) throw new Error(`${file.url} did not arrive as it was made`);
    const type = TYPES[file.url.split(".").pop() ?? ""] ?? "application/octet-stream";
    const made = () => new Response(bytes, { headers: { "content-type": type, "content-length": String(bytes.byteLength) } });
    await this.cache.put(this.key(file.hash), made());
    return made();
  }

  /** @param {File} file @param {RequestCache} how */
  async ask(file, how) {
    const response = await this.get(new URL(file.url, this.base).href, { cache: how });
    if (!response.ok) throw new Error(`${file.url} could not be fetched (${response.status})`);
    const bytes = await response.arrayBuffer();
    return (await hashOf(bytes)) === file.hash ? bytes : undefined;
  }

  /**
   * Have every one of these files here, whole: read each back, fetch what is missing or damaged, several at a time, and read that
   * back too. Begun again, it goes on where it stopped.
   * @param {File[]} files @param {(done: number, total: number) => void} tell bytes fetched, and to fetch
   */
  async fill(files, tell) {
    const missing = await this.missing(files);
    const total = missing.reduce((sum, file) => sum + file.bytes, 0);
    let done = 0;
    if (total) tell(done, total);
    await abreast(missing, async (file) => {
      await this.fetch(file);
      if (!(await this.whole(file))) throw new Error(`${file.url} could not be read back`);
      tell((done += file.bytes), total);
    });
  }

  /** Those of the files that are not here whole, one of those that are alike, the small ones first. @param {File[]} files */
  async missing(files) {
    /** @type {Map<string, File>} */
    const found = new Map();
    await abreast(files, async (file) => void ((await this.whole(file)) || found.set(file.hash, file)));
    return [...found.values()].sort((a, b) => a.bytes - b.bytes);
  }

  /** Let go of everything that these files do not need. @param {File[]} files */
  async prune(files) {
    const needed = new Set(["list", ...files.map((file) => file.hash)].map((hash) => this.key(hash)));
    const keys = await this.cache.keys();
    await Promise.all(keys.filter((key) => !needed.has(key.url)).map((key) => this.cache.delete(key)));
  }
}
