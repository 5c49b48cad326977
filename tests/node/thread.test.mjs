// Python's thread is begun before anybody listens; what it said meanwhile is heard all the same.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";

class Worker extends EventTarget {
  constructor(address, { name }) {
    super();
    Worker.begun.push(Object.assign(this, { address: String(address), name }));
  }
  set onmessage(heard) {
    this.heard = heard;
  }
  set onerror(heard) {
    this.failed = heard;
  }
  dispatchEvent(event) {
    (event.type === "error" ? this.failed : this.heard)(event);
    return true;
  }
}

globalThis.ErrorEvent ??= class ErrorEvent extends Event {
  constructor(type, { message, ...told }) {
    super(type, told);
    this.message = message;
  }
};
Object.assign(globalThis, { Worker, WORKER: "code/worker.js", document: { baseURI: "https://bench.test/shop/" } });
const { startEarly, startThread } = await import("../../site/src/thread.mjs");

beforeEach(() => void (Worker.begun = []));

/** What is heard from a thread once its mail has come. */
async function heardFrom(thread) {
  const heard = [];
  thread.onmessage = ({ data }) => heard.push(data);
  thread.onerror = ({ message }) => heard.push(`broke: ${message}`);
  await new Promise((done) => setTimeout(done));
  return heard;
}

test("the thread begun early is the one that the page gets, with all it has said so far", async () => {
  startEarly("slope");
  const [early] = Worker.begun;
  early.dispatchEvent(new MessageEvent("message", { data: "awake" }));
  early.dispatchEvent(new ErrorEvent("error", { message: "torn" }));
  const thread = startThread("slope", false);
  assert.equal(thread, early);
  assert.deepEqual(await heardFrom(thread), ["awake", "broke: torn"]);
  assert.equal(early.address, "https://bench.test/shop/code/worker.js#slope");
});

test("the next one is new, and so is one that is to start the ordinary way", () => {
  startEarly("slope");
  assert.equal(startThread("slope", true).name, "ordinary");
  assert.equal(startThread("slope", false).name, "python");
  assert.equal(Worker.begun.length, 3);
});
