// node about.mjs INTO: reads {sums, held, style} and writes about/index.html and about/<id>.html, pages to be read.
import fs from "node:fs";
import path from "node:path";
import { h } from "preact";
import { renderPaper } from "../src/prerender.mjs";
import { Trust, TrustList } from "../src/views/trust.mjs";

const { sums, held, style } = JSON.parse(fs.readFileSync(0, "utf8"));
const folder = path.join(process.argv[2], "about");
const write = (name, title, about, body) =>
  fs.writeFileSync(path.join(folder, `${name}.html`), renderPaper({ title, about, body, assets: { style } }));

fs.mkdirSync(folder, { recursive: true });
write("index", "How far each sum is to be trusted · Tenpenny", "Where each sum comes from, and how near it comes to what others have printed.", h(TrustList, { sums, held }));
for (const sum of sums) write(sum.id, `About ${sum.title.toLowerCase()} · Tenpenny`, sum.purpose, h(Trust, { sum, held: held[sum.id] }));
