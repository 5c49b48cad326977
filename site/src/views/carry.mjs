import { h } from "preact";
import { OnMark } from "./marks.mjs";
import { whenChanged } from "./unchanged.mjs";

/** The sums that come next in the work, with this one's answers in their links. A sum that is not there yet is not offered. */
export const CarryOn = whenChanged(carriedOn);

/** @param {{ sums: import("../shapes").Listed[], links: import("../shapes").Result["carry_on"] }} props */
function carriedOn({ sums, links }) {
  const known = new Map(sums.map((sum) => [sum.id, sum.title]));
  const next = links.filter(({ to }) => known.has(to));
  if (!next.length) return null;
  return h(
    "nav",
    { class: "carry", "aria-labelledby": "carry-title" },
    h("h2", { id: "carry-title" }, h("span", null, "Carry on with")),
    h(
      "ul",
      null,
      next.map(({ to, why, givens }) =>
        h(
          "li",
          null,
          h(
            "a",
            { href: address(to, givens) },
            h("strong", null, known.get(to)),
            why && h("span", null, why),
            h(OnMark, null),
          ),
        ),
      ),
    ),
  );
}

/** @param {string} to @param {Record<string, string>} givens */
function address(to, givens) {
  return Object.keys(givens).length ? `${to}.html#${new URLSearchParams(givens)}` : `${to}.html`;
}
