/** What an entry changed, as it is read aloud and as it stands beside each size. */

import { listed } from "./words.mjs";

/**
 * The sizes that read differently now; a difference too small to be seen is none.
 * @param {import("./shapes-piece").Told | null} changed
 */
export function seen(changed) {
  const all = changed?.changes.sizes ?? [];
  return all.filter(({ before, after }) => before.text !== after.text || before.left !== after.left);
}

/** The labels as they are printed beside the sizes.
 * @param {import("./shapes").State} state @returns {(name: string) => string} */
export function labelling({ settled, sum }) {
  const told = settled?.told;
  const named = new Map([...(told?.sizes ?? []), ...(told?.givens ?? [])].map((one) => [one.name, one.label]));
  return (name) => named.get(name) ?? sum?.givens.find((one) => one.name === name)?.label ?? name;
}

/** A size with what is left over on the rule. @param {import("./shapes").Cell} cell */
export function whole({ text, left }) {
  return [text, left].filter(Boolean).join(", ");
}

/** What changed, for the ear: the first few by name, the rest counted, then what does not fit.
 * @param {import("./shapes").State} state */
export function spoken(state) {
  const { changed } = state;
  if (!changed) return "";
  const label = labelling(state);
  const sizes = seen(changed);
  const told = sizes.slice(0, 4).map((one) => `${label(one.name)} is now ${whole(one.after)}`);
  const more = sizes.length - told.length;
  const { gaps, alike } = changed.changes;
  const wrong = [...gaps, ...alike].map(({ say }) => say);
  const open = sizes.length ? `${told.join("; ")}${more ? `; ${more} more changed` : ""}.` : "Nothing else changes.";
  return [open, ...wrong].join(" ");
}

/** Every size and given of a piece that can be recorded as cut, as it stands; before Python has told, as the answer has it.
 * @param {import("./shapes").State} state @returns {import("./shapes-piece").Stands[]} */
export function cuttable({ settled, sum, shown }) {
  if (settled?.told) return [...settled.told.sizes, ...settled.told.givens.filter(isGiven)].filter((one) => one.can_be_cut);
  const cells = new Map(shown?.answer.answers.map((one) => [one.name, one]));
  return (sum?.answers ?? [])
    .filter((one) => one.can_be_cut)
    .map((one) => ({ ...one, text: "", left: "", also: "", ...cells.get(one.name), state: "open", typed: "", can_be_cut: true }))
    .map((one) => ({ ...one, entry: asTyped(one) }));
}

/** A number as it would be typed, all of it. @param {any} one */
function asTyped({ value, unit = "" }) {
  return typeof value === "number" ? `${value}${unit === "mm" ? " mm" : ""}` : "";
}

/** A given that somebody gave, and that no size of the same name stands for. @param {import("./shapes-piece").Stands} one */
function isGiven({ state }) {
  return state === "given" || state === "cut" || state === "yielded";
}

/** The planned size as it is typed. @param {import("./shapes").State} state @param {string} name */
export function planned(state, name) {
  const one = cuttable(state).find((each) => each.name === name);
  return one?.entry || one?.text || "";
}

/** What must be decided before the piece is whole, by label: no given that may be left out, and of "any two of" only what is
 * wanted beside those given. @param {import("./shapes").State} state @returns {string[]} */
export function undecided({ settled, sum }) {
  const told = settled?.told;
  if (!told || !sum) return [];
  const { names, count } = sum.any_of ?? { names: [], count: 0 };
  const label = (/** @type {{ label: string }} */ one) => one.label.toLowerCase();
  const optional = new Set(sum.givens.filter((one) => one.optional).map((one) => one.name));
  const open = told.givens.filter((one) => one.state === "undecided" && !names.includes(one.name) && (one.typed.trim() === "?" || !optional.has(one.name)));
  const some = told.givens.filter((one) => names.includes(one.name));
  const wanted = count - some.filter((one) => ["given", "cut", "yielded"].includes(one.state)).length;
  const free = some.filter((one) => !["given", "cut", "yielded"].includes(one.state));
  return [...open.map(label), ...(wanted > 0 ? [`${wanted > 1 ? "two" : "one"} of ${listed(free.map(label), "or")}`] : [])];
}
