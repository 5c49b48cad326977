// What has been reached on the way from opening a page to its first answer: noted in the browser's own timeline, where the
// bench reads it (site/make/timeline.py) and anyone can see it in their browser's tools.

/** @param {string} name */
export function mark(name) {
  performance.mark(name);
}

/**
 * Something begun before it is awaited: when it is done is noted; should it fail, that is heard where it is awaited.
 * @template T @param {string} name @param {Promise<T>} begun
 */
export function marked(name, begun) {
  begun.then(
    () => mark(name),
    () => {},
  );
  return begun;
}
