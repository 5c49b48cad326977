import { h } from "preact";
import { rule } from "./measure.mjs";
import { whenChanged } from "./unchanged.mjs";

/** @typedef {Pick<import("../shapes").State, "bench" | "look"> & { acts: import("../shapes").Acts }} Props */

const UNITS = ["in", "ft", "mm", "cm", "m"];
const MARKS = ["1/8", "1/16", "1/32", "1/64", "mm", "half mm"];
const ANGLES = /** @type {const} */ ([
  ["tenths", "14.5°"],
  ["minutes", "14° 30′"],
]);
const LOOKS = /** @type {const} */ ([
  ["", "as the device"],
  ["light", "light"],
  ["dark", "dark"],
  ["sun", "full sun"],
]);

/** How this maker measures and how the page looks, in a small sheet. */
export const Settings = whenChanged(settings);

/** @param {Props} props */
function settings({ bench, look, acts }) {
  return h(
    "div",
    { class: "settings", id: "settings", popover: "auto", role: "dialog", "aria-labelledby": "settings-title" },
    h("h2", { id: "settings-title" }, h("span", null, "Your rule and your page")),
    h(Chosen, {
      name: "mark",
      legend: "Finest mark on your rule",
      options: MARKS.map((mark) => [mark, rule(mark)]),
      chosen: bench.mark,
      choose: (mark) => acts.settle({ mark }),
    }),
    h(Chosen, {
      name: "unit",
      legend: "A number with no unit is in",
      options: UNITS.map((unit) => [unit, unit]),
      chosen: bench.unit,
      choose: (unit) => acts.settle({ unit }),
    }),
    h(Chosen, {
      name: "angles",
      legend: "Angles in",
      options: ANGLES,
      chosen: bench.angles,
      choose: (angles) => acts.settle({ angles }),
    }),
    h(
      "div",
      { class: "field" },
      h("label", { for: "s-currency" }, "Your money"),
      h(
        "div",
        { class: "line" },
        h("input", {
          id: "s-currency",
          type: "text",
          maxLength: 8,
          value: bench.currency,
          autoComplete: "off",
          placeholder: "no label",
          onInput: (event) => acts.settle({ currency: event.currentTarget.value }),
        }),
      ),
      h("p", { class: "help" }, "Printed before a price, such as €, £ or kr."),
    ),
    h(Chosen, { name: "look", legend: "The page is", options: LOOKS, chosen: look, choose: acts.dress }),
    h("button", { type: "button", class: "key wide", popovertarget: "settings", popovertargetaction: "hide" }, "Done"),
  );
}

/**
 * @typedef {readonly (readonly [string, string])[] | string[][]} Options
 * @param {{ name: string, legend: string, options: Options, chosen: string, choose: (key: string) => void }} props
 */
function Chosen({ name, legend, options, chosen, choose }) {
  return h(
    "fieldset",
    { class: "pick" },
    h("legend", null, legend),
    h(
      "div",
      { class: "chips" },
      options.map(([key = "", label]) =>
        h(
          "label",
          { class: "chip", key },
          h("input", {
            type: "radio",
            name: `s-${name}`,
            value: key,
            checked: key === chosen,
            onChange: () => choose(key),
          }),
          h("span", null, label),
        ),
      ),
    ),
  );
}
