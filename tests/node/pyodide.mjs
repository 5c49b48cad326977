// node pyodide.mjs LIB CALC: the page's own way of starting Python, from the built files; then a line in is a request, a line
// out its reply.
import fs from "node:fs";
import { createInterface } from "node:readline";
import { gunzipSync } from "node:zlib";
import { boot } from "../../site/src/boot.mjs";

const [lib, calc] = process.argv.slice(2).map((file) => new Uint8Array(gunzipSync(fs.readFileSync(file))));
const ask = await boot({ config: {}, zips: Promise.resolve({ lib, calc }) });
for await (const line of createInterface({ input: process.stdin })) process.stdout.write(`${ask(line)}\n`);
