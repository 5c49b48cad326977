// The sums' own code, brought to a Python that woke from a snapshot as each is asked for the first time (see late.py).

/** @typedef {(request: string, sooner: (part: string) => void) => Promise<string>} Told */
/** @typedef {Record<string, string[]>} Sums for each sum's file, those that hold its code and what it needs */

/**
 * A way to ask, JSON text in, JSON text out, that brings what the question needs first. `told` does the same, but hands over
 * what can be told sooner, and comes to the last part.
 * @param {any} python @param {Sums} sums @param {(file: string) => Promise<ArrayBuffer>} get
 * @returns {{ ask: (request: string) => Promise<string>, told: Told, bring: (id: string) => Promise<void> }}
 */
export function asking(python, sums, get) {
  const late = python.pyimport("late");
  const { handle, replies } = python.pyimport("calc.door");
  /** @type {Map<string, Promise<void>>} */
  const brought = new Map();
  late.name(python.toPy(Object.keys(sums)));

  /** @param {string} file */
  const fetched = async (file) => {
    const bytes = python.toPy(new Uint8Array(await get(file)));
    late.take(bytes);
    bytes.destroy();
  };
  /** Once each; one that did not come is tried again the next time. @param {string} file */
  const once = (file) => {
    const coming = brought.get(file) ?? fetched(file);
    brought.set(file, coming);
    return coming.catch((fault) => {
      brought.delete(file);
      throw fault;
    });
  };
  /** What one sum needs; everything, for a question that names none. @param {unknown} id */
  const bring = async (id) => {
    const known = filesOf(sums, id);
    await Promise.all((known.length ? known : Object.values(sums).flat()).map(once));
  };
  return {
    bring,
    ask: async (request) => {
      await bring(sumIn(request));
      return handle(request);
    },
    told: async (request, sooner) => {
      await bring(sumIn(request));
      return last(replies(request), sooner);
    },
  };
}

/** What a generator of Python's returns, what it yields having been handed over. @param {any} parts @param {(part: string) => void} sooner */
function last(parts, sooner) {
  try {
    let part = parts.next();
    for (; !part.done; part = parts.next()) sooner(part.value);
    return part.value;
  } finally {
    parts.destroy();
  }
}

/** The files that hold one sum's code and what it needs. @param {Sums} sums @param {unknown} id */
export function filesOf(sums, id) {
  return Object.entries(sums).flatMap(([file, needed]) => (idOf(file) === id ? needed : []));
}

/** "calc/sums/hinge_strip.py" is the file of "hinge-strip". @param {string} file */
function idOf(file) {
  return (file.split("/").pop() ?? "").replace(/\.py$/, "").replaceAll("_", "-");
}

/** @param {string} request */
function sumIn(request) {
  try {
    return JSON.parse(request).sum;
  } catch {
    return undefined; // no request at all; the door says so
  }
}
