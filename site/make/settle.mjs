// Before a snapshot: what Python no longer needs is let go of, and memory that is free again is made zero, since what was
// left in it would be compressed and sent.

const SMALLEST = 64;
const LARGEST = 1 << 21;

/** @param {any} python */
export function settle(python) {
  python.runPython(`
import gc, linecache, random, sys, zipimport
random.seed(0)
sys.path_importer_cache.clear()
zipimport._zip_directory_cache.clear()
linecache.clearcache()
for _ in range(3):
    gc.collect()
del gc, linecache, random, sys, zipimport, _
`);
  small(python);
  large(python._module);
}

/** Python's own small blocks: as many as are free of each size, filled and let go of. @param {any} python */
function small(python) {
  let told = "";
  python.setStderr({ batched: (line) => void (told += `${line}\n`) });
  python.runPython(`__import__("sys")._debugmallocstats()`);
  python.setStderr();
  const rows = [...told.matchAll(/^\s*(\d+)\s+(\d+)\s+(\d+)\s+(\d+)\s+(\d+)\s*$/gm)].map((row) => row.slice(1).map(Number));
  python.runPython(`
def fill(rows):
    head = bytes(0).__sizeof__()
    keep = [None] * sum(row[4] for row in rows)
    at = 0
    for _, size, _, _, free in rows:
        for _ in range(free - 2 if size > head + 1 else 0):
            keep[at] = bytes(size - head)
            at += 1
fill(${JSON.stringify(rows)})
del fill
__import__("gc").collect()
`);
}

/** The free blocks of malloc, the large ones first; nothing is taken from beyond what has been used. @param {any} module */
function large(module) {
  const taken = [];
  const top = module._malloc(LARGEST);
  module._free(top);
  for (let size = LARGEST; size >= SMALLEST; size = Math.floor(size * 0.9)) {
    for (;;) {
      const at = module._malloc(size);
      taken.push(at);
      if (at >= top) break;
      module.HEAPU8.fill(0, at, at + size);
    }
    module._free(taken.pop());
  }
  taken.forEach((at) => module._free(at));
}
