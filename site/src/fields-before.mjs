/** What was done to the fields before the page came to life. */

import { kept } from "./state-rows.mjs";

/**
 * What has been typed into the page since it was drawn, by given.
 * @param {HTMLElement} root
 * @returns {Record<string, string>}
 */
export function alreadyTyped(root) {
  const touched = [...root.querySelectorAll(".givens input, .givens select")].filter(isTouched);
  return Object.fromEntries(
    touched.map((field) => (field.name.includes(".") ? listed(field) : [field.name, field.value])),
  );
}

/** What has been typed into the search. @param {HTMLElement} root @returns {string} */
export function alreadySought(root) {
  const field = root.querySelector("#search");
  return field instanceof HTMLInputElement ? field.value : "";
}

/** A function that puts the caret back where it is now. @returns {() => void} */
export function keepingCaret() {
  const field = document.activeElement;
  if (!(field instanceof HTMLInputElement)) return () => {};
  const { selectionStart, selectionEnd, value } = field;
  return () =>
    field.value === value && selectionStart !== null && field.setSelectionRange(selectionStart, selectionEnd);
}

/** @param {Element} field @returns {field is HTMLInputElement | HTMLSelectElement} */
function isTouched(field) {
  if (field instanceof HTMLSelectElement) return !field.selectedOptions[0]?.defaultSelected;
  if (!(field instanceof HTMLInputElement)) return false;
  return field.type === "radio" ? field.checked && !field.defaultChecked : field.value !== field.defaultValue;
}

/**
 * The whole list that a touched cell belongs to.
 * @param {HTMLInputElement | HTMLSelectElement} cell
 * @returns {[string, string]}
 */
function listed(cell) {
  const rows = [...(cell.closest("fieldset")?.querySelectorAll(".row") ?? [])];
  const texts = rows.map((row) =>
    [...row.querySelectorAll("input, select")].map((one) => /** @type {HTMLInputElement} */ (one).value),
  );
  return [cell.name.split(".")[0] ?? "", kept(texts)];
}
