/** The names near what is typed, under the field in hand: touch one, or go down to it with the arrow keys. */

import { h } from "preact";
import { isNamed, picks } from "../state-picks.mjs";

/** @typedef {Pick<import("./field.mjs").Props, "given" | "acts">} Props */
/** @typedef {KeyboardEvent & { currentTarget: HTMLElement }} Press */

/** @type {{ key: string, label: string }[]} */
const NONE = [];

/** Is the list of names open? Not once a whole name stands in the field. @param {import("./field.mjs").Props} props */
export function offered({ given, held, text }) {
  const options = given.options ?? NONE;
  return given.search && held && !isNamed(options, text) ? picks(options, text) : NONE;
}

/** @param {Props & { found: { key: string, label: string }[] }} props */
export function Picks({ given: { name, label: title }, acts, found }) {
  const field = () => document.getElementById(`f-${name}`);
  const choose = (/** @type {string} */ label) => {
    field()?.focus();
    acts.type(name, label);
  };
  return h(
    "div",
    { class: "picks", hidden: !found.length, onMouseDown: stay },
    h("p", { class: "spoken", role: "status" }, found.length ? `${found.length} to choose from` : ""),
    h(
      "ul",
      { id: `l-${name}`, role: "listbox", "aria-label": title },
      found.map(({ key, label }) =>
        h(
          "li",
          {
            key,
            role: "option",
            tabIndex: -1,
            "aria-selected": "false",
            onClick: () => choose(label),
            onKeyDown: (/** @type {Press} */ event) => pressed(event, field(), () => choose(label)),
          },
          label,
        ),
      ),
    ),
  );
}

/** What a field with names under it has besides. @param {Props} props @param {boolean} open */
export function combobox({ given: { name }, acts }, open) {
  return {
    role: /** @type {const} */ ("combobox"),
    "aria-expanded": open,
    "aria-controls": `l-${name}`,
    "aria-autocomplete": /** @type {const} */ ("list"),
    onKeyDown: (/** @type {KeyboardEvent} */ event) => {
      if (event.key === "Escape") acts.release();
      if (event.key === "ArrowDown" && open) went(event, document.querySelector(`#l-${name} [role="option"]`));
    },
  };
}

/** @param {Press} event @param {HTMLElement | null} field @param {() => void} choose */
function pressed(event, field, choose) {
  const { key, currentTarget: at } = event;
  if (key === "ArrowDown") went(event, at.nextElementSibling);
  if (key === "ArrowUp") went(event, at.previousElementSibling ?? field);
  if (key === "Escape") went(event, field);
  if (key !== "Enter" && key !== " ") return;
  event.preventDefault();
  choose();
}

/** @param {Event} event @param {Element | null} to */
function went(event, to) {
  event.preventDefault();
  if (to instanceof HTMLElement) to.focus();
}

/** A touch on a name must not take the caret out of the field. @param {Event} event */
function stay(event) {
  event.preventDefault();
}
