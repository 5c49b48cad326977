import { h } from "preact";
import { padFor } from "../state-keys.mjs";
import { Note, Tag } from "./about.mjs";
import { ChoiceField } from "./choice.mjs";
import { factsOf } from "./facts.mjs";
import { combobox, offered, Picks } from "./picks.mjs";
import { RowsField } from "./rows.mjs";

/**
 * @typedef {import("../shapes").State} State
 * @typedef {import("../shapes").Given} Given
 * @typedef {{ given: Given, state: State, acts: import("../shapes").Acts }} Props
 */

/** One given as a labelled field of its kind. @param {Props} props */
export function Field(props) {
  if (props.given.kind === "choice" && !props.given.search) return h(ChoiceField, props);
  if (props.given.kind === "rows") return h(RowsField, props);
  return h(TextField, props);
}

/** @param {Props} props */
function TextField(props) {
  const { given, state, acts } = props;
  const facts = factsOf(state, given);
  const found = offered(props, facts.text);
  const held = state.focus === given.name;
  const kind = [
    "field",
    given.kind,
    given.search && "searched",
    held && "held",
    facts.refusal && "refused",
    facts.answered && "answered",
    facts.from && "lent",
  ];
  return h(
    "div",
    { class: kind.filter(Boolean).join(" ") },
    h("label", { for: `f-${given.name}` }, given.label),
    h(
      "div",
      { class: "line" },
      given.kind === "money" && state.bench.currency && h("span", { class: "unit" }, state.bench.currency),
      h("input", {
        ...common(given, facts),
        ...(given.search && combobox(props, found.length > 0)),
        inputMode: padFor(given.kind),
        value: facts.text,
        onInput: (event) => {
          (given.search ? acts.type : acts.write)(given.name, event.currentTarget.value);
          if (!held) acts.hold(given.name);
        },
      }),
      given.unit && !facts.answered && h("span", { class: "unit" }, given.unit),
      h(Tag, { given, facts }),
    ),
    given.search && h(Picks, { ...props, found }),
    h(Note, { given, facts, acts }),
  );
}

/** What every text entry of ours has. @param {Given} given @param {import("./facts.mjs").Facts} facts */
function common(given, facts) {
  return {
    id: `f-${given.name}`,
    name: given.name,
    type: "text",
    autoComplete: "off",
    autoCapitalize: "off",
    spellcheck: false,
    enterKeyHint: /** @type {const} */ ("next"),
    placeholder: facts.answered || given.default || (given.search ? "a part of its name" : ""),
    "aria-invalid": facts.refusal ? /** @type {const} */ ("true") : undefined,
    "aria-describedby": `r-${given.name} n-${given.name}`,
  };
}
