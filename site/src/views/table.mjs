import { h } from "preact";
import { Measure } from "./measure.mjs";

/** @typedef {import("../shapes").Answer} Answer */

const FEW = 3;

/** An answer of several rows, folded under its name: a table where there is room, else a card a row with its sizes large.
 * Rows of few columns stay a table everywhere. @param {{ answer: Answer, open: boolean }} props */
export function Table({ answer, open }) {
  const { name, label, help, columns = [], rows = [] } = answer;
  return h(
    "details",
    { class: `table${columns.length > FEW ? " cards" : ""}`, id: `a-${name}`, open },
    h("summary", null, h("h3", { id: `t-${name}` }, label), h("span", { class: "tag" }, String(rows.length))),
    help && h("p", { class: "help" }, help),
    h(
      "div",
      { class: "box", role: "region", tabIndex: 0, "aria-labelledby": `t-${name}` },
      h(
        "table",
        null,
        h(
          "thead",
          null,
          h(
            "tr",
            null,
            columns.map((column) => h("th", { scope: "col", class: column.kind }, column.label)),
          ),
        ),
        h(
          "tbody",
          null,
          rows.map((row) => h(Row, { row, columns })),
        ),
      ),
    ),
  );
}

/** @param {{ row: import("../shapes").Cell[], columns: import("../shapes").Column[] }} props */
function Row({ row, columns }) {
  return h(
    "tr",
    null,
    row.map((cell, at) => {
      const { label = "", kind = "" } = columns[at] ?? {};
      return h(
        at ? "td" : "th",
        { class: `${kind}${cell.text ? "" : " empty"}`, scope: at ? undefined : "row" },
        h("span", { class: "name", "aria-hidden": "true" }, label),
        h(Measure, { text: cell.text }),
        cell.left && h("span", { class: "left" }, cell.left),
      );
    }),
  );
}
