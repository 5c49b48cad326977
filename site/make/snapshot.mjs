// node snapshot.mjs INTO: reads {interpreter, stdlib, late, bundles, modules, warm} and writes INTO, the snapshot of a Python that has
// imported the modules and run the warming. Clock and chance stand still meanwhile, so that the same goes in every time.
import fs from "node:fs";
import path from "node:path";
import { MEMORY, packed } from "../src/snapshot.mjs";
import { settle } from "./settle.mjs";

Date.now = () => 1e12;
performance.now = () => 0;
Math.random = () => 0.5;
crypto.getRandomValues = (array) => array.fill(7);

const { loadPyodide } = await import("pyodide");
const { info } = JSON.parse(fs.readFileSync(new URL(import.meta.resolve("pyodide/pyodide-lock.json")), "utf8"));
const { interpreter, stdlib, late, bundles, modules, warm } = JSON.parse(fs.readFileSync(0, "utf8"));
const { default: glue } = await import(path.join(interpreter, "glue.mjs"));
const config = {
  indexURL: interpreter,
  lockFileContents: { info, packages: {} },
  packageBaseUrl: "/nowhere/",
  stdLibURL: stdlib,
  env: { PYTHONHASHSEED: "0", PYTHONDONTWRITEBYTECODE: "1" },
  _sysExecutable: "python", // else this script's own place goes into the memory
};

const empty = await fresh();
const { heap, state, build } = await warmed();
if (heap.length !== MEMORY) throw new Error(`The snapshot has outgrown ${MEMORY} bytes of memory; give it more in src/snapshot.mjs`);
fs.writeFileSync(`${process.argv[2]}.making`, packed(heap, empty, { state, build }));
fs.renameSync(`${process.argv[2]}.making`, process.argv[2]);
process.exit(0);

/** The memory of an instance into which a snapshot is about to be put. */
function fresh() {
  return new Promise((done) => {
    const createPyodideModule = async (settings) => {
      const made = await glue({ ...settings, INITIAL_MEMORY: MEMORY });
      done(made.HEAPU8.slice());
      return new Promise(() => {}); // that is all that was wanted of it
    };
    void loadPyodide({ ...config, createPyodideModule, _loadSnapshot: new Uint8Array(16) });
  });
}

/** The memory of one that has everything imported, what Pyodide wants handed back with it, and which build it is. */
async function warmed() {
  const createPyodideModule = (settings) => glue(Object.assign(settings, { INITIAL_MEMORY: MEMORY }));
  const python = await loadPyodide({ ...config, createPyodideModule, _makeSnapshot: true });
  take(python);
  python.runPython(modules.map((name) => `import ${name}\n`).join(""));
  python.runPython(`exec(${JSON.stringify(warm)}, {"__name__": "warm"})`);
  settle(python);
  const raw = python.makeMemorySnapshot();
  const [, begin, length] = new Uint32Array(raw.buffer, 0, 3);
  const swapped = Buffer.from(raw.slice(16, 48)).swap32();
  return { heap: raw.subarray(begin), state: raw.subarray(48, 48 + length), build: new Uint8Array(swapped) };
}

function take(python) {
  for (const [at, file] of [late, ...bundles].entries()) python.FS.writeFile(`/bundle-${at}`, new Uint8Array(fs.readFileSync(file)));
  python.runPython(`
import marshal, sys, types
def read(at):
    with open(f"/bundle-{at}", "rb") as file:
        return file.read()
late = sys.modules["late"] = types.ModuleType("late")
exec(marshal.loads(read(0))["late.py"], late.__dict__)
for at in range(1, ${bundles.length + 1}):
    late.take(read(at))
del at, late, marshal, read, sys, types
`);
}
