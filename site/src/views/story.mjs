/** Whose numbers stand in the fields, and what may be done to all of them at once. */

import { h } from "preact";
import { borrowed } from "../state-entry.mjs";
import { listed } from "../words.mjs";
import { Undo } from "./changed.mjs";

/**
 * Whose numbers stand in the fields: never a half-borrowed set unnoticed.
 * @param {{ sum: import("../shapes").Sum, state: import("../shapes").State }} props
 */
export function Story({ sum, state }) {
  const names = borrowed(state.entry, sum);
  const labels = names.map((name) => sum.givens.find((given) => given.name === name)?.label.toLowerCase() ?? name);
  const all =
    names.length === Object.keys(sum.example.givens).length &&
    Object.values(state.entry.origin).length === names.length;
  if (all)
    return h(
      "p",
      { class: "story" },
      h("strong", null, "An example. "),
      sum.example.story,
      " Type your own numbers over it.",
    );
  return h(
    "p",
    { class: "story" },
    names.length > 0 && h("strong", null, `Still using the example’s ${listed(labels)}.`),
  );
}

/** @param {{ state: import("../shapes").State, acts: import("../shapes").Acts }} props */
export function Hands({ state, acts }) {
  return h(
    "div",
    { class: "hands" },
    h("button", { type: "button", class: "key", onClick: acts.clear }, "Clear"),
    h("button", { type: "button", class: "key", onClick: acts.example }, "The example’s numbers"),
    h(Undo, { state, acts }),
    state.entry.undo &&
      h("button", { type: "button", class: "key", onClick: acts.undo }, `Undo ${state.entry.undo.label}`),
  );
}
