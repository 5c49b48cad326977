import { h } from "preact";
import { whenChanged } from "./unchanged.mjs";

const TAGS = new Set(["g", "line", "polyline", "polygon", "circle", "path", "text", "rect"]);
const ATTRIBUTES = new Set([
  "class",
  "stroke",
  "points",
  "x",
  "y",
  "x1",
  "y1",
  "x2",
  "y2",
  "cx",
  "cy",
  "r",
  "d",
  "width",
  "height",
  "transform",
  "text-anchor",
  "dominant-baseline",
  "data-name",
]);

/** A sheet is never lower than this, so that a steeper slope or a taller box has room. */
const LOWEST = 210;

/** @typedef {import("../shapes").Figure} Figure */
/** @typedef {{ figure: Figure, sheet: Figure, held: string, touch: (name: string) => void, name?: string }} Sheet */

/** The figure, to scale; touching a dimension calls `touch` with its name. `held` is the dimension in hand. The sheet keeps the
 * size that `sheet` gives it whatever is drawn on it, so that nothing below moves while numbers are typed. */
export const Drawing = whenChanged(drawn);

/** @param {Sheet} props */
function drawn({ figure, sheet, held, touch, name = "figure" }) {
  const tall = Math.max(LOWEST, sheet.height);
  const told = {
    class: "drawing",
    role: "img",
    "aria-labelledby": `${name}-title ${name}-desc`,
    onClick: touched(touch),
  };
  return h(
    "svg",
    { ...told, viewBox: `0 0 ${sheet.width} ${tall}` },
    h("title", { id: `${name}-title` }, figure.title),
    h("desc", { id: `${name}-desc` }, figure.desc),
    h(
      "svg",
      { width: sheet.width, height: tall, viewBox: `0 0 ${figure.width} ${figure.height}` },
      figure.nodes.map((node) => element(node, held)),
    ),
  );
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
