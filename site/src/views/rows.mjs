import { h } from "preact";
import { padFor } from "../state-keys.mjs";
import { cells, changed, kept } from "../state-rows.mjs";
import { Note, Tag } from "./about.mjs";
import { whenChanged } from "./unchanged.mjs";

/** @typedef {import("../shapes").Given} Given */

/** A list of like things: a row each, a cell a column, rows added and taken away. */
export const RowsField = whenChanged(rowByRow);

/** @param {import("./field.mjs").Props} props */
function rowByRow(props) {
  const { given, acts, held, ...facts } = props;
  const columns = given.columns ?? [];
  const rows = cells(facts.text || given.default, columns.length, columns[0]?.kind === "text");
  const put = (/** @type {string[][]} */ next) => acts.type(given.name, kept(next));
  const add = () => {
    put([...rows, columns.map(() => "")]);
    document.getElementById(`f-${given.name}.${rows.length}.${columns[0]?.name}`)?.focus();
  };
  const kind = ["field rows", facts.refusal && "refused", facts.from && "lent"].filter(Boolean).join(" ");
  return h(
    "fieldset",
    { class: kind, "aria-describedby": `n-${given.name}` },
    h("legend", null, given.label),
    h(Tag, { ...props, read: "" }),
    rows.map((row, at) =>
      h(Row, {
        given,
        columns,
        row,
        at,
        held,
        only: rows.length === 1,
        type: (place, text) => put(changed(rows, at, place, text)),
        drop: () => {
          put(rows.filter((_, other) => other !== at));
          document.getElementById(`add-${given.name}`)?.focus();
        },
      }),
    ),
    h("button", { type: "button", class: "key wide", onClick: add, id: `add-${given.name}` }, "Add a row"),
    h(Note, props),
  );
}

/** @typedef {{ given: Given, columns: Given[], row: string[], at: number, held: string, only: boolean,
 *   type: (place: number, text: string) => void, drop: () => void }} RowProps */

/** @param {RowProps} props */
function Row({ given, columns, row, at, held, only, type, drop }) {
  return h(
    "div",
    { class: "row", role: "group", "aria-label": `row ${at + 1}` },
    h(
      "p",
      { class: "rowhead" },
      h("span", null, `Row ${at + 1}`),
      h(
        "button",
        { type: "button", class: "quiet", "aria-label": `take away row ${at + 1}`, disabled: only, onClick: drop },
        "take away",
      ),
    ),
    columns.map((column, place) =>
      h(Cell, {
        column,
        name: `${given.name}.${at}.${column.name}`,
        text: row[place] ?? "",
        held,
        type: (text) => type(place, text),
      }),
    ),
  );
}

/** @typedef {{ column: Given, name: string, text: string, held: string, type: (text: string) => void }} CellProps */

/** @param {CellProps} props */
function Cell({ column, name, text, held, type }) {
  return h(
    "div",
    { class: `cell ${column.kind}${held === name ? " held" : ""}` },
    h("label", { for: `f-${name}` }, column.label),
    column.options
      ? h(List, { column, name, text, held, type })
      : h("input", {
          id: `f-${name}`,
          name,
          type: "text",
          value: text,
          placeholder: column.default,
          autoComplete: "off",
          spellcheck: false,
          inputMode: padFor(column.kind),
          enterKeyHint: "next",
          onInput: (event) => type(event.currentTarget.value),
        }),
  );
}

/** @param {CellProps} props */
function List({ column, name, text, type }) {
  const options = column.options ?? [];
  const known = options.some(({ key }) => key === text);
  return h(
    "select",
    {
      id: `f-${name}`,
      name,
      onChange: (/** @type {Event & { currentTarget: HTMLSelectElement }} */ event) => type(event.currentTarget.value),
    },
    !known && h("option", { value: text, selected: true }, text || column.default || "choose …"),
    options.map(({ key, label }) => h("option", { value: key, selected: key === text }, label)),
  );
}
