import { h } from "preact";
import { cuttable } from "../state-told.mjs";
import { keysFor } from "../state-keys.mjs";
import { standing } from "../state.mjs";
import { mainOf } from "./answers.mjs";
import { Measure } from "./measure.mjs";

/** @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props */

/** Our own keys above the bottom edge while a field is in hand, and the answer as it stands. @param {Props} props */
export function KeyRow({ state, acts }) {
  const rows = keysFor(inHand(state), state.bench);
  if (!rows.length) return h("section", { class: "keys", hidden: true });
  return h(
    "section",
    { class: "keys", "aria-label": "Keys for fractions and units", onPointerDown: stay },
    h(Glance, { state }),
    rows.map((row, at) =>
      h(
        "div",
        { class: "keyrow", key: at },
        row.map((key) =>
          h(
            "button",
            {
              type: "button",
              key: key.name,
              class: ["key", key.mark && "of-rule", key.act && "act", key.label.length > 3 && !key.mark && "word"]
                .filter(Boolean)
                .join(" "),
              tabIndex: -1,
              "aria-label": key.name,
              onClick: () => acts.press(key),
            },
            h(Measure, { text: key.label }),
          ),
        ),
      ),
    ),
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
