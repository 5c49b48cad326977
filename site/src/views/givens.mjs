import { h } from "preact";
import { keepInSight } from "../device.mjs";
import { selectAll } from "../fields.mjs";
import { Field } from "./field.mjs";
import { sorted } from "./settled.mjs";
import { Hands, Story } from "./story.mjs";

/** @typedef {import("../shapes").Sum} Sum */
/** @typedef {import("../shapes").Given} Given */
/** @typedef {{ sum: Sum, state: import("../shapes").State, acts: import("../shapes").Acts }} Props */

const COUNTS = ["", "one", "two", "three", "four", "five", "six"];

/**
 * The fields: what must be given first, what is settled unless one says otherwise folded beneath.
 * @param {Props} props
 */
export function Givens({ sum, state, acts }) {
  const { asked, settled } = sorted(sum);
  return h(
    "section",
    {
      class: "givens",
      "aria-labelledby": "givens-title",
      onFocusIn: held(acts),
      onFocusOut: released(acts),
      onKeyDown: entered(acts),
    },
    h("h2", { id: "givens-title" }, h("span", null, "What you have")),
    h(
      "div",
      { class: "fields" },
      together(asked, sum).map((some) => h(Some, { key: some[0]?.name, some, sum, state, acts })),
    ),
    settled.length > 0 && h(Settled, { settled, state, acts }),
    h(Story, { sum, state }),
    h(Hands, { state, acts }),
  );
}

/**
 * The givens one by one, but those of "any two of" together.
 * @param {Given[]} asked
 * @param {Sum} sum
 * @returns {Given[][]}
 */
function together(asked, sum) {
  const names = sum.any_of?.names ?? [];
  const some = asked.filter((given) => names.includes(given.name));
  return asked
    .filter((given) => !some.includes(given) || given === some[0])
    .map((given) => (given === some[0] ? some : [given]));
}

/** One field, or the few of which any one or two are wanted. @param {{ some: Given[] } & Props} props */
function Some({ some, sum, state, acts }) {
  const fields = some.map((given) => h(Field, { key: given.name, given, state, acts }));
  if (!sum.any_of || !some.some(({ name }) => sum.any_of?.names.includes(name))) return fields;
  const words = `Any ${COUNTS[sum.any_of.count] ?? sum.any_of.count} of these; the rest is answered`;
  return h(
    "div",
    { class: "some", role: "group", "aria-label": words },
    h("p", { class: "wanted" }, words),
    h("div", { class: "fields" }, fields),
  );
}

/** @param {{ settled: Given[], state: import("../shapes").State, acts: import("../shapes").Acts }} props */
function Settled({ settled, state, acts }) {
  const names = settled.map((given) => given.name);
  const own = names.filter((name) => state.entry.texts[name]?.trim());
  const wrong = state.refusals.some((refusal) => names.includes(refusal.field));
  return h(
    "details",
    { class: "settled", ref: wrong ? unfold : null },
    h(
      "summary",
      null,
      `Settled for you (${settled.length})`,
      own.length > 0 && h("span", { class: "tag" }, `${own.length} changed`),
    ),
    h(
      "div",
      { class: "fields" },
      settled.map((given) => h(Field, { key: given.name, given, state, acts })),
    ),
  );
}

/** A fold with something wrong in it opens, and stays so. @param {HTMLDetailsElement | null} fold */
function unfold(fold) {
  if (fold) fold.open = true;
}

/** A field taken in hand shows its keys, and its text is selected, so that typing takes its place.
 * @param {import("../shapes").Acts} acts @returns {(event: FocusEvent) => void} */
function held(acts) {
  return ({ target }) => {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    acts.hold(target.name);
    selectAll(target);
    keepInSight(target);
  };
}

/**
 * Focus that goes to our keys or to the names under a field is not given up.
 * @param {import("../shapes").Acts} acts
 * @returns {(event: FocusEvent) => void}
 */
function released(acts) {
  return ({ relatedTarget }) => {
    if (!(relatedTarget instanceof Element && relatedTarget.closest(".keys, .picks"))) acts.release();
  };
}

/** @param {import("../shapes").Acts} acts @returns {(event: KeyboardEvent) => void} */
function entered(acts) {
  return ({ key, target }) => {
    if (key === "Enter" && target instanceof HTMLInputElement) acts.press({ label: "", name: "", act: "next" });
  };
}
