import { h } from "preact";
import { standing } from "../state.mjs";
import { Measure } from "./measure.mjs";
import { Table } from "./table.mjs";

/** @typedef {import("../shapes").State} State */
/** @typedef {import("../shapes").Answer} Answer */

/** The answers, the first of them largest, and how they stand to what is in the fields. @param {{ state: State }} props */
export function Answers({ state }) {
  if (!state.shown) return null;
  const { answers, cautions } = state.shown.answer;
  const main = answers.find((one) => one.kind !== "rows");
  return h("section", { class: `answers ${standing(state)}`, id: "answers", "aria-labelledby": "answers-title" },
    h("h2", { id: "answers-title" }, h("span", null, "Answer")),
    h(Standing, { state }),
    main && h(Main, { answer: main }),
    h(Cautions, { cautions }),
    h("dl", { class: "others" }, answers.filter((one) => one !== main && one.kind !== "rows").map((answer) => h(Other, { answer, held: state.focus }))),
    answers.filter((one) => one.kind === "rows").map((answer) => h(Table, { answer })));
}

/** @param {{ answer: Answer }} props */
function Main({ answer }) {
  return h("div", { class: "main", id: `a-${answer.name}` },
    h("p", { class: "name" }, answer.label),
    h("p", { class: "figure" }, h(Measure, { text: answer.text ?? "" })),
    h("p", { class: "left" }, [answer.left, answer.also].filter(Boolean).join(" · ")),
    answer.help && h("p", { class: "help" }, answer.help));
}

/** @param {{ answer: Answer, held: string }} props */
function Other({ answer, held }) {
  return h("div", { class: `other${held === answer.name ? " held" : ""}`, id: `a-${answer.name}` },
    h("dt", null, answer.label, answer.help && h("span", { class: "help" }, answer.help)),
    h("dd", null, h(Measure, { text: answer.text ?? "" }), h("span", { class: "left" }, [answer.left, answer.also].filter(Boolean).join(" · "))));
}

/** Warnings stand right under the main answer: a word and a sign, not a colour alone.
 * @param {{ cautions: import("../shapes").Caution[] }} props */
function Cautions({ cautions }) {
  if (!cautions.length) return null;
  return h("ul", { class: "cautions" }, cautions.map(({ say, source }) =>
    h("li", null, h("strong", null, "Take care: "), say, source && h("span", { class: "source" }, ` (${source})`))));
}

/** @param {{ state: State }} props */
function Standing({ state }) {
  return h("p", { class: "standing" }, words(state));
}

/** @param {State} state @returns {string} */
function words(state) {
  const how = standing(state);
  if (state.fault) return `This sum stumbled and cannot answer: ${state.fault}`;
  if (how === "refused") return `These answers are from before the last change. ${wanting(state)}`;
  if (how === "kept") return "from last time";
  if (how === "waiting" && state.python !== "ready") return "For earlier numbers; new answers follow when Python has woken.";
  return "";
}

/** What is still wanted, for the entries that are empty or concern several fields. @param {State} state */
function wanting(state) {
  const told = state.refusals.map(({ field, label, say, instead }) => {
    const empty = !state.entry.texts[field]?.trim();
    if (empty && say.startsWith("nothing")) return `Still wanted: ${label.toLowerCase()}.`;
    return empty ? `${say.charAt(0).toUpperCase()}${say.slice(1)}; ${instead}.` : `See ${label}.`;
  });
  return told.join(" ");
}
