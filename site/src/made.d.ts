/** What the build puts in where these names stand; see site/make/bundle.py. */

/** The interpreter's own files: their folder, from the worker's, what its lock file says of the release, the snapshot. */
declare const CORE: { home: string; info: import("pyodide").Lockfile["info"]; wasm: Kept; snapshot: Kept };

/** A file of the build, and the SHA-256 that it is kept under. */
declare type Kept = { url: string; hash: string };

/** The worker's file, from the page's. */
declare const WORKER: string;

/** The page's own script, from the page. */
declare const APP: string;

/** Every file of this release. */
declare const LISTED: { version: string; files: { url: string; hash: string; bytes: number; part: "shell" | "runtime" }[] };

/** Pyodide's glue code, less what a page without libraries can do without; it takes the settings that loadPyodide makes. */
declare module "*/glue.js";
