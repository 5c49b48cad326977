/** The hand on the fields themselves: finding one, moving to the next, pressing a key of ours into it. */

import { pressed } from "./state-keys.mjs";

/** @typedef {import("./shapes").Key} Key */

/** A click so soon after the field was taken is the touch that took it, in milliseconds. */
const ONE_TOUCH = 700;
/** By then a browser is done with a click, in milliseconds. */
const AFTER = 50;

/** The field of a given, opened if it was folded away, and the caret put in; false when there is none.
 * @param {string} name @returns {boolean} */
export function focusField(name) {
  const field = named(name) ?? document.querySelector(`.givens [name^="${CSS.escape(name)}."]`);
  if (!(field instanceof HTMLElement)) return show(document.getElementById(`a-${name}`));
  const fold = field.closest("details");
  if (fold) fold.open = true;
  field.focus();
  return true;
}

/** On to the next field that is in sight; after the last, to the answers. @param {string} name */
export function nextField(name) {
  const among = name.startsWith("cut:") ? ".bench-parts input[type=text]:enabled" : ".givens input, .givens select";
  const fields = [...document.querySelectorAll(among)].filter(
    (one) => !one.closest("details:not([open])"),
  );
  const next = fields[fields.findIndex((one) => one.getAttribute("name") === name) + 1];
  if (next instanceof HTMLElement) return next.focus();
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  show(document.getElementById("answers"));
}

/** A key of ours at the caret, told to the page as typing is. @param {string} name @param {Key} key */
export function intoField(name, key) {
  const field = named(name);
  if (!(field instanceof HTMLInputElement)) return;
  field.focus();
  const { start, end } = place(field, key);
  const before = field.value.slice(0, end > start && key.act === "rub" ? start + 1 : start);
  const after = field.value.slice(end);
  const text = pressed(key, before);
  field.value = text + after;
  field.setSelectionRange(text.length, text.length);
  field.dispatchEvent(new InputEvent("input", { bubbles: true }));
}

/**
 * The text in hand, selected, so that typing takes its place. The touch that takes the field puts the caret somewhere when it
 * ends, in some browsers after its click: so it is selected again then, and once more, unless it has been typed over.
 * @param {Element} field
 */
export function selectAll(field) {
  if (!(field instanceof HTMLInputElement) || field.type !== "text") return;
  const { value } = field;
  const taken = performance.now();
  const again = () => field.value === value && document.activeElement === field && field.select();
  const touched = () => performance.now() - taken < ONE_TOUCH && (again(), setTimeout(again, AFTER));
  again();
  addEventListener("click", touched, { once: true, capture: true });
}

/**
 * Where a key falls: a mark is added to the whole text even when all of it is selected.
 * @param {HTMLInputElement} field
 * @param {Key} key
 */
function place(field, key) {
  const long = field.value.length;
  const [start, end] = [field.selectionStart ?? long, field.selectionEnd ?? long];
  return key.mark && start === 0 && end === long ? { start: long, end: long } : { start, end };
}

/** @param {string} name */
function named(name) {
  return document.querySelector(`:is(.givens, .bench-parts) [name="${CSS.escape(name)}"]:not([type="radio"]:not(:checked))`);
}

/** @param {Element | null} element */
function show(element) {
  element?.scrollIntoView({ block: "nearest" });
  return false;
}
