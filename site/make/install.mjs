// node install.mjs WHEELS INTO: micropip installs the wheels in Pyodide, from files and in the order given, each proving
// that it runs on that Python and lacks nothing; what they put into site-packages is copied to INTO.
import fs from "node:fs";
import path from "node:path";
import { loadPyodide } from "pyodide";

const [wheels, into] = process.argv.slice(2);
const LOCK = JSON.parse(fs.readFileSync(new URL(import.meta.resolve("pyodide/pyodide-lock.json")), "utf8"));
const python = await loadPyodide({ lockFileContents: { ...LOCK, packages: {} }, packageBaseUrl: "/nowhere/" });
const home = String(python.runPython("import site; site.getsitepackages()[0]"));

const [micropip, ...names] = JSON.parse(fs.readFileSync(0, "utf8"));
const read = (name) => new Uint8Array(fs.readFileSync(path.join(wheels, name)));
python.unpackArchive(read(micropip), "wheel", { extractDir: "/micropip" });
python.FS.mkdir("/wheels");
for (const name of names) python.FS.writeFile(`/wheels/${name}`, read(name));
await python.runPythonAsync(`
import sys
sys.path.insert(0, "/micropip")
import micropip
for name in ${JSON.stringify(names)}:
    await micropip.install("emfs:/wheels/" + name)
`);
copy(home, into);

function copy(from, to) {
  fs.mkdirSync(to, { recursive: true });
  for (const name of python.FS.readdir(from).filter((one) => ![".", "..", "__pycache__"].includes(one))) {
    const [inside, outside] = [`${from}/${name}`, path.join(to, name)];
    if (python.FS.isDir(python.FS.stat(inside).mode)) copy(inside, outside);
    else fs.writeFileSync(outside, python.FS.readFile(inside));
  }
}
