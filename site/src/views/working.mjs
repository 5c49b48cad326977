import { h } from "preact";
import { whenChanged } from "./unchanged.mjs";

/** How the answers were reached: the letters, then the numbers put in, then the result. */
export const Working = whenChanged(worked);

/** @param {{ lines: import("../shapes").Line[], open: boolean }} props */
function worked({ lines, open }) {
  if (!lines.length) return null;
  return h(
    "details",
    { class: "working", id: "working", open },
    h("summary", null, h("h2", null, "The working")),
    h(
      "dl",
      null,
      lines.map((line) => h(Step, { line })),
    ),
  );
}

/** @param {{ line: import("../shapes").Line }} props */
function Step({ line: { label, letters, numbers, result, note } }) {
  return h(
    "div",
    { class: "step" },
    h("dt", null, label, note && h("span", { class: "help" }, note)),
    h(
      "dd",
      null,
      h("p", { class: "letters" }, `= ${letters}`),
      numbers !== letters && h("p", { class: "numbers" }, `= ${numbers}`),
      h("p", { class: "result" }, `= ${result}`),
    ),
  );
}

/** How a figure or a formula is known, in words. @type {Record<string, string>} */
export const BASES = {
  read: "seen in the source",
  computed: "worked out here from the source's rule",
  memory: "from memory: check it",
  "common practice": "common practice, no source",
  identity: "true by geometry",
};

/** Where the figures and formulas come from, how far each is to be trusted, and where the sum stops being true. */
export const Sources = whenChanged(sourced);

/** @param {{ sum: import("../shapes").Sum }} props */
function sourced({ sum }) {
  return h(
    "section",
    { class: "sources", id: "sources", tabIndex: -1, "aria-labelledby": "sources-title" },
    h("h2", { id: "sources-title" }, h("span", null, "Where it comes from")),
    h(
      "ul",
      null,
      sum.sources.map(({ work, where, basis, note }) =>
        h(
          "li",
          { class: basis.replace(" ", "-") },
          h("cite", null, work),
          where && `, ${where}`,
          ". ",
          note && `${note.replace(/\.?$/, ".")} `,
          h("span", { class: "basis" }, BASES[basis] ?? basis),
        ),
      ),
    ),
    h("h3", null, "How far it holds"),
    h("p", null, sum.limits_of),
  );
}
