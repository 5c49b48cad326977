// A view that is gone through again only when one of its props is another.
import assert from "node:assert/strict";
import { test } from "node:test";
import { whenChanged } from "../../site/src/views/unchanged.mjs";

const View = whenChanged(({ held }) => `held: ${held}`);

/** @param {any} was */
function shown(was) {
  const view = new View(was);
  view.props = was;
  return view;
}

/** @param {any} was @param {any} next */
const drawnAgain = (was, next) => shown(was).shouldComponentUpdate(next, {}, {});

test("it draws what its view draws", () => {
  assert.equal(shown({ held: "rise" }).render(), "held: rise");
});

test("the same props are not drawn again; another is, and so is one that came or went", () => {
  const figure = {};
  assert.equal(drawnAgain({ figure, held: "" }, { figure, held: "" }), false);
  assert.equal(drawnAgain({ figure, held: "" }, { figure, held: "rise" }), true);
  assert.equal(drawnAgain({ figure }, { figure: {} }), true);
  assert.equal(drawnAgain({ figure }, { figure, held: "" }), true);
  assert.equal(drawnAgain({ figure, held: "" }, { figure }), true);
});
