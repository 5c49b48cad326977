import { h } from "preact";

/** Warnings stand right under the main answer: in words and with a sign, not by a colour alone.
 * @param {{ cautions: import("../shapes").Caution[] }} props */
export function Cautions({ cautions }) {
  if (!cautions.length) return null;
  return h(
    "div",
    { class: "cautions", role: "note" },
    h("p", null, h("strong", null, "Take care")),
    h(
      "ul",
      null,
      cautions.map(({ say, source }) => h("li", null, say, source && h("span", { class: "source" }, ` (${source})`))),
    ),
  );
}
