import { h } from "preact";
import { padFor } from "../state-keys.mjs";
import { Note, Tag } from "./about.mjs";
import { ChoiceField } from "./choice.mjs";
import { factsOf } from "./facts.mjs";
import { combobox, offered, Picks } from "./picks.mjs";
import { RowsField } from "./rows.mjs";
import { whenChanged } from "./unchanged.mjs";

/**
 * @typedef {import("../shapes").State} State
 * @typedef {import("../shapes").Given} Given
 * @typedef {import("./facts.mjs").Facts & { given: Given, acts: import("../shapes").Acts, held: string }} Props
 *   `held`: what of it is in hand
 */

/** One given as a labelled field of its kind. @param {{ given: Given, state: State, acts: import("../shapes").Acts }} props */
export function Field({ given, state, acts }) {
  const facts = factsOf(state, given);
  const told = { ...facts, given, acts, held: state.focus.split(".")[0] === given.name ? state.focus : "" };
  if (given.kind === "choice" && !given.search) return h(ChoiceField, told);
  if (given.kind === "rows") return h(RowsField, told);
  return h(TextField, { ...told, found: offered(told), currency: given.kind === "money" ? state.bench.currency : "" });
}

const TextField = whenChanged(typedIn);

/** @param {Props & { found: { key: string, label: string }[], currency: string }} props */
function typedIn(props) {
  const { given, acts, held, found, currency, ...facts } = props;
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
      currency && h("span", { class: "unit" }, currency),
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
      h(Tag, props),
    ),
    given.search && h(Picks, { given, acts, found }),
    h(Note, props),
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
