import { h } from "preact";
import { undoing } from "../state-acted.mjs";
import { labelling, seen, undecided, whole } from "../state-told.mjs";
import { listed } from "../words.mjs";

/** @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props */

/** What the last entry changed: old and new, by how much, and what does not fit since. @param {Props} props */
export function Changed({ state, acts }) {
  if (!state.changed) return null;
  const sizes = seen(state.changed);
  const label = labelling(state);
  const { gaps, alike, broken, impossible } = state.changed.changes;
  const told = state.settled?.told;
  const says = [...(told?.broken ?? []).filter(({ name }) => broken.includes(name)), ...(told?.impossible ?? []).filter(({ name }) => impossible.includes(name))];
  return h(
    "div",
    { class: "changed" },
    h("h4", null, sizes.length ? `Changed: ${sizes.length}` : "Nothing else changes"),
    h("ul", null, sizes.map((one) => h("li", { key: one.name },
      h("span", null, label(one.name)), h("s", null, whole(one.before)), h("b", null, whole(one.after)), one.amount && h("em", null, one.amount)))),
    h(Gaps, { gaps, says: [...alike, ...says].map(({ say }) => say), acts }),
  );
}

/** What still does not fit, but for what is told beside the last entry. @param {Props} props */
export function Misfits({ state, acts }) {
  const told = state.settled?.told;
  if (!told) return null;
  const gaps = told.gaps.filter((one) => !state.changed?.changes.gaps.some(({ name }) => name === one.name));
  const says = [...told.alike.filter((one) => !one.fits), ...told.broken, ...told.impossible].map(({ say }) => say);
  const fields = new Set(state.sum?.givens.map(({ name }) => name));
  says.push(...told.refusals.filter(({ field }) => !fields.has(field)).map(({ say, instead }) => `Not used: ${say}; ${instead}.`));
  const open = undecided(state);
  if (!told.whole && !says.length && open.length) says.push(`Not decided yet: ${listed(open)}.`);
  return h(Gaps, { gaps, says, acts });
}

/** What can be done something about comes first, then what follows from it.
 * @param {{ gaps: import("../shapes-piece").Gap[], says: string[], acts: import("../shapes").Acts }} props */
function Gaps({ gaps, says, acts }) {
  if (!gaps.length && !says.length) return null;
  return h(
    "div",
    { class: "cautions misfits", role: "note" },
    h("p", null, h("strong", null, "Mind")),
    h("ul", null, gaps.map((gap) => h("li", { key: gap.name }, gap.say,
      h("div", { class: "hands" }, gap.choices.map(({ say, name, text }) => name
        ? h("button", { type: "button", class: "key", onClick: () => acts.piece.choose(name, text) }, say)
        : h("span", { class: "help" }, `Or: ${say.toLowerCase()}.`))))), says.map((say) => h("li", null, say))),
  );
}

/** @param {Props} props */
export function Undo({ state, acts }) {
  const what = state.kept ? undoing(state.kept, labelling(state)) : "";
  return what ? h("p", { class: "undo hands" }, h("button", { type: "button", class: "key", onClick: acts.piece.undo }, `Undo: ${what}`)) : null;
}
