import { h } from "preact";
import { Note, Tag } from "./about.mjs";
import { whenChanged } from "./unchanged.mjs";

const FEW = 4;

/** One of a few: touch keys when they are few, the device's own list when they are many. */
export const ChoiceField = whenChanged(chosenFrom);

/** @param {import("./field.mjs").Props} props */
function chosenFrom(props) {
  const { given, acts, ...facts } = props;
  const options = given.options ?? [];
  const chosen = keyOf(options, facts.text || given.default);
  const choose = (/** @type {string} */ key) => acts.type(given.name, key);
  const told = { name: given.name, options, chosen, choose };
  const inner = [
    h(Tag, { ...props, read: "" }),
    options.length > FEW ? h(List, told) : h(Keys, told),
    h(Note, props),
  ];
  const kind = `field choice${facts.refusal ? " refused" : ""}${facts.from ? " lent" : ""}`;
  if (options.length > FEW)
    return h("div", { class: kind }, h("label", { for: `f-${given.name}` }, given.label), ...inner);
  return h(
    "fieldset",
    { class: kind, "aria-describedby": `n-${given.name}` },
    h("legend", null, given.label),
    ...inner,
  );
}

/**
 * @typedef {{ name: string, options: { key: string, label: string }[], chosen: string, choose: (key: string) => void }} Told
 */

/** @param {Told} props */
function Keys({ name, options, chosen, choose }) {
  return h(
    "div",
    { class: "chips" },
    options.map(({ key, label }, at) =>
      h(
        "label",
        { class: "chip" },
        h("input", {
          type: "radio",
          id: at ? `f-${name}-${key}` : `f-${name}`,
          name,
          value: key,
          checked: key === chosen,
          onChange: () => choose(key),
        }),
        h("span", null, label),
      ),
    ),
  );
}

/** @param {Told} props */
function List({ name, options, chosen, choose }) {
  const blank = chosen ? [] : [h("option", { value: "" }, "choose …")];
  return h(
    "select",
    {
      id: `f-${name}`,
      name,
      "aria-describedby": `n-${name}`,
      onChange: (/** @type {Event & { currentTarget: HTMLSelectElement }} */ event) =>
        choose(event.currentTarget.value),
    },
    blank,
    options.map(({ key, label }) => h("option", { value: key, selected: key === chosen }, label)),
  );
}

/**
 * The key of what was typed, which may be a label; as Python reads it.
 * @param {Told["options"]} options
 * @param {string} text
 */
function keyOf(options, text) {
  const wanted = text.trim().replace(/\s+/g, " ").toLowerCase();
  return options.find(({ key, label }) => key.toLowerCase() === wanted || label.toLowerCase() === wanted)?.key ?? "";
}
