import { h } from "preact";
import { Measure } from "./measure.mjs";

/** @typedef {import("../shapes").Answer} Answer */

/** An answer of several rows: a table where there is room, a card a row on a narrow screen.
 * Long lists of a few columns stay a table everywhere. @param {{ answer: Answer }} props */
export function Table({ answer }) {
  const columns = answer.columns ?? [];
  const cards = columns.length > 3;
  return h("div", { class: `table${cards ? " cards" : ""}`, id: `a-${answer.name}` },
    h("h3", { id: `t-${answer.name}` }, answer.label),
    answer.help && h("p", { class: "help" }, answer.help),
    h("div", { class: "box", role: "region", tabIndex: 0, "aria-labelledby": `t-${answer.name}` },
      h("table", null,
        h("thead", null, h("tr", null, columns.map((column) => h("th", { scope: "col", class: column.kind }, column.label)))),
        h("tbody", null, (answer.rows ?? []).map((row) => h(Row, { row, columns }))))));
}

/** @param {{ row: import("../shapes").Cell[], columns: import("../shapes").Column[] }} props */
function Row({ row, columns }) {
  return h("tr", null, row.map((cell, at) => {
    const { label, kind } = columns[at] ?? { label: "", kind: "" };
    const told = [h("span", { class: "name", "aria-hidden": "true" }, label), h(Measure, { text: cell.text }), cell.left && h("span", { class: "left" }, cell.left)];
    return at ? h("td", { class: `${kind}${cell.text ? "" : " empty"}` }, told) : h("th", { scope: "row", class: kind }, told.slice(1));
  }));
}
