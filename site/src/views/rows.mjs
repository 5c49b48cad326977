import { h } from "preact";
import { cells, changed, kept } from "../state-rows.mjs";
import { factsOf } from "./facts.mjs";
import { Help, Note, Tag } from "./about.mjs";

/** A list of like things: a row each, a cell a column, rows added and taken away.
 * @param {import("./field.mjs").Props} props */
export function RowsField({ given, state, acts }) {
  const facts = factsOf(state, given);
  const columns = given.columns ?? [];
  const rows = cells(facts.text || given.default, columns.length);
  const put = (/** @type {string[][]} */ next) => acts.type(given.name, kept(next));
  return h("fieldset", { class: `field rows${facts.refusal ? " refused" : ""}${facts.from ? " lent" : ""}`, "aria-describedby": `n-${given.name} h-${given.name}` },
    h("legend", null, given.label), h(Tag, { facts }),
    rows.map((row, at) => h(Row, { given, columns, row, at, held: state.focus, only: rows.length === 1,
      type: (place, text) => put(changed(rows, at, place, text)), drop: () => put(rows.filter((_, other) => other !== at)) })),
    h("button", { type: "button", class: "key wide", onClick: () => put([...rows, columns.map(() => "")]) }, "Add a row"),
    h(Note, { given, facts: { ...facts, read: "" }, acts }),
    h(Help, { given }));
}

/** @typedef {{ given: import("../shapes").Given, columns: import("../shapes").Given[], row: string[], at: number, held: string, only: boolean,
 *   type: (place: number, text: string) => void, drop: () => void }} RowProps */

/** @param {RowProps} props */
function Row({ given, columns, row, at, held, only, type, drop }) {
  return h("div", { class: "row", role: "group", "aria-label": `row ${at + 1}` },
    columns.map((column, place) => h(Cell, { column, name: `${given.name}.${at}.${column.name}`, text: row[place] ?? "", held, type: (text) => type(place, text) })),
    h("button", { type: "button", class: "key drop", "aria-label": `take row ${at + 1} away`, disabled: only, onClick: drop }, "×"));
}

/** @param {{ column: import("../shapes").Given, name: string, text: string, held: string, type: (text: string) => void }} props */
function Cell({ column, name, text, held, type }) {
  const input = { id: `f-${name}`, name, value: text, placeholder: column.default, autoComplete: "off", inputMode: column.kind === "count" ? "numeric" : "decimal" };
  return h("div", { class: `cell ${column.kind}${held === name ? " held" : ""}` },
    h("label", { for: `f-${name}` }, column.label),
    column.options
      ? h("select", { id: input.id, name, onChange: (/** @type {Event & { currentTarget: HTMLSelectElement }} */ event) => type(event.currentTarget.value) }, column.options.map(({ key, label }) => h("option", { value: key, selected: key === text }, label)))
      : h("input", { ...input, type: "text", spellcheck: false, enterKeyHint: "next", onInput: (event) => type(event.currentTarget.value) }));
}
