import { h } from "preact";
import { standing } from "../state.mjs";
import { Answers, Tables } from "./answers.mjs";
import { CarryOn } from "./carry.mjs";
import { Drawing } from "./drawing.mjs";
import { Givens } from "./givens.mjs";
import { Changed } from "./changed.mjs";
import { Jump } from "./jump.mjs";
import { Parts } from "./parts.mjs";
import { Shelf } from "./shelf.mjs";
import { Glance } from "./keys.mjs";
import { whenChanged } from "./unchanged.mjs";
import { Sources, Working } from "./working.mjs";

/** @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props */

/** One sum: the drawing and its fields, the answers, the working, where it comes from. @param {Props} props */
export function SumPage({ state, acts }) {
  const { sum, shown } = state;
  if (!sum || !shown) return null;
  return h(
    "article",
    { class: state.kept ? "sum piece" : "sum", key: sum.id },
    h(Opening, { sum, moments: state.catalogue.moments }),
    state.kept && h(Shelf, { state, acts }),
    h(Jump, { state }),
    h(
      "div",
      { class: "sheet" },
      h(
        "div",
        { class: "asking" },
        h(
          "figure",
          { class: `board ${standing(state)}` },
          h(Drawing, {
            figure: shown.answer.figure,
            sheet: sum.worked.figure,
            held: state.focus.split(".")[0] ?? "",
            touch: acts.touch,
          }),
        ),
        shown.answer.exploded && h(Apart, { figure: shown.answer.exploded, sheet: sum.worked.exploded ?? shown.answer.exploded, how: standing(state) }),
        h(Givens, { sum, state, acts }),
        state.kept && isForm(state.changed) && h(Changed, { state, acts }),
        h("a", { class: "strip", href: "#answers" }, h(Glance, { state })),
      ),
      state.kept && h(Parts, { state, acts }),
      h(Answers, { state, acts }),
      h(Tables, { state }),
      h(CarryOn, { sums: state.catalogue.sums, links: shown.answer.carry_on }),
      h(Working, { lines: shown.answer.working, open: state.wide }),
      h(Sources, { sum }),
    ),
  );
}

/** Whether what changed was entered among the givens, or for the piece as a whole.
 * @param {import("../shapes-piece").Told | null} changed */
function isForm(changed) {
  return !!changed && !changed.at.startsWith("cut:");
}

/** Nothing there is to be touched. */
function noTouch() {}

/** The piece taken apart, to the same scale throughout.
 * @param {{ figure: import("../shapes").Figure, sheet: import("../shapes").Figure, how: string }} props `how` it stands to what is in the fields */
function Apart({ figure, sheet, how }) {
  return h("figure", { class: `board apart ${how}` }, h(Drawing, { figure, sheet, held: "", touch: noTouch, name: "apart" }));
}

const Opening = whenChanged(opened);

/** @param {{ sum: import("../shapes").Sum, moments: { id: string, title: string }[] }} props */
function opened({ sum, moments }) {
  const moment = moments.find(({ id }) => id === sum.moment);
  return h(
    "header",
    { class: "opening" },
    h("p", { class: "moment" }, h("a", { href: "./" }, "All sums"), moment && h("span", null, moment.title)),
    h("h1", { tabIndex: -1 }, sum.title),
    h("p", { class: "question" }, sum.question),
  );
}
