// node pyodide.mjs PART...: the page's own way of starting Python, from the built files; then a line in is a request, a line
// out its reply.
import fs from "node:fs";
import { createInterface } from "node:readline";
import { gunzipSync } from "node:zlib";
import { boot } from "../../site/src/boot.mjs";

const parts = process.argv.slice(2).map((file) => JSON.parse(gunzipSync(fs.readFileSync(file)).toString()));
const ask = await boot({ config: {}, files: Promise.resolve(parts) });
for await (const line of createInterface({ input: process.stdin })) process.stdout.write(`${ask(line)}\n`);
