/** What stands about a field: where its text came from, how it was read, how it is got, or what is wrong with it. */

import { h } from "preact";
import { whenChanged } from "./unchanged.mjs";

/** @typedef {import("../shapes").Given} Given */
/** @typedef {import("./field.mjs").Props} Props */

/** How the text was read, and where it came from when nobody typed it here. @param {Props} props */
export function Tag({ given, answered, from: origin, read: reading, refusal, stands }) {
  const from = answered ? "answered" : origin && origin !== "example" ? `from ${origin}` : origin;
  const read = reading && !refusal ? `read as ${reading}` : "";
  return h(
    "span",
    { class: "tag", id: `r-${given.name}` },
    from && h("em", null, from, " "),
    (stands || read) && h("span", null, stands || read),
  );
}

/** How it is got at the bench; in its place, when the entry cannot be used, what to type instead. @param {Props} props */
export function Note({ given, refusal, unsaid, aside, acts }) {
  return h(
    "p",
    { class: "note", id: `n-${given.name}` },
    refusal || h(Help, { given, unsaid }),
    aside &&
      h(
        "span",
        { class: "aside" },
        `You had ${aside}. `,
        h("button", { type: "button", class: "quiet", onClick: () => acts.reuse(given.name) }, "Use it"),
      ),
  );
}

const Help = whenChanged(helped);

/** The range, and what an empty field means, after how it is got. @param {{ given: Given, unsaid: string }} props */
function helped({ given, unsaid }) {
  const { help, limit, default: meant, default_why: why, optional } = given;
  return h(
    "span",
    { class: "help" },
    help,
    limit.text && ` ${limit.text.charAt(0).toUpperCase()}${limit.text.slice(1)}.`,
    meant && ` Left empty: ${meant}${why ? `, ${why.replace(/\.$/, "")}` : ""}.`,
    optional && !meant && (unsaid ? ` Left empty, so nothing is said of ${unsaid}.` : " May be left empty."),
  );
}
