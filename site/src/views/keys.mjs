import { h } from "preact";
import { cuttable } from "../state-told.mjs";
import { keysFor } from "../state-keys.mjs";
import { standing } from "../state.mjs";
import { mainOf } from "./answers.mjs";
import { Measure } from "./measure.mjs";
import { whenChanged } from "./unchanged.mjs";

/** @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props */

/** Our own keys above the bottom edge while a field is in hand, and the answer as it stands. @param {Props} props */
export function KeyRow({ state, acts }) {
  const { bench } = state;
  const entry = inHand(state);
  if (!keysFor(entry, bench).length) return h("section", { class: "keys", hidden: true });
  return h(
    "section",
    { class: "keys", "aria-label": "Keys for fractions and units", onPointerDown: stay },
    h(Glance, { state }),
    h(Rows, { entry, bench, acts }),
  );
}

const Rows = whenChanged(inRows);

/** @param {{ entry: Parameters<typeof keysFor>[0], bench: import("../shapes").Bench, acts: import("../shapes").Acts }} props */
function inRows({ entry, bench, acts }) {
  return keysFor(entry, bench).map((row, at) =>
    h("div", { class: "keyrow", key: at }, row.map((key) => h(Key, { key: key.name, told: key, acts }))),
  );
}

/** @param {{ told: import("../shapes").Key, acts: import("../shapes").Acts }} props */
function Key({ told, acts }) {
  const kind = ["key", told.mark && "of-rule", told.act && "act", told.label.length > 3 && !told.mark && "word"];
  return h(
    "button",
    {
      type: "button",
      class: kind.filter(Boolean).join(" "),
      tabIndex: -1,
      "aria-label": told.name,
      onClick: () => acts.press(told),
    },
    h(Measure, { text: told.label }),
  );
}

/** The entry in hand; in a list, the column of the cell. @param {import("../shapes").State} state */
function inHand({ sum, focus, ...state }) {
  if (focus.startsWith("cut:")) return cuttable({ sum, focus, ...state }).find((one) => `cut:${one.name}` === focus) ?? { kind: "" };
  const [name, , column] = focus.split(".");
  const given = sum?.givens.find((one) => one.name === name);
  return (column ? given?.columns?.find((one) => one.name === column) : given) ?? { kind: "" };
}

/** The main answer, where the thumb's owner looks while typing. @param {{ state: import("../shapes").State }} props */
export function Glance({ state }) {
  const main = mainOf(state.shown?.answer.answers ?? []);
  if (!main) return null;
  const how = standing(state);
  return h(
    "span",
    { class: `glance ${how}` },
    h("span", null, main.label, (how === "refused" || how === "open") && h("em", null, ", from before")),
    h("strong", null, h(Measure, { text: main.text ?? "" })),
  );
}

/** A key must not take the caret out of the field. @param {Event} event */
function stay(event) {
  event.preventDefault();
}
