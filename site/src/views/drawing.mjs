import { h } from "preact";

const TAGS = new Set(["g", "line", "polyline", "polygon", "circle", "path", "text", "rect"]);
const ATTRIBUTES = new Set([
  "class", "points", "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "d", "width", "height", "transform", "text-anchor",
  "dominant-baseline", "data-name",
]);

/** The figure, to scale; touching a dimension calls `touch` with its name. `held` is the dimension in hand.
 * @param {{ figure: import("../shapes").Figure, held: string, touch: (name: string) => void }} props */
export function Drawing({ figure, held, touch }) {
  const box = `0 0 ${figure.width} ${figure.height}`;
  return h("svg", { class: "drawing", viewBox: box, role: "img", "aria-labelledby": "figure-title figure-desc", onClick: touched(touch) },
    h("title", { id: "figure-title" }, figure.title),
    h("desc", { id: "figure-desc" }, figure.desc),
    ...figure.nodes.map((node) => element(node, held)));
}

/** @param {(name: string) => void} touch @returns {(event: Event) => void} */
function touched(touch) {
  return (event) => {
    const handle = event.target instanceof Element && event.target.closest("[data-name]");
    if (handle) touch(handle.getAttribute("data-name") ?? "");
  };
}

/** One node as an element; a tag or attribute that is no part of a drawing is left out.
 * @param {import("../shapes").Node | string} node @param {string} held @returns {import("preact").ComponentChild} */
function element(node, held) {
  if (typeof node === "string") return node;
  const [tag, told, ...children] = node;
  if (!TAGS.has(tag)) return null;
  const attributes = Object.fromEntries(Object.entries(told).filter(([name]) => ATTRIBUTES.has(name)));
  if (held && told["data-name"] === held) attributes.class = `${attributes.class} held`;
  return h(tag, attributes, ...children.map((child) => element(child, held)));
}
