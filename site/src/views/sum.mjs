import { h } from "preact";
import { Answers, Tables } from "./answers.mjs";
import { CarryOn } from "./carry.mjs";
import { Drawing } from "./drawing.mjs";
import { Givens } from "./givens.mjs";
import { Jump } from "./jump.mjs";
import { Glance } from "./keys.mjs";
import { Sources, Working } from "./working.mjs";

/** @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props */

/** One sum: the drawing and its fields, the answers, the working, where it comes from. @param {Props} props */
export function SumPage({ state, acts }) {
  const { sum, shown } = state;
  if (!sum || !shown) return null;
  return h(
    "article",
    { class: "sum", key: sum.id },
    h(Opening, { sum, moments: state.catalogue.moments }),
    h(Jump, { state }),
    h(
      "div",
      { class: "sheet" },
      h(
        "div",
        { class: "asking" },
        h(
          "figure",
          { class: "board" },
          h(Drawing, {
            figure: shown.answer.figure,
            sheet: sum.worked.figure,
            held: state.focus.split(".")[0] ?? "",
            touch: acts.touch,
          }),
        ),
        h(Givens, { sum, state, acts }),
        h("a", { class: "strip", href: "#answers" }, h(Glance, { state })),
      ),
      h(Answers, { state }),
      h(Tables, { state }),
      h(CarryOn, { state }),
      h(Working, { lines: shown.answer.working, open: state.wide }),
      h(Sources, { sum }),
    ),
  );
}

/** @param {{ sum: import("../shapes").Sum, moments: { id: string, title: string }[] }} props */
function Opening({ sum, moments }) {
  const moment = moments.find(({ id }) => id === sum.moment);
  return h(
    "header",
    { class: "opening" },
    h("p", { class: "moment" }, h("a", { href: "./" }, "All sums"), moment && h("span", null, moment.title)),
    h("h1", { tabIndex: -1 }, sum.title),
    h("p", { class: "question" }, sum.question),
  );
}
