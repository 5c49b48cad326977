import { h } from "preact";
import { borrowed } from "../state-entry.mjs";
import { standing } from "../state.mjs";
import { Measure, rule, unparted } from "./measure.mjs";
import { cuttable } from "../state-told.mjs";
import { Cautions } from "./care.mjs";
import { sentence } from "./facts.mjs";
import { NumberName } from "./number.mjs";
import { Table } from "./table.mjs";
import { whenChanged } from "./unchanged.mjs";

/** @typedef {import("../shapes").State} State */
/** @typedef {import("../shapes").Answer} Answer */

/** Single answers shown before the rest is folded, when there are many. */
const MANY = 9;
const FIRST = 6;
/** Kinds that may fall between two marks. */
const MARKED = new Set(["length", "fine", "angle"]);

/**
 * The answers, the first of them largest, and how they stand to what is in the fields.
 * @param {{ state: State, acts: import("../shapes").Acts }} props
 */
export function Answers({ state, acts }) {
  if (!state.shown) return null;
  const { answers: all, cautions } = state.shown.answer;
  const cut = new Set(state.kept ? cuttable(state).map(({ name }) => name) : []);
  const main = mainOf(all);
  const answers = all.filter((one) => one === main || !cut.has(one.name));
  const others = answers.filter((one) => one !== main && one.kind !== "rows");
  const shown = others.length > MANY ? FIRST : MANY;
  return h(
    "section",
    { class: `answers ${standing(state)}`, id: "answers", tabIndex: -1, "aria-labelledby": "answers-title" },
    h("h2", { id: "answers-title" }, h("span", null, "Answer")),
    h(Standing, { state }),
    main && h(Main, { answer: main, acts, id: !cut.has(main.name) }),
    h(Cautions, { cautions }),
    h(Others, { answers: others.slice(0, shown), held: state.focus, acts }),
    others.length > shown &&
      h(
        "details",
        { class: "fold" },
        h("summary", null, `More figures (${others.length - shown})`),
        h(Others, { answers: others.slice(shown), held: state.focus, acts }),
      ),
  );
}

/** The answers that are lists, the first of them open. @param {{ state: State }} props */
export function Tables({ state }) {
  const tables = state.shown?.answer.answers.filter((one) => one.kind === "rows") ?? [];
  return h(
    "section",
    { class: `tables ${standing(state)}`, "aria-label": "Lists" },
    tables.map((answer, at) => h(Table, { key: answer.name, answer, open: at === 0 })),
  );
}

/** The answer that stands first and largest: the first that is not a table. @param {Answer[]} answers */
export function mainOf(answers) {
  return answers.find((one) => one.kind !== "rows");
}

const Main = whenChanged(mainly);

/** @param {{ answer: Answer, acts: import("../shapes").Acts, id: boolean }} props `id`: false where it stands among the parts as well */
function mainly({ answer, acts, id }) {
  return h(
    "div",
    { class: `main${long(answer, 16) ? " long" : ""}`, id: id ? `a-${answer.name}` : undefined },
    h("p", { class: "name" }, h(NumberName, { answer, acts })),
    h("p", { class: "figure" }, h(Measure, { text: answer.text ?? "" })),
    h(Left, { answer }),
    answer.help && h("p", { class: "help" }, answer.help),
  );
}

/** Whether words are too many to be set as a figure is. @param {Answer} answer @param {number} most */
function long({ text = "" }, most) {
  return text.length > most;
}

/** @param {{ answers: Answer[], held: string, acts: import("../shapes").Acts }} props */
function Others({ answers, held, acts }) {
  return h(
    "dl",
    { class: "others" },
    answers.map((answer) => h(Other, { key: answer.name, answer, held: held === answer.name, acts })),
  );
}

const Other = whenChanged(otherwise);

/** @param {{ answer: Answer, held: boolean, acts: import("../shapes").Acts }} props */
function otherwise({ answer, held, acts }) {
  return h(
    "div",
    { class: `other${long(answer, 14) ? " long" : ""}${held ? " held" : ""}`, id: `a-${answer.name}` },
    h("dt", null, h(NumberName, { answer, acts }), answer.help && h("span", { class: "help" }, answer.help)),
    h("dd", null, h(Measure, { text: answer.text ?? "" }), h(Left, { answer })),
  );
}

/** What is left over on the rule, and the other unit. Its line is kept free for kinds that may have one.
 * @param {{ answer: Answer }} props */
function Left({ answer: { kind, left, also } }) {
  const told = [left, also].filter(Boolean).join(" · ");
  return told || MARKED.has(kind) ? h("p", { class: "left" }, unparted(told)) : null;
}

/** @param {{ state: State }} props */
function Standing({ state }) {
  const told = words(state);
  if (told) return h("p", { class: "standing loud" }, told);
  const lent = state.sum && borrowed(state.entry, state.sum).length > 0;
  return h(
    "p",
    { class: "standing" },
    lent && h("em", null, "with the example’s numbers, "),
    `to ${rule(state.bench.mark)} on your rule`,
    h("button", { type: "button", class: "quiet", popovertarget: "settings" }, "change"),
  );
}

/** @param {State} state @returns {string} */
function words(state) {
  const how = standing(state);
  if (state.fault) return `No answer: ${state.fault}`;
  if (how === "refused") return `These answers are from before the last change. ${wanting(state)}`;
  if (how === "open") return "The piece is not whole: see what it lacks below. What is drawn is from before.";
  if (how === "kept") return "From last time.";
  if (how === "waiting" && state.python !== "ready")
    return "For earlier numbers; yours are answered as soon as Python is awake.";
  return "";
}

/** What is still wanted, for entries that are empty or concern several fields. @param {State} state */
function wanting({ refusals, entry }) {
  const empty = refusals.filter(({ field }) => !entry.texts[field]?.trim());
  const wanted = empty.filter(({ say }) => say.startsWith("nothing")).map(({ label }) => label.toLowerCase());
  const said = empty.filter(({ say }) => !say.startsWith("nothing")).map(sentence);
  const see = refusals.filter((one) => !empty.includes(one)).map(({ label }) => label.toLowerCase());
  return [...said, wanted.length && `Still wanted: ${wanted.join(", ")}.`, see.length && `Look at ${see.join(", ")}.`]
    .filter(Boolean)
    .join(" ");
}
