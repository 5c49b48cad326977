import { h } from "preact";

/** @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props */

/** The pieces kept on this device; those deleted lately can be had back. @param {Props} props */
export function KeptPieces({ state, acts }) {
  const titles = new Map(state.catalogue.sums.map((sum) => [sum.id, sum.title]));
  const known = state.pieces.filter(({ piece }) => titles.has(piece));
  const here = known.filter(({ gone }) => !gone);
  const gone = known.filter((one) => one.gone);
  if (!known.length) return null;
  return [
    h("ul", { class: "list kept-pieces" }, here.map((one) => h("li", { key: one.id, class: one.id === state.kept?.id ? "open" : "" },
      h("a", { href: `${one.piece}.html#kept=${one.id}`, "aria-current": one.id === state.kept?.id ? "true" : undefined },
        h("strong", null, one.title || titles.get(one.piece)),
        h("span", null, [titles.get(one.piece), one.cuts ? `${one.cuts} cut` : "nothing cut yet", day(one.at)].join(", "))),
      h("button", { type: "button", class: "key", onClick: () => acts.piece.remove(one.id), "aria-label": `Delete ${one.title || titles.get(one.piece)}` }, "Delete")))),
    gone.length > 0 && h("details", { class: "fold" }, h("summary", null, `Deleted lately (${gone.length})`),
      h("ul", { class: "list kept-pieces" }, gone.map((one) => h("li", { key: one.id }, h("span", null, one.title || titles.get(one.piece)),
        h("button", { type: "button", class: "key", onClick: () => acts.piece.bringBack(one.id) }, "Bring back"))))),
  ];
}

/** What is to be said of the piece as a whole, with the undoing of a deletion. @param {Props} props */
export function Notice({ state, acts }) {
  const { notice, removed } = state;
  return notice ? h("p", { class: "notice" }, notice, " ", removed &&
    h("button", { type: "button", class: "key", onClick: () => acts.piece.bringBack(removed) }, "Undo deleting")) : null;
}

/** The pieces that are being built. @param {Props} props */
export function Yours({ state, acts }) {
  if (!state.pieces.length && !state.notice) return null;
  return h(
    "section",
    { class: "yours", "aria-labelledby": "yours-title" },
    h("h2", { id: "yours-title" }, h("span", null, "Your pieces")),
    h(Notice, { state, acts }),
    h(KeptPieces, { state, acts }),
  );
}

/** This piece's own name, and the way to the others. @param {Props} props */
export function Shelf({ state, acts }) {
  const { kept, piece } = { kept: state.kept, piece: acts.piece };
  const others = state.pieces.filter(({ gone }) => !gone).length;
  const hand = (/** @type {string} */ label, /** @type {() => void} */ onClick) => h("button", { type: "button", class: "key", onClick }, label);
  return h(
    "section",
    { class: "shelf", "aria-label": "This piece" },
    h("div", { class: "field" }, h("label", { for: "f-title" }, "Its name"),
      h("div", { class: "line" }, h("input", { id: "f-title", type: "text", value: kept?.record.title ?? "", maxLength: 80, autoComplete: "off", placeholder: "no name yet",
        onInput: (/** @type {any} */ event) => piece.title(event.currentTarget.value) }))),
    h(Notice, { state, acts }),
    h("details", { class: "fold" }, h("summary", null, "Your pieces", others > 0 && h("span", { class: "tag" }, String(others))),
      h("div", { class: "hands" }, hand("New piece", () => piece.begin()), hand("Copy", () => piece.copy()), hand("Another, nothing cut", () => piece.another()),
        hand("Save to a file", () => piece.save()), h(FromFile, { acts }), hand("Print the bench sheet", () => piece.print())),
      h(KeptPieces, { state, acts })),
  );
}

/** @param {{ acts: import("../shapes").Acts }} props */
export function FromFile({ acts }) {
  return h("label", { class: "key from-file" }, "Open a file",
    h("input", { type: "file", accept: ".json,application/json", onChange: (/** @type {any} */ event) => {
      acts.piece.load(event.currentTarget.files?.[0]);
      event.currentTarget.value = "";
    } }));
}

/** @param {number} at */
function day(at) {
  return at ? new Date(at).toLocaleDateString("en-GB", { day: "numeric", month: "short" }) : "";
}
