// node compile.mjs: reads {place: {file: text}} and writes to each place the files compiled by Pyodide's own Python: code for
// those that end in .py, the text of others, in one marshalled dictionary. Docstrings and line numbers, which a page has no use
// for, are left out. Where there is nothing to compile, the standard library is, as a zip for the interpreter to start from.
import fs from "node:fs";
import { loadPyodide } from "pyodide";

const LOCK = JSON.parse(fs.readFileSync(new URL(import.meta.resolve("pyodide/pyodide-lock.json")), "utf8"));
const STDLIB = new URL("python_stdlib.zip", import.meta.resolve("pyodide"));
const bundles = JSON.parse(fs.readFileSync(0, "utf8")); // before Python starts, which reads there too
const python = await loadPyodide({ lockFileContents: { ...LOCK, packages: {} }, packageBaseUrl: "/nowhere/", env: { PYTHONHASHSEED: "0" } });
python.runPython(`
import io, json, marshal, zipfile
from importlib._bootstrap_external import _code_to_hash_pyc
from importlib.util import source_hash

def compiled(name, text):
    return bare(compile(text, name, "exec", optimize=2, dont_inherit=True))

def bare(code):
    consts = tuple(bare(each) if isinstance(each, type(code)) else each for each in code.co_consts)
    return code.replace(co_linetable=b"", co_consts=consts)

def bundle(texts):
    found = {name: compiled(name, text) if name.endswith(".py") else text for name, text in json.loads(texts).items()}
    return marshal.dumps(found)

def stdlib(path):
    out = io.BytesIO()
    with zipfile.ZipFile(path) as source, zipfile.ZipFile(out, "w") as made:
        for name in sorted(source.namelist()):
            text = source.read(name)
            if name.endswith(".py"):
                name, text = name + "c", _code_to_hash_pyc(compiled(name, text), source_hash(text), False)
            made.writestr(zipfile.ZipInfo(name), text)
    return out.getvalue()
`);

for (const [place, texts] of Object.entries(bundles)) {
  const bytes = Object.keys(texts).length ? made("bundle", JSON.stringify(texts)) : stdlib();
  fs.writeFileSync(`${place}.making`, bytes);
  fs.renameSync(`${place}.making`, place);
}

function stdlib() {
  python.FS.writeFile("/stdlib.zip", new Uint8Array(fs.readFileSync(STDLIB)));
  return made("stdlib", "/stdlib.zip");
}

function made(how, what) {
  return python.globals.get(how)(what).toJs();
}
