import { h } from "preact";
import { Measure, unparted } from "./measure.mjs";
import { whenChanged } from "./unchanged.mjs";

/** @typedef {import("../shapes").Answer} Answer */

const FEW = 3;
const SIZES = new Set(["length", "fine", "angle"]);

/** An answer of several rows, folded under its name: a table where there is room, else a card a row with its sizes large.
 * Rows of few columns stay a table everywhere. */
export const Table = whenChanged(tabled);

/** @param {{ answer: Answer, open: boolean }} props */
function tabled({ answer, open }) {
  const { name, label, help, columns = [], rows = [] } = answer;
  return h(
    "details",
    { class: kindOf(columns), id: `a-${name}`, open },
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

/** Four sizes beside the first stand two by two. @param {import("../shapes").Column[]} columns */
function kindOf([, ...others]) {
  const sizes = others.filter(({ kind }) => SIZES.has(kind)).length;
  return `table${others.length < FEW ? "" : others.length === 4 && sizes === 4 ? " cards pairs" : " cards"}`;
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
        cell.left && h("span", { class: "left" }, unparted(cell.left)),
      );
    }),
  );
}
