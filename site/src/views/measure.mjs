import { h } from "preact";
import { whenChanged } from "./unchanged.mjs";

const PART = /(\d+)\/(\d+)/;
const TAIL = /^([−\d][\d\s/.,]*?)\s([a-z]+(?: feet)?|c?m³)$/;

/** A figure as it stands on a rule: fractions set as fractions, the unit smaller. Reads aloud and copies as the plain text. */
export const Measure = whenChanged(measured);

/** @param {{ text: string }} props */
function measured({ text }) {
  const [, number, unit] = TAIL.exec(text) ?? [, text, ""];
  return h(
    "span",
    { class: "measure" },
    ...fractions(number ?? text),
    unit && h("span", { class: "unit" }, ` ${unit}`),
  );
}

/** @param {string} text */
function fractions(text) {
  return text.split(/(\d+\/\d+)/).map((part) => {
    const [, top, bottom] = PART.exec(part) ?? [];
    return top
      ? h("span", { class: "fraction" }, h("span", { class: "top" }, top), "/", h("span", { class: "bottom" }, bottom))
      : part;
  });
}

/** Words in which a number and its unit are never parted at the end of a line. @param {string} text */
export function unparted(text) {
  return text.replace(/(\d) (?=[a-z])/g, "$1\u00a0");
}

/** The finest mark of a rule, in words. @param {string} mark */
export function rule(mark) {
  return /^\d/.test(mark) ? `${mark} in` : mark;
}
