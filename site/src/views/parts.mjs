import { h } from "preact";
import { selectAll } from "../fields.mjs";
import { padFor } from "../state-keys.mjs";
import { cuttable, seen, whole } from "../state-told.mjs";
import { Changed, Misfits, Undo } from "./changed.mjs";
import { unparted } from "./measure.mjs";
import { NumberName } from "./number.mjs";
import { CameFirst } from "./order.mjs";

/**
 * @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props
 * @typedef {import("../shapes-piece").Stands} Stands
 */

const GIVEN = "Sizes you gave";

/** The parts with their sizes: each to be ticked as cut, and told what it came out at. @param {Props} props */
export function Parts({ state, acts }) {
  const sizes = cuttable(state).filter((one, at, all) => all.findIndex(({ name }) => name === one.name) === at);
  if (!sizes.length) return null;
  const parts = [...new Set(sizes.map((one) => one.part || GIVEN))];
  const cut = sizes.filter((one) => isCut(state, one)).length;
  return h(
    "section",
    { class: "bench-parts", id: "bench-parts", tabIndex: -1, "aria-labelledby": "bench-parts-title", onFocusIn: held(acts), onFocusOut: left(acts) },
    h("h2", { id: "bench-parts-title" }, h("span", null, "Part by part")),
    h("p", { class: "help" }, "Tick a size when it is sawn, or type what it came out at: the rest follows. Touch a name to see why."),
    h("p", { class: "tally" }, `${cut} of ${sizes.length} sizes cut`),
    h(Misfits, { state, acts }),
    h(Undo, { state, acts }),
    parts.map((part) => h(Part, { key: part, part, sizes: sizes.filter((one) => (one.part || GIVEN) === part), state, acts })),
  );
}

/** @param {{ part: string, sizes: Stands[] } & Props} props */
function Part({ part, sizes, state, acts }) {
  const open = sizes.filter((one) => !isCut(state, one) && one.text);
  const title = `${part.charAt(0).toUpperCase()}${part.slice(1)}`;
  const here = sizes.some((one) => state.changed?.at === `cut:${one.name}`);
  return h(
    "article",
    { class: "part" },
    h("header", null, h("h3", null, title),
      sizes.some((one) => one.text) && h("label", { class: "tick all" },
        h("input", { type: "checkbox", checked: !open.length, disabled: !open.length, onChange: () => acts.piece.tickAll(open.map(({ name }) => name)) }),
        h("span", null, open.length ? "all as drawn" : "all cut", h("span", { class: "spoken" }, `: ${title}`)))),
    h("ul", null, sizes.map((one) => h(SizeRow, { key: one.name, one, state, acts }))),
    here && h(Changed, { state, acts }),
  );
}

/** @param {{ one: Stands } & Props} props */
function SizeRow({ one, state, acts }) {
  const field = `cut:${one.name}`;
  const cut = isCut(state, one);
  const change = seen(state.changed).find(({ name }) => name === one.name);
  const refusal = state.refusals.find((each) => each.field === field);
  const draft = state.kept?.drafts[field];
  const value = draft ?? waiting(state, one)?.text ?? (cut && !/\.\d{3,}/.test(one.typed) && one.typed ? one.typed : one.text);
  return h(
    "li",
    { class: ["size", cut && "cut", change && "moved", refusal && "refused"].filter(Boolean).join(" "), id: `${one.part ? "a" : "g"}-${one.name}` },
    h("label", { class: "tick", onMouseDown: stay },
      h("input", { type: "checkbox", checked: cut, disabled: !one.text, onChange: (/** @type {any} */ event) => acts.piece.tick(one.name, event.currentTarget.checked) }),
      h("span", { class: "spoken" }, `${one.label} is cut`)),
    h("div", { class: "what" }, h(NumberName, { answer: one, acts }),
      h("p", { class: "left" }, unparted([cut ? "cut" : one.state === "yielded" ? "gave way" : "", one.left, one.also].filter(Boolean).join(" · ")))),
    h("input", {
      type: "text", name: field, id: `f-${field}`, value, autoComplete: "off", autoCapitalize: "off", spellcheck: false, enterKeyHint: "done",
      disabled: !one.text, inputMode: padFor(one.kind), "aria-label": `${one.label} came out at`, "aria-invalid": refusal ? "true" : undefined,
      "aria-describedby": `n-${field}`,
      onInput: (/** @type {any} */ event) => acts.piece.draft(one.name, event.currentTarget.value),
      onKeyDown: (/** @type {any} */ event) => event.key === "Enter" && (acts.piece.record(one.name), acts.release()),
    }),
    h("p", { class: "said", id: `n-${field}` },
      refusal ? refusal.text : change ? unparted(`▲ was ${whole(change.before)}${change.amount ? `: ${change.amount}` : ""}`) : ""),
    cut && h(CameFirst, { one, state, acts }),
  );
}

/** What waits for Python on this size. @param {import("../shapes").State} state @param {Stands} one */
function waiting(state, { name }) {
  return state.kept?.pending.findLast((each) => each.name === name && each.act === "cut");
}

/** @param {import("../shapes").State} state @param {Stands} one */
function isCut(state, one) {
  const last = state.kept?.pending.findLast(({ name, act, all }) => (name === one.name && (act === "cut" || act === "uncut")) || all?.some(([each]) => each === one.name));
  return last ? last.act !== "uncut" : one.state === "cut";
}

/** A field taken in hand: its keys, its text selected. @param {import("../shapes").Acts} acts @returns {(event: FocusEvent) => void} */
function held(acts) {
  return ({ target }) => {
    if (!(target instanceof HTMLInputElement) || target.type !== "text") return;
    acts.hold(target.name);
    selectAll(target);
  };
}

/** A field left with a text in it is an entry, unless the hand goes to our keys or to its own box. @param {import("../shapes").Acts} acts @returns {(event: FocusEvent) => void} */
function left(acts) {
  return ({ target, relatedTarget }) => {
    if (!(target instanceof HTMLInputElement) || target.type !== "text") return;
    if (relatedTarget instanceof Element && (relatedTarget.closest(".keys") || relatedTarget.closest("li") === target.closest("li") && relatedTarget.closest(".tick"))) return;
    acts.piece.record(target.name.slice(4));
    acts.release();
  };
}

/** The box must not take the caret out of the field: what is typed is what is ticked. @param {Event} event */
function stay(event) {
  event.preventDefault();
}
