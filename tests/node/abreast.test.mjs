// Work on many things, several at a time.
import assert from "node:assert/strict";
import { test } from "node:test";
import { abreast } from "../../site/src/abreast.mjs";

const turn = () => new Promise((done) => setImmediate(done));

test("each is done once, begun in order, no more at a time than there are lanes", async () => {
  const [begun, at] = [[], { once: 0, most: 0 }];
  await abreast("abcdefg", async (one) => {
    begun.push(one);
    at.most = Math.max(at.most, ++at.once);
    await turn();
    at.once--;
  }, 3);
  assert.equal(begun.join(""), "abcdefg");
  assert.deepEqual(at, { once: 0, most: 3 });
});

test("with more lanes than things, each is done once too; with none, nothing", async () => {
  const seen = [];
  await abreast([1, 2], async (one) => void seen.push(one));
  await abreast([], async (one) => void seen.push(one));
  assert.deepEqual(seen, [1, 2]);
});

test("after a fault nothing more is begun, what is under way is done first, and the fault is the one that came", async () => {
  const [begun, done] = [[], []];
  const work = async (one) => {
    begun.push(one);
    if (one === 2) throw new Error("lost");
    await turn();
    done.push(one);
  };
  await assert.rejects(abreast([1, 2, 3, 4, 5], work, 3), /lost/);
  assert.deepEqual(begun, [1, 2, 3]);
  assert.deepEqual(done, [1, 3]);
});
