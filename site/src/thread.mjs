/** Python's own thread: begun by the page's first script, taken over by the page when that has come to life. */

const EARLY = Symbol.for("tenpenny early thread");
/** @type {Record<symbol, { worker: Worker, said: (MessageEvent | ErrorEvent)[] } | undefined>} */
const begun = /** @type {any} */ (globalThis);

/** Begin before anybody listens; what it says is put by. @param {string} page */
export function startEarly(page) {
  const worker = start(page, false);
  /** @type {(MessageEvent | ErrorEvent)[]} */
  const said = [];
  worker.onmessage = (event) => void said.push(event);
  worker.onerror = (event) => void said.push(event);
  begun[EARLY] = { worker, said };
}

/**
 * The thread that was begun early, the first time; another after that. What it has said comes as soon as the caller listens.
 * @param {string} page which sum will be asked for first
 * @param {boolean} ordinary whether to leave the snapshot alone
 */
export function startThread(page, ordinary) {
  const early = begun[EARLY];
  begun[EARLY] = undefined;
  if (!early || ordinary) return start(page, ordinary);
  for (const event of early.said) queueMicrotask(() => early.worker.dispatchEvent(again(event)));
  return early.worker;
}

/** An event that was dispatched once cannot be dispatched as it is. @param {MessageEvent | ErrorEvent} event */
function again(event) {
  if (event instanceof MessageEvent) return new MessageEvent("message", { data: event.data });
  return new ErrorEvent("error", { message: event.message, cancelable: true });
}

/** @param {string} page @param {boolean} ordinary */
function start(page, ordinary) {
  const address = new URL(`${WORKER}#${page}`, document.baseURI);
  return new Worker(address, { type: "module", name: ordinary ? "ordinary" : "python" });
}
