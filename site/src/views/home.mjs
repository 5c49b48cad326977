import { h } from "preact";
import { search } from "../state-search.mjs";
import { FromFile, Yours } from "./shelf.mjs";
import { BoxMark, NailMark } from "./marks.mjs";

/** @typedef {import("../shapes").Listed} Listed */
/** @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props */

/**
 * The first screen: what was open last, a question, the two ways in, the sums in the order of the work.
 * @param {Props} props
 */
export function Home({ state, acts }) {
  const { sums, moments } = state.catalogue;
  const pieces = sums.filter((sum) => sum.moment === "piece");
  const quick = moments.filter(({ id }) => id !== "piece" && sums.some((sum) => sum.moment === id));
  return h(
    "div",
    { class: "home" },
    h("h1", { tabIndex: -1 }, "Sums for the bench"),
    h(
      "p",
      { class: "lead" },
      "Measure, type what the rule says, and cut by the answer. No plan needed, no signal either.",
    ),
    h(Recents, { state }),
    h(Yours, { state, acts }),
    h(Search, { state, acts }),
    h(
      "div",
      { class: "ways" },
      h(
        "a",
        { class: "way", href: "#sums" },
        h(NailMark, null),
        h("strong", null, "A quick sum"),
        h("span", null, "one question, one answer"),
      ),
      h(
        "a",
        { class: "way", href: "#pieces" },
        h(BoxMark, null),
        h("strong", null, "A piece"),
        h("span", null, "every part of it from a few sizes"),
      ),
    ),
    h(
      "section",
      { id: "sums", tabIndex: -1, "aria-labelledby": "sums-title" },
      h("h2", { id: "sums-title" }, h("span", null, "In the order of the work")),
      h(
        "nav",
        { class: "moments", "aria-label": "Moments of the work" },
        quick.map(({ id, title }) => h("a", { key: id, href: `#m-${id}` }, title)),
      ),
      h(
        "div",
        { class: "stick" },
        quick.map(({ id, title }) =>
          h(
            "section",
            { key: id, id: `m-${id}`, tabIndex: -1 },
            h("h3", null, title),
            h(List, { sums: sums.filter((sum) => sum.moment === id) }),
          ),
        ),
      ),
    ),
    h(
      "section",
      { id: "pieces", tabIndex: -1, "aria-labelledby": "pieces-title" },
      h("h2", { id: "pieces-title" }, h("span", null, "Pieces")),
      pieces.length ? h(List, { sums: pieces }) : h("p", null, "None yet."),
      h("div", { class: "hands" }, h(FromFile, { acts })),
    ),
  );
}

/** @param {Props} props */
function Search({ state, acts }) {
  const found = search(state.catalogue.sums, state.search);
  const asked = state.search.trim() !== "";
  return h(
    "search",
    { class: "search" },
    h("label", { for: "search" }, "What do you want to know?"),
    h("input", {
      id: "search",
      type: "search",
      value: state.search,
      autoComplete: "off",
      enterKeyHint: "search",
      placeholder: "how long a nail",
      onInput: (event) => acts.seek(event.currentTarget.value),
    }),
    h(
      "p",
      { class: "count", role: "status" },
      asked
        ? found.length
          ? `${found.length} ${found.length === 1 ? "sum answers" : "sums answer"} that`
          : "No sum here answers that yet. Try other words."
        : "",
    ),
    asked && h(List, { sums: found }),
  );
}

/** @param {{ sums: Listed[] }} props */
function List({ sums }) {
  return h(
    "ul",
    { class: "list" },
    sums.map(({ id, title, question }) =>
      h("li", { key: id }, h("a", { href: `${id}.html` }, h("strong", null, title), h("span", null, question))),
    ),
  );
}

/** @param {{ state: import("../shapes").State }} props */
function Recents({ state }) {
  const titles = new Map(state.catalogue.sums.map((sum) => [sum.id, sum.title]));
  const recent = state.recent.filter(({ id }) => titles.has(id));
  if (!recent.length) return null;
  return h(
    "nav",
    { class: "recents", "aria-label": "Open last" },
    h("h2", null, h("span", null, "Open last")),
    h(
      "ul",
      { class: "list" },
      recent.map(({ id, label, text }) =>
        h(
          "li",
          { key: id },
          h(
            "a",
            { href: `${id}.html` },
            h("strong", null, titles.get(id)),
            h("span", null, label, text && h("b", null, text)),
          ),
        ),
      ),
    ),
  );
}
