/**
 * What is to be said of one field: its text, where that came from, how it was read, what is wrong with it.
 * @typedef {import("../shapes").State} State
 * @typedef {import("../shapes").Given} Given
 */

import { EXAMPLE, setAside } from "../state-entry.mjs";
import { currentKey } from "../state.mjs";
import { labelling, whole } from "../state-told.mjs";
import { listed } from "../words.mjs";
import { sorted } from "./settled.mjs";

/** @typedef {{ text: string, aside: string, answered: string, from: string, refusal: string, read: string, stands: string, unsaid: string }} Facts */

/** `stands`: what holds in its place, once the saw or another cut has decided. `unsaid`: the answers that are missing because it is left empty. `aside`: a text of one's own that does not count because others were typed after it. `answered`: the answer in its place.
 * @param {State} state @param {Given} given @returns {Facts} */
export function factsOf(state, given) {
  const { name } = given;
  const typed = state.entry.texts[name] ?? "";
  const open = !!state.sum && setAside(state.entry, state.sum).includes(name);
  const refusal = typed.trim() && !open ? state.refusals.find((one) => one.field === name) : undefined;
  return {
    text: open ? "" : typed,
    aside: open && state.entry.origin[name] !== EXAMPLE ? typed : "",
    answered: open ? answer(state, name) : "",
    from: open ? "" : (state.entry.origin[name] ?? ""),
    refusal: refusal ? sentence(refusal) : "",
    read: reading(state, name),
    stands: stands(state, name),
    unsaid: unsaid(state, given),
  };
}

/** @param {State} state @param {string} name */
function stands(state, name) {
  const one = state.settled?.told?.givens.find((given) => given.name === name);
  if (!one || (one.state !== "cut" && one.state !== "yielded")) return "";
  return one.state === "cut" ? `cut at ${whole(one)}` : `${whole(one)} now: it gave way to the ${labelling(state)(one.for ?? "").toLowerCase()}`;
}

/** @param {State} state @param {Given} given */
function unsaid(state, { name }) {
  const names = state.settled?.told?.givens.find((one) => one.name === name)?.unsaid ?? [];
  const isAsked = !!state.sum && sorted(state.sum).asked.some((one) => one.name === name);
  return isAsked ? listed(names.map((one) => labelling(state)(one).toLowerCase())) : "";
}

/** A refusal without its field's name, for beside the field. @param {import("../shapes").Refusal} refusal */
export function sentence({ say, instead, source }) {
  const text = [say, instead].filter(Boolean).join("; ") + (source ? ` (${source})` : "");
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** @param {State} state @param {string} name */
function reading({ shown, readings, ...state }, name) {
  const key = currentKey({ shown, readings, ...state });
  const givens = key === shown?.key ? shown.answer.givens : key === readings.key ? readings.givens : {};
  return givens[name]?.read ?? "";
}

/** @param {State} state @param {string} name */
function answer(state, name) {
  return state.shown?.answer.answers.find((one) => one.name === name)?.text ?? "";
}
