// node compress.mjs FOLDER CACHE: puts name.br and name.gz beside every file that they make smaller; each is made once.
import { createHash } from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";

const [folder, cache] = process.argv.slice(2);
const ways = {
  br: (bytes) => brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length } }),
  gz: (bytes) => gzipSync(bytes, { level: 9 }),
};

fs.mkdirSync(cache, { recursive: true });
for (const { name, parentPath } of fs.readdirSync(folder, { recursive: true, withFileTypes: true }).filter((one) => one.isFile())) {
  const bytes = fs.readFileSync(path.join(parentPath, name));
  for (const [ending, way] of Object.entries(ways)) {
    const small = once(path.join(cache, `${createHash("sha256").update(bytes).digest("hex")}.${ending}`), () => way(bytes));
    if (small.length < bytes.length * 0.95) fs.writeFileSync(path.join(parentPath, `${name}.${ending}`), small);
  }
}

function once(file, make) {
  if (!fs.existsSync(file)) fs.writeFileSync(file, make());
  return fs.readFileSync(file);
}
