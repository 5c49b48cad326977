// node interpreter.mjs FOLDER: writes Pyodide's interpreter beside its script, which glue.mjs made, without what that script can
// neither call nor give it: the names of functions that are for C libraries loaded later, and then whatever nothing refers to any more. What
// stays is as it was released, and so are the memory and the table that it calls functions from by number.
import { execFileSync } from "node:child_process";
import fs from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

const [script, into, graph] = ["glue.mjs", "pyodide.asm.wasm", "graph.json"].map((name) => path.join(process.argv[2], name));
const released = fileURLToPath(import.meta.resolve("pyodide/pyodide.asm.wasm"));
const binaryen = path.dirname(fileURLToPath(import.meta.resolve("binaryen")));
const FEATURES = "exception-handling reference-types bulk-memory mutable-globals nontrapping-float-to-int sign-ext multivalue";
const enabled = FEATURES.split(" ").map((name) => `--enable-${name}`);

/** What the script looks up among the interpreter's exports. */
function called() {
  const listed = /Object\.fromEntries\("([^"]*)"\.split/.exec(fs.readFileSync(script, "utf8"));
  if (!listed) throw new Error("the script does not list what it calls: look at site/make/glue.mjs again");
  const exported = new Set(WebAssembly.Module.exports(new WebAssembly.Module(fs.readFileSync(released))).map(({ name }) => name));
  return listed[1].split(" ").filter((name) => exported.has(name));
}

const names = called();
const outside = { name: "the script", root: true, reaches: names.map((name) => `to ${name}`) };
fs.writeFileSync(graph, JSON.stringify([outside, ...names.map((name) => ({ name: `to ${name}`, export: name }))]));
const order = [path.join(binaryen, "bin", "wasm-metadce"), released, ...enabled, "--graph-file", graph, "-o", into];
execFileSync(process.execPath, order, { stdio: ["ignore", "ignore", "inherit"] });
fs.rmSync(graph);
