/** What is told of a sum to those who ask how far to trust it: its formulas, its ranges, its sources, and how near it comes to
 * what others have printed. */

import { h } from "preact";
import { Drawing } from "./drawing.mjs";
import { Paper, Ruled } from "./paper.mjs";
import { BASES, Sources } from "./working.mjs";

/**
 * @typedef {import("../shapes").Sum & { formulas: { label: string, letters: string, note: string }[] }} Sum
 * @typedef {{ count: number, kinds: string, worst: string }} Held  how a sum or one answer stands to what was printed
 * @typedef {Held & { works: [string, number][], answers: ({ label: string } & Held)[] }} Checked
 */

const NONE = "Nobody is known to have printed such a figure. Its proof and a reckoning by another way hold it, in the tests.";

/** All the sums, one a row. @param {{ sums: Sum[], held: Record<string, Checked> }} props */
export function TrustList({ sums, held }) {
  return h(
    Paper,
    {
      moment: h("a", { href: "../index.html" }, "All sums"),
      title: "How far each sum is to be trusted",
      question: "Where each comes from, and how near it comes to what others have printed.",
    },
    h(Ruled, {
      id: "sums",
      title: "Every sum",
      heads: ["Sum", "Sources", "How they are known", "Held against", "Worst miss"],
      rows: sums.map((sum) => [
        h("a", { href: `${sum.id}.html` }, sum.title),
        [...new Set(sum.sources.map(({ work }) => work))].join("; "),
        [...new Set(sum.sources.map(({ basis }) => BASES[basis]))].join("; "),
        held[sum.id]?.kinds || "no printed figure",
        held[sum.id]?.worst ?? "",
      ]),
    }),
  );
}

/** One sum. @param {{ sum: Sum, held: Checked }} props */
export function Trust({ sum, held }) {
  return h(
    Paper,
    {
      moment: [h("a", { href: "index.html" }, "How far to trust it"), h("span", null, h("a", { href: `../${sum.id}.html` }, "Use it"))],
      title: sum.title,
      question: sum.purpose,
    },
    h(
      "div",
      { class: "sheet" },
      h("div", { class: "asking" }, h(Example, { sum })),
      h("div", { class: "answers" }, h(Answered, { sum })),
      h(
        "div",
        { class: "tables" },
        h(Ruled, {
          id: "ranges",
          title: "What it asks, and how far each may go",
          heads: ["Given", "Range", "Left empty", "How it is got"],
          rows: sum.givens.map(({ label, limit, default: meant, optional, help }) => [
            label,
            limit.text,
            meant || (optional ? "may be" : ""),
            help,
          ]),
        }),
        h(Against, { held }),
      ),
      h(Formulas, { sum }),
      h(Sources, { sum }),
    ),
  );
}

/** @param {{ sum: Sum }} props */
function Example({ sum: { example, givens, worked } }) {
  const told = givens.filter(({ name }) => example.givens[name]);
  return [
    h("figure", { class: "board" }, h(Drawing, { figure: worked.figure, sheet: worked.figure, held: "", touch: () => {} })),
    h("p", { class: "story" }, h("strong", null, "Example. "), example.story),
    h(Ruled, {
      id: "example",
      title: "Given",
      heads: ["Given", "Typed"],
      rows: told.map(({ name, label }) => [label, example.givens[name]]),
    }),
  ];
}

/** @param {{ sum: Sum }} props */
function Answered({ sum: { worked } }) {
  const rows = worked.answers.map(({ label, text, left, also, rows: each }) => [
    label,
    each ? `a table of ${each.length}` : [text, left].filter(Boolean).join(", "),
    also ?? "",
  ]);
  return h(Ruled, { id: "answered", title: "Answered", heads: ["Answer", "On the rule", "Or"], rows });
}

/** @param {{ sum: Sum }} props */
function Formulas({ sum }) {
  return h(
    "section",
    { class: "working", "aria-labelledby": "formulas" },
    h("h2", { id: "formulas" }, h("span", null, "Formulas")),
    h(
      "dl",
      null,
      sum.formulas.map(({ label, letters, note }) =>
        h(
          "div",
          { class: "step" },
          h("dt", null, label, note && h("span", { class: "help" }, note)),
          h("dd", null, h("p", { class: "letters" }, `= ${letters}`)),
        ),
      ),
    ),
  );
}

/** @param {{ held: Checked }} props */
function Against({ held }) {
  if (!held.count) return h("p", null, NONE);
  return [
    h(Ruled, {
      id: "printed",
      title: "Held against",
      heads: ["Answer", "Figures", "How they are known", "Worst miss"],
      rows: held.answers.map(({ label, count, kinds, worst }) => [label, `${count}`, kinds, worst]),
    }),
    h(Ruled, {
      id: "works",
      title: "Whose figures they are",
      heads: ["Work", "Figures"],
      rows: held.works.map(([work, count]) => [work, `${count}`]),
    }),
  ];
}
