import { h } from "preact";
import { whenChanged } from "./unchanged.mjs";

/** @typedef {import("../shapes").Caution} Caution */

/** Warnings in sight before the rest is folded, when there are many. */
const MANY = 5;
const FIRST = 4;

/** Warnings stand right under the main answer: in words and with a sign, not by a colour alone. Of many the first stand in sight,
 * and how many more there are. */
export const Cautions = whenChanged(cautioned);

/** @param {{ cautions: Caution[] }} props */
function cautioned({ cautions }) {
  if (!cautions.length) return null;
  const shown = cautions.length > MANY ? FIRST : MANY;
  const more = cautions.slice(shown);
  return h(
    "div",
    { class: "cautions", role: "note" },
    h("p", null, h("strong", null, "Take care")),
    h(Listed, { cautions: cautions.slice(0, shown) }),
    more.length > 0 && h("details", { class: "fold" }, h("summary", null, `${more.length} more to mind`), h(Listed, { cautions: more })),
  );
}

/** @param {{ cautions: Caution[] }} props */
function Listed({ cautions }) {
  return h(
    "ul",
    null,
    cautions.map(({ say, source }) => h("li", { key: say }, say, source && h("span", { class: "source" }, ` (${source})`))),
  );
}
