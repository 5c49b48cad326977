import { h } from "preact";
import { selectAll } from "../fields.mjs";
import { changeable } from "../state-number.mjs";
import { whole } from "../state-told.mjs";
import { Measure } from "./measure.mjs";

/** @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props */

/** Kinds that are words, of which there is nothing more to say. */
const WORDS = new Set(["text", "rows", "choice"]);

/** The name of a number, which opens the sheet about it. @param {{ answer: any, acts: import("../shapes").Acts }} props */
export function NumberName({ answer, acts }) {
  if (WORDS.has(answer.kind) || !answer.text) return h("span", null, answer.label);
  return h(
    "button",
    { type: "button", class: "number-name", "aria-haspopup": "dialog", onClick: () => acts.piece.about(answer) },
    answer.label,
  );
}

/** The sheet itself. @param {Props} props */
export function NumberSheet({ state, acts }) {
  const { about } = state;
  return h(
    "dialog",
    { id: "number", class: "settings number", "aria-labelledby": "number-title", onClose: () => acts.piece.close() },
    about && [
      h("h2", { id: "number-title" }, h("span", null, about.answer.label)),
      h("p", { class: "figure" }, h(Measure, { text: about.answer.text ?? "" }), h("span", { class: "left" }, about.answer.left)),
      h(Why, { state, about }),
      h(Trust, { about }),
      h(MakeIt, { state, acts, about }),
      h("form", { method: "dialog" }, h("button", { class: "key wide" }, "Close")),
    ],
  );
}

/** @param {{ state: import("../shapes").State, about: import("../shapes-piece").About }} props */
function Why({ state, about }) {
  const lines = (state.shown?.answer.working ?? []).filter(({ label }) => label === about.answer.label);
  const own = lines.map((one) => ({ ...one, because: one.note }));
  const links = about.why ? [...about.why.chain].reverse() : own;
  if (!links.length) return null;
  return h(
    "section",
    null,
    h("h3", null, "Why this number"),
    h(
      "div",
      { class: "chain", role: "region", tabIndex: 0, "aria-label": "Why, line by line" },
      h("dl", null, links.map((one) => h(Link, { one }))),
    ),
    about.why && about.why.follows.length > 0 && h("p", null, `From it follow: ${about.why.follows.map((one) => one.label).join(", ")}.`),
  );
}

/** @param {{ one: { label: string, letters: string, numbers: string, result: string, because: string } }} props */
function Link({ one: { label, letters, numbers, result, because } }) {
  return h(
    "div",
    null,
    h("dt", null, `${label.charAt(0).toUpperCase()}${label.slice(1)}: `, h("b", null, result)),
    letters && h("dd", { class: "letters" }, `= ${letters}`),
    numbers && numbers !== letters && h("dd", null, `= ${numbers}`),
    because && h("dd", { class: "help" }, because),
  );
}

/** @param {{ about: import("../shapes-piece").About }} props */
function Trust({ about: { trust } }) {
  const slips = (trust?.slips ?? []).filter(({ by }) => by && by.value !== 0);
  return h(
    "section",
    null,
    h("h3", null, "How true"),
    h("p", { role: "status" }, trust ? trust.say : "Working it out…"),
    slips.length > 0 && h("ul", { class: "slips" }, slips.map(({ label, by }) => h("li", null, h("span", null, label), h("b", null, by?.text)))),
  );
}

/** @param {Props & { about: import("../shapes-piece").About }} props */
function MakeIt({ state, acts, about }) {
  const { wanted, given, found, refusal } = about;
  const sure = (/** @type {Event} */ event) => (event.preventDefault(), acts.piece.find());
  return h(
    "form",
    { class: "make-it", onSubmit: sure },
    h("h3", null, "Make it another"),
    h("div", { class: "field" },
      h("label", { for: "wanted" }, "It should be"),
      h("div", { class: "line" }, h("input", {
        id: "wanted", name: "wanted", type: "text", autoComplete: "off", value: wanted, 
        placeholder: about.answer.text, onFocus: (/** @type {any} */ event) => selectAll(event.currentTarget),
        onInput: (/** @type {any} */ event) => acts.piece.ask({ wanted: event.currentTarget.value }),
      })),
    ),
    h("div", { class: "field" },
      h("label", { for: "moved" }, "by changing"),
      h("select", { id: "moved", onChange: (/** @type {any} */ event) => acts.piece.ask({ given: event.currentTarget.value }) },
        changeable(state).map(({ name, label }) => h("option", { value: name, selected: name === given }, label))),
    ),
    h("button", { type: "submit", class: "key" }, "What must it be?"),
    h("p", { role: "status", class: refusal ? "note refused" : "note" }, found ? found.say : refusal),
    found && (found.reached || found.answer.text !== about.answer.text) && h("div", { class: "hands" },
      found.on_rule && h("button", { type: "button", class: "key", onClick: () => acts.piece.use(found.on_rule?.text ?? "") },
        `Use ${found.on_rule.text}, which makes it ${whole(found.on_rule.answer)}`),
      h("button", { type: "button", class: "key", onClick: () => acts.piece.use(found.text) }, `Use ${found.text}`),
    ),
  );
}
