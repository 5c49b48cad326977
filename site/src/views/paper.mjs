import { h } from "preact";
import { NailRule } from "./marks.mjs";

/** A page to be read, with nothing to type on it: the house's name, what is told, the way back.
 * @param {{ moment: import("preact").ComponentChildren, title: string, question: string, children?: import("preact").ComponentChildren }} props */
export function Paper({ moment, title, question, children }) {
  return h(
    "div",
    { id: "page" },
    h("a", { class: "skip", href: "#main" }, "Skip to the work"),
    h("header", { class: "house" }, h("a", { class: "name", href: "../index.html" }, h("span", null, "Tenpenny"), h(NailRule, null))),
    h(
      "main",
      { id: "main", tabIndex: -1 },
      h(
        "article",
        { class: "sum" },
        h(
          "header",
          { class: "opening" },
          h("p", { class: "moment" }, moment),
          h("h1", null, title),
          h("p", { class: "question" }, question),
        ),
        children,
      ),
    ),
    h(
      "footer",
      { class: "foot" },
      h("p", null, "Measure the real stuff before you cut it."),
      h(
        "p",
        { class: "papers" },
        h("a", { href: "index.html" }, "How far each sum is to be trusted"),
        h("a", { href: "../licences.txt" }, "Licences, and where the source texts are"),
      ),
    ),
  );
}

/** A table with a name, each cell a child. Where it is narrow its rows become cards.
 * @param {{ id: string, title: string, heads: string[], rows: import("preact").ComponentChild[][] }} props */
export function Ruled({ id, title, heads, rows }) {
  return h(
    "section",
    { class: `table${heads.length > 3 ? " cards" : ""}`, "aria-labelledby": id },
    h("h2", { id }, h("span", null, title)),
    h(
      "div",
      { class: "box", role: "region", tabIndex: 0, "aria-labelledby": id },
      h(
        "table",
        null,
        h("thead", null, h("tr", null, heads.map((head) => h("th", { scope: "col" }, head)))),
        h("tbody", null, rows.map((row) => h(Row, { row, heads }))),
      ),
    ),
  );
}

/** @param {{ row: import("preact").ComponentChild[], heads: string[] }} props */
function Row({ row, heads }) {
  const cells = row.map((cell, at) =>
    h(
      at ? "td" : "th",
      { class: `text${cell ? "" : " empty"}`, scope: at ? undefined : "row" },
      at > 0 && h("span", { class: "name", "aria-hidden": "true" }, heads[at]),
      h("span", null, cell),
    ),
  );
  return h("tr", null, cells);
}
