// node from_snapshot.mjs FOLDER EMPTY.zip PYODIDE INTERPRETER: the page's quick way of starting Python, from the built files; then a line in
// is a request, a line out its reply.
import fs from "node:fs";
import path from "node:path";
import { createInterface } from "node:readline";
import { wake } from "../../site/src/boot-snapshot.mjs";
import { asking } from "../../site/src/late.mjs";

const [folder, stdLibURL, pyodide, indexURL] = process.argv.slice(2);
const glue = import(path.join(indexURL, "glue.mjs"));
const read = async (name) => new Uint8Array(fs.readFileSync(path.join(folder, name))).buffer;
const { name, sums } = JSON.parse(fs.readFileSync(path.join(folder, "written.json"), "utf8"));
const { info } = JSON.parse(fs.readFileSync(path.join(pyodide, "pyodide-lock.json"), "utf8"));
const config = { indexURL, lockFileContents: { info, packages: {} }, packageBaseUrl: "/nowhere/", stdLibURL };
const python = await wake({ config, glue, wasm: new Promise(() => {}), snapshot: read(name) });
const { ask } = asking(python, sums, read);
for await (const line of createInterface({ input: process.stdin })) process.stdout.write(`${await ask(line)}\n`);
