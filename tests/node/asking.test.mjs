// Asking Python, against workers that are played by the test.
import assert from "node:assert/strict";
import { beforeEach, mock, test } from "node:test";
import { startPython } from "../../site/src/python.mjs";

const SLOPE = { op: "answer", sum: "slope", givens: { rise: "3 in", run: "1 ft" }, bench: {} };

beforeEach(() => {
  mock.timers.reset();
  mock.timers.enable({ apis: ["setTimeout"] });
});

/** Python with workers that say only what they are made to: `said` holds each one's mail. */
function pythonWithPlayers() {
  const players = [];
  const states = [];
  const start = () => {
    const player = { mail: [], stopped: false, onmessage: null, onerror: null };
    player.postMessage = (text) => player.mail.push(JSON.parse(text));
    player.terminate = () => void (player.stopped = true);
    player.say = (told) => player.onmessage({ data: JSON.stringify(told) });
    players.push(player);
    return player;
  };
  const { ask } = startPython({ onState: (state, say) => states.push(say ? `${state}: ${say}` : state), start });
  return { ask, players, states };
}

test("a question asked before Python wakes waits for it in the worker", async () => {
  const { ask, players, states } = pythonWithPlayers();
  const reply = ask(SLOPE);
  assert.deepEqual(players[0].mail, [{ ...SLOPE, id: 1 }]);
  mock.timers.tick(59_000);
  players[0].say({ ready: true });
  players[0].say({ id: 1, ok: true, answer: "steep" });
  assert.deepEqual(await reply, { ok: true, answer: "steep" });
  assert.deepEqual(states, ["waking", "ready"]);
});

test("replies find their questions by id, in any order", async () => {
  const { ask, players } = pythonWithPlayers();
  players[0].say({ ready: true });
  const replies = [ask(SLOPE), ask(SLOPE)];
  players[0].say({ id: 2, ok: true, answer: "second" });
  players[0].say({ id: 1, ok: true, answer: "first" });
  assert.deepEqual((await Promise.all(replies)).map(({ answer }) => answer), ["first", "second"]);
});

test("what is told sooner is heard at once, and is part of the reply", async () => {
  const { ask, players } = pythonWithPlayers();
  const heard = [];
  const reply = ask(SLOPE, (part) => heard.push(part));
  players[0].say({ ready: true });
  players[0].say({ id: 1, ok: true, more: true, answer: { sum: "slope", answers: ["steep"] } });
  assert.deepEqual(heard, [{ ok: true, more: true, answer: { sum: "slope", answers: ["steep"] } }]);
  players[0].say({ id: 1, ok: true, answer: { figure: "triangle" } });
  assert.deepEqual(await reply, { ok: true, answer: { sum: "slope", answers: ["steep"], figure: "triangle" } });
});

test("a worker lost between the parts is asked for both again", async () => {
  const { ask, players } = pythonWithPlayers();
  const reply = ask(SLOPE, () => {});
  players[0].say({ ready: true });
  players[0].say({ id: 1, ok: true, more: true, answer: { answers: ["steep"] } });
  players[0].onerror({ preventDefault() {} });
  assert.deepEqual(players[1].mail, [{ ...SLOPE, id: 1 }]);
  players[1].say({ ready: true });
  players[1].say({ id: 1, ok: true, answer: { answers: ["steeper"], figure: "triangle" } });
  assert.deepEqual(await reply, { ok: true, answer: { answers: ["steeper"], figure: "triangle" } });
});

test("a fault in the rest is the reply", async () => {
  const { ask, players } = pythonWithPlayers();
  const reply = ask(SLOPE, () => {});
  players[0].say({ id: 1, ok: true, more: true, answer: { answers: ["steep"] } });
  players[0].say({ id: 1, ok: false, refusals: [], givens: {}, fault: "lost the pencil" });
  assert.equal((await reply).fault, "lost the pencil");
});

test("a worker that falls silent is stopped, started once more and asked again", async () => {
  const { ask, players, states } = pythonWithPlayers();
  players[0].say({ ready: true });
  const reply = ask(SLOPE);
  mock.timers.tick(10_000);
  assert.ok(players[0].stopped);
  players[1].say({ ready: true });
  players[1].say({ id: players[1].mail[0].id, ok: true, answer: "steep" });
  assert.equal((await reply).answer, "steep");
  assert.deepEqual(states, ["waking", "ready", "waking", "ready"]);
});

test("after the second loss the page is told in a sentence, and so is every question", async () => {
  const { ask, players, states } = pythonWithPlayers();
  const reply = ask(SLOPE);
  mock.timers.tick(60_000);
  mock.timers.tick(60_000);
  assert.equal(players.length, 2);
  assert.match(states.at(-1), /^failed: .*What you typed is kept/);
  assert.match((await reply).fault, /What you typed is kept/);
  assert.match((await ask(SLOPE)).fault, /What you typed is kept/);
});

test("a worker whose script breaks, or whose Python does not start, is started once more", () => {
  const { players, states } = pythonWithPlayers();
  players[0].onerror({ preventDefault() {} });
  assert.equal(players.length, 2);
  players[1].say({ failed: "no memory" });
  assert.equal(players.length, 2);
  assert.match(states.at(-1), /^failed/);
});

test("once all is answered, an earlier loss no longer counts", async () => {
  const { ask, players } = pythonWithPlayers();
  players[0].say({ failed: "once" });
  players[1].say({ ready: true });
  const reply = ask(SLOPE);
  players[1].say({ id: 1, ok: true });
  await reply;
  ask(SLOPE);
  mock.timers.tick(10_000);
  assert.equal(players.length, 3);
});

test("a question that no worker can answer is not asked for ever", async () => {
  const { ask, players } = pythonWithPlayers();
  const reply = ask(SLOPE);
  for (let times = 0; times < 5; times += 1) {
    players.at(-1).say({ ready: true });
    mock.timers.tick(10_000);
  }
  assert.equal(players.length, 2);
  assert.equal((await reply).ok, false);
});

test("a worker that was given up is not listened to", async () => {
  const { ask, players } = pythonWithPlayers();
  players[0].say({ ready: true });
  const reply = ask(SLOPE);
  mock.timers.tick(10_000);
  players[0].say({ id: 1, ok: true, answer: "late" });
  players[1].say({ ready: true });
  players[1].say({ id: 1, ok: true, answer: "in time" });
  assert.equal((await reply).answer, "in time");
});

test("a worker with nothing to answer may be silent as long as it likes", () => {
  const { players } = pythonWithPlayers();
  players[0].say({ ready: true });
  mock.timers.tick(3_600_000);
  assert.equal(players.length, 1);
});
