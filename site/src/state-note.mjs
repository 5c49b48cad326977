/** Notes of what is being written to the store, kept where writing takes no time. Long values get none, but for what cannot be had again. */

const LONGEST = 20_000;

/** @param {string} name */
const key = (name) => `tenpenny ${name}`;

/**
 * Note a value; the note as it stands, "" when there is none.
 * @param {string} name
 * @param {unknown} value
 * @param {number} [longest]
 * @returns {string}
 */
export function write(name, value, longest = LONGEST) {
  const note = JSON.stringify(value);
  try {
    if (note.length <= longest) localStorage.setItem(key(name), note);
    else localStorage.removeItem(key(name));
    return note.length <= longest ? note : "";
  } catch {
    return "";
  }
}

/**
 * Put a note away once its value is kept, unless a later one took its place.
 * @param {string} name
 * @param {string} note
 */
export function putAway(name, note) {
  if (note && localStorage.getItem(key(name)) === note) drop(name);
}

/** @param {string} name */
export function drop(name) {
  localStorage.removeItem(key(name));
}

/**
 * A value noted and never put away; undefined when there is none.
 * @param {string} name
 * @returns {any}
 */
export function noted(name) {
  try {
    const note = localStorage.getItem(key(name));
    return note === null ? undefined : JSON.parse(note);
  } catch {
    return undefined;
  }
}

/** The names of the notes that begin so. @param {string} beginning @returns {string[]} */
export function notes(beginning) {
  try {
    return Object.keys(localStorage)
      .filter((name) => name.startsWith(key(beginning)))
      .map((name) => name.slice(key("").length));
  } catch {
    return [];
  }
}
