// node glue.mjs: writes Pyodide's own script with all left out that a page without libraries to link to cannot call.
//
// The script serves C libraries that are loaded later: it names every function of the interpreter, and holds all that such a
// library could ask of the browser (sound, screens, sockets). We load none. What is left out: the names of functions that the
// script itself does not use, what the interpreter does not import, and then whatever nothing refers to any more. What that
// leaves of the interpreter is in interpreter.mjs. A snapshot fits the script that it was made with and no other, since the
// script's own functions stand in the table that the interpreter calls by number.
import fs from "node:fs";
import { fileURLToPath } from "node:url";
import { tokenizer } from "acorn";
import { minify } from "terser";

/** What is asked of the module by our own code. */
const MAIN = ["main", "__main_argc_argv"]; // where the interpreter starts, looked up by name
const OURS = ["API", "HEAPU8", "_malloc", "_free"];
const LONGEST = 10; // rounds of looking for what nothing refers to

const file = (name) => fileURLToPath(new URL(name, import.meta.resolve("pyodide")));
const { imports } = WebAssembly.Module;

/** What the interpreter asks for is all that stays of what it could be given. @param {string} text */
function wanted(text) {
  const asked = new Set(imports(new WebAssembly.Module(fs.readFileSync(file("pyodide.asm.wasm")))).map(({ name }) => name));
  return once(text, /var wasmImports=\{([^}]*)\}/, (_, listed) => {
    const kept = listed.split(",").filter((one) => asked.has(one.split(":")[0]));
    return `var wasmImports={${kept.join(",")}}`;
  });
}

/** Names that are looked up on the module. @param {string} text */
function used(text) {
  const read = [/\.([\w$]+)/g, /\["([\w$]+)"\](?!=[^=])/g].flatMap((one) => [...text.matchAll(one)].map(([, name]) => name));
  return new Set([...read, ...OURS]);
}

/** Nothing is hung on the module that nobody looks up there. @param {string} text @param {string} loader */
function unhung(text, loader) {
  const own = used([...text.matchAll(/Module(\.[\w$]+|\["[\w$]+"\](?!=[^=]))/g)].map(([, how]) => how).join(" "));
  const known = new Set([...own, ...used(loader)]);
  return text
    .replace(/([\w$]+)=Module\["([\w$]+)"\]=wasmExports/g, (all, to, name) => (known.has(name) ? all : `${to}=wasmExports`))
    .replace(/Module\["([\w$]+)"\]=([\w$]+);/g, (all, name, from) => (name !== from || known.has(name) ? all : ""));
}

/** What nothing refers to goes, round after round. The marks that say how a function is called do not count. @param {string} text */
async function unused(text) {
  for (let round = 0; round < LONGEST; round += 1) {
    const compress = { defaults: false, unused: true, dead_code: true, side_effects: true, pure_getters: true, passes: 2, keep_fnames: true };
    const { code } = await minify(text, { module: true, ecma: 2020, compress, mangle: false });
    const times = counted(code);
    const marks = counted([...code.matchAll(/([\w$]+)\.sig="/g)].map(([, name]) => name).join(" "));
    text = code.replace(/([\w$]+)\.sig="\w*"([;,])/g, (all, name, end) => (times.get(name) > marks.get(name) + 1 ? all : end === "," ? "" : ";"));
    if (text === code) return text;
  }
  throw new Error("Pyodide's script does not come to rest");
}

/** How often each name stands in a text. @param {string} text */
function counted(text) {
  const times = new Map();
  for (const { type, value } of tokenizer(text, { ecmaVersion: "latest", sourceType: "module" })) {
    if (type.label === "name") times.set(value, (times.get(value) ?? 0) + 1);
  }
  return times;
}

/** Of the interpreter's functions those that are named are passed on, not thousands. @param {string} text */
function chosen(text) {
  const names = [...text.matchAll(/wasmExports(?:\["([^"]+)"\]|\.([\w$]+))/g)].map(([, quoted, plain]) => quoted ?? plain);
  const list = JSON.stringify([...new Set([...MAIN, ...names])].sort().join(" "));
  const passed = `Object.fromEntries(${list}.split(" ").map((name)=>[name,instance.exports[name]]).filter(([,found])=>found))`;
  return once(text, /wasmExports=instance\.exports;/, () => `wasmExports=${passed};`);
}

/** @param {string} text @param {RegExp} what @param {(...found: string[]) => string} by */
function once(text, what, by) {
  if (!what.test(text)) throw new Error(`Pyodide's script holds no ${what}: look at site/make/glue.mjs again`);
  return text.replace(what, by);
}

const whole = fs.readFileSync(file("pyodide.asm.mjs"), "utf8").replaceAll(/\beval\(/g, "notEvaluated("); // the page's policy forbids it
const less = await unused(unhung(wanted(whole), fs.readFileSync(file("pyodide.mjs"), "utf8")));
const { code } = await minify(chosen(less), { module: true, ecma: 2020, compress: { defaults: false }, mangle: true });
process.stdout.write(code);
