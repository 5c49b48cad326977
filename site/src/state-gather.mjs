/**
 * Puts off writing, so that what changes often while a hand types is written once; what is typed is noted meanwhile.
 * @param {(name: string, value: unknown) => Promise<void>} write
 * @param {(go: () => void, after: number) => void} [later]
 */
export function makeGathering(write, later = setTimeout) {
  /** @typedef {{ value: unknown, go: () => void, written: Promise<void> }} Waiting */
  /** What waits to be written, by name. @type {Map<string, Waiting>} */
  const waiting = new Map();

  /** @param {string} name */
  function begun(name) {
    /** @type {Waiting} */
    const one = { value: undefined, go() {}, written: Promise.resolve() };
    const due = new Promise((done) => void (one.go = () => done(undefined)));
    one.written = due.then(() => {
      waiting.delete(name);
      return write(name, one.value);
    });
    waiting.set(name, one);
    return one;
  }

  /**
   * Write the value under its name `after` milliseconds, 0 for at once, or with what waits under that name already; settled
   * when that, or a later value, has been written.
   * @param {string} name @param {unknown} value @param {number} after @returns {Promise<void>}
   */
  return (name, value, after) => {
    const first = !waiting.has(name);
    const one = waiting.get(name) ?? begun(name);
    one.value = value;
    if (!after) one.go();
    else if (first) later(one.go, after);
    return one.written;
  };
}
