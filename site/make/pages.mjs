// node pages.mjs INTO: reads {catalogue, data, assets} and writes index.html, <id>.html and 404.html.
import fs from "node:fs";
import path from "node:path";
import { renderNotFound, renderPage } from "../src/prerender.mjs";

const { catalogue, data, assets } = JSON.parse(fs.readFileSync(0, "utf8"));
const write = (name, html) => fs.writeFileSync(path.join(process.argv[2], name), html);
for (const page of ["index", ...Object.keys(data)]) {
  write(`${page}.html`, renderPage({ page, catalogue, data: data[page] ?? null, assets }));
}
write("404.html", renderNotFound({ assets }));
