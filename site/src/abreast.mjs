// Work on many things, several at a time: a host that is far away is not waited for file by file.

const LANES = 6; // as many as a browser asks of one host at a time

/**
 * Do the work for each of the things, in their order, so many at a time. The first fault ends it, when what is under way is done.
 * @template T
 * @param {Iterable<T>} things @param {(one: T) => Promise<unknown>} work @param {number} [lanes]
 */
export async function abreast(things, work, lanes = LANES) {
  const waiting = [...things];
  const lane = async () => {
    try {
      for (; waiting.length; ) await work(/** @type {T} */ (waiting.shift()));
    } catch (fault) {
      waiting.length = 0;
      throw fault;
    }
  };
  const ended = await Promise.allSettled(Array.from({ length: lanes }, lane));
  const lost = ended.find(({ status }) => status === "rejected");
  if (lost) throw /** @type {PromiseRejectedResult} */ (lost).reason;
}
