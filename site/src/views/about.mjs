/** What stands about a field: where its text came from, how it was read or what is wrong, how it is got. */

import { h } from "preact";

/** @typedef {import("../shapes").Given} Given */
/** @typedef {import("./facts.mjs").Facts} Facts */

/** Where the text in the field came from, when nobody typed it here. @param {{ facts: Facts }} props */
export function Tag({ facts }) {
  const words = facts.answered ? "answered" : facts.from && facts.from !== "example" ? `from ${facts.from}` : facts.from;
  return h("span", { class: "tag" }, words);
}

/** One line kept free under each field: how it was read, or what to type instead.
 * @param {{ given: Given, facts: Facts, acts: import("../shapes").Acts }} props */
export function Note({ given, facts, acts }) {
  return h("p", { class: "note", id: `n-${given.name}` },
    facts.refusal || (facts.read && facts.text.trim() ? `read as ${facts.read}` : ""),
    facts.aside && h("span", null, `you had ${facts.aside} `,
      h("button", { type: "button", class: "quiet", onClick: () => acts.reuse(given.name) }, "use it")));
}

/** How it is got at the bench, the range, and what an empty field means. @param {{ given: Given }} props */
export function Help({ given }) {
  const { limit, default: meant, default_why: why, optional } = given;
  return h("p", { class: "help", id: `h-${given.name}` }, given.help,
    limit?.text && h("span", { class: "limit" }, ` ${limit.text.charAt(0).toUpperCase()}${limit.text.slice(1)}.`),
    meant && ` Left empty: ${meant}${why ? `, ${why.replace(/\.$/, "")}` : ""}.`,
    optional && !meant && " May be left empty.");
}
