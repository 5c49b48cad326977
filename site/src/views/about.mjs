/** What stands about a field: where its text came from, how it was read, how it is got, or what is wrong with it. */

import { h } from "preact";

/** @typedef {import("../shapes").Given} Given */
/** @typedef {import("./facts.mjs").Facts} Facts */

/**
 * How the text was read, and where it came from when nobody typed it here.
 * @param {{ given: Given, facts: Facts }} props
 */
export function Tag({ given, facts }) {
  const from = facts.answered ? "answered" : facts.from && facts.from !== "example" ? `from ${facts.from}` : facts.from;
  const read = facts.read && !facts.refusal ? `read as ${facts.read}` : "";
  return h(
    "span",
    { class: "tag", id: `r-${given.name}` },
    from && h("em", null, from, " "),
    (facts.stands || read) && h("span", null, facts.stands || read),
  );
}

/** How it is got at the bench; in its place, when the entry cannot be used, what to type instead.
 * @param {{ given: Given, facts: Facts, acts: import("../shapes").Acts }} props */
export function Note({ given, facts, acts }) {
  return h(
    "p",
    { class: "note", id: `n-${given.name}` },
    facts.refusal || h(Help, { given, unsaid: facts.unsaid }),
    facts.aside &&
      h(
        "span",
        { class: "aside" },
        `You had ${facts.aside}. `,
        h("button", { type: "button", class: "quiet", onClick: () => acts.reuse(given.name) }, "Use it"),
      ),
  );
}

/** The range, and what an empty field means, after how it is got. @param {{ given: Given, unsaid: string }} props */
function Help({ given, unsaid }) {
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
