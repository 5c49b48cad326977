import { h } from "preact";

/**
 * @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props
 * @typedef {import("../shapes-piece").Stands} Stands
 */

/** Which cut came first, asked only beside one that would change something if it had, and told where the maker has said it.
 * @param {{ one: Stands } & Props} props */
export function CameFirst({ one, state, acts }) {
  const { first = [], contested = [] } = state.settled?.told ?? {};
  if (contested.includes(one.name)) return h(Ask, { one, acts });
  return first.includes(one.name) ? h("p", { class: "order" }, h("b", null, "Cut first"), ": the rest follows it.") : null;
}

/** @param {{ one: Stands, acts: Props["acts"] }} props */
function Ask({ one, acts }) {
  return h(
    "p",
    { class: "order" },
    h("button", { type: "button", class: "key", "aria-describedby": `o-${one.name}`, onClick: () => acts.piece.first(one.name) },
      h("span", { class: "spoken" }, `${one.label}: `), "This was cut first"),
    h("span", { class: "help", id: `o-${one.name}` }, "If so, the rest follows it instead."),
  );
}
