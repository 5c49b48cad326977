import { h } from "preact";

/** Our own small drawings, in the line of the page. They say nothing that the words beside them do not. */

/** @param {string} name @param {string} box @param {[string, object][]} parts */
function mark(name, box, parts) {
  return h(
    "svg",
    { class: `mark ${name}`, viewBox: box, "aria-hidden": "true", focusable: "false" },
    parts.map(([tag, told]) => h(tag, told)),
  );
}

/** The nail under the house's name. */
export function NailRule() {
  return mark("nail-rule", "0 0 128 8", [["path", { d: "M3 1v6M3 4H119l7 0-7-1.6M119 5.6l7-1.6" }]]);
}

/** A nail through two boards, with its length. */
export function NailMark() {
  return mark("sums", "0 0 96 64", [
    ["path", { class: "wood", d: "M8 24h56v12H8zM8 36h56v22H8z" }],
    ["path", { class: "hatch", d: "M12 58l22-22M22 58l22-22M32 58l22-22M42 58l22-22M52 58l12-12M8 52l16-16M8 42l6-6" }],
    ["path", { class: "accent", d: "M32 20h8M36 20v32l-1.5-4M36 52l1.5-4" }],
    ["path", { class: "dim", d: "M42 20h42M39 52h45M80 20v32M77 23l6-6M77 55l6-6" }],
  ]);
}

/** A box with a sloping lid, seen from the side. */
export function BoxMark() {
  return mark("piece", "0 0 96 64", [
    ["path", { class: "wood", d: "M18 6h5v54h-5zM23 58V16L76 36V58z" }],
    ["path", { class: "edge", d: "M23 11.5L84 34.5l-1.6 4.3L23 16.4" }],
    ["path", { class: "dim", d: "M88 38v20M85 41l6-6M85 61l6-6" }],
    ["path", { class: "accent", d: "M23 30h16M36.500 30a14 14 0 0 0-1-5" }],
  ]);
}

/** On to the next. */
export function OnMark() {
  return mark("on", "0 0 32 16", [["path", { d: "M2 8h27M24 3l6 5-6 5" }]]);
}

/** A rule's end, for the settings. */
export function RuleMark() {
  return mark("rule-end", "0 0 24 24", [["path", { d: "M2 8h20v9H2zM5 8v5M8 8v3M11 8v5M14 8v3M17 8v5M20 8v3" }]]);
}
