import { h } from "preact";

/** @typedef {import("../shapes").State} State */

/**
 * Where a long page has what: one touch to each list, in a row that scrolls by itself. A page with one list needs none.
 * @param {{ state: State }} props
 */
export function Jump({ state }) {
  const lists = state.shown?.answer.answers.filter((one) => one.kind === "rows") ?? [];
  if (lists.length < 2) return null;
  const places = [
    ...(state.kept ? [["bench-parts", "Part by part"]] : []),
    ["answers", "Answer"],
    ...lists.map(({ name, label }) => [`a-${name}`, label]),
    ["working", "Working"],
  ];
  return h(
    "nav",
    { class: "jump", "aria-label": "On this page" },
    h(
      "ul",
      null,
      places.map(([id = "", label]) =>
        h("li", { key: id }, h("a", { href: `#${id}`, onClick: () => unfold(id) }, label)),
      ),
    ),
  );
}

/** @param {string} id */
function unfold(id) {
  const fold = document.getElementById(id);
  if (fold instanceof HTMLDetailsElement) fold.open = true;
}
