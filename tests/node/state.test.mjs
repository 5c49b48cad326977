// The store of the page's state.
import assert from "node:assert/strict";
import { mock, test } from "node:test";
import { makeStore } from "../../site/src/state-store.mjs";

test("what is set before the beginning stands, and is drawn with the first change", () => {
  const drawn = [];
  const store = makeStore((state) => drawn.push(state));
  store.set({ python: "ready" });
  store.begin({ python: "waking", page: "slope" });
  assert.deepEqual(drawn, []);
  store.set({ focus: "rise" });
  assert.deepEqual(drawn, [{ python: "ready", page: "slope", focus: "rise" }]);
});

test("a change made while drawing is drawn afterwards, not within", () => {
  const steps = [];
  const store = makeStore(({ focus }) => {
    steps.push(`draw ${focus}`);
    if (focus === "rise") store.set({ focus: "" });
    steps.push(`drawn ${focus}`);
  });
  store.begin({});
  store.set({ focus: "rise" });
  assert.deepEqual(steps, ["draw rise", "drawn rise", "draw ", "drawn "]);
});

test("a drawing that fails does not stop the next", () => {
  let fails = true;
  const drawn = [];
  const store = makeStore(({ page }) => {
    if (fails) throw new Error("no");
    drawn.push(page);
  });
  store.begin({});
  assert.throws(() => store.set({ page: "one" }));
  fails = false;
  store.set({ page: "two" });
  assert.deepEqual(drawn, ["two"]);
});

test("changes made together are drawn once, after what was asked meanwhile", () => {
  const steps = [];
  const store = makeStore(({ rise, run }) => steps.push(`draw ${rise} ${run}`));
  store.begin({});
  store.together(() => {
    store.set({ rise: 3 });
    store.together(() => store.set({ run: 12 }));
    steps.push("ask");
  });
  assert.deepEqual(steps, ["ask", "draw 3 12"]);
});

test("changes made together that fail half way are drawn as far as they went", () => {
  const drawn = [];
  const store = makeStore(({ rise }) => drawn.push(rise));
  store.begin({});
  const failing = () => {
    store.set({ rise: 3 });
    throw new Error("no");
  };
  assert.throws(() => store.together(failing));
  store.together(() => {});
  assert.deepEqual(drawn, [3]);
});

test("what is typed is drawn with its answer, which is asked for at once", () => {
  mock.timers.enable({ apis: ["setTimeout"] });
  const drawn = [];
  const store = makeStore(({ rise, shown }) => drawn.push(`${rise} ${shown}`));
  store.begin({ rise: 3, shown: "steep" });
  store.soon(() => store.set({ rise: 2 }));
  assert.deepEqual([store.get().rise, drawn], [2, []]);
  store.set({ shown: "less" });
  mock.timers.tick(1000);
  assert.deepEqual(drawn, ["2 less"]);
  mock.timers.reset();
});

test("what is typed is drawn alone when its answer is long in coming, and at once when it is known", () => {
  mock.timers.enable({ apis: ["setTimeout"] });
  const drawn = [];
  const store = makeStore(({ rise, shown }) => drawn.push(`${rise} ${shown}`));
  store.begin({ rise: 3, shown: "steep" });
  store.soon(() => store.set({ rise: 2 }));
  mock.timers.tick(100);
  assert.deepEqual(drawn, ["2 steep"]);
  store.soon(() => store.set({ rise: 1, shown: "flat" }));
  assert.deepEqual(drawn, ["2 steep", "1 flat"]);
  mock.timers.reset();
});
