/**
 * Narrowing a choice of many by a part of its name. Python has the last word on what was typed; this only offers names.
 * @typedef {{ key: string, label: string }} Option
 */

/** The options whose name holds every word typed, whole words first, then beginnings, then parts; all for nothing typed.
 * A number is found only where a number begins: 2 is not found in 12.
 * @param {Option[]} options @param {string} typed @returns {Option[]} */
export function picks(options, typed) {
  const wanted = words(typed);
  const ranked = options.map((option) => ({ option, rank: rank(words(option.label), wanted) }));
  return ranked
    .filter(({ rank }) => rank < Infinity)
    .sort((a, b) => a.rank - b.rank)
    .map(({ option }) => option);
}

/** Whether a text is the whole name of an option. @param {Option[]} options @param {string} typed */
export function isNamed(options, typed) {
  return options.some(({ label }) => label === typed);
}

/** How ill a name fits: 0 when every word is there whole, Infinity when one is not there. @param {string[]} name @param {string[]} wanted */
function rank(name, wanted) {
  return wanted.reduce((worst, word) => Math.max(worst, distance(name, word)), 0);
}

/** @param {string[]} name @param {string} word */
function distance(name, word) {
  if (name.includes(word)) return 0;
  if (name.some((one) => one.startsWith(word))) return 1;
  return /^\p{L}{3}/u.test(word) && name.some((one) => one.includes(word)) ? 2 : Infinity;
}

/** An x between two numbers is a word: 2x4 is 2 x 4. @param {string} text @returns {string[]} */
function words(text) {
  return text.toLowerCase().replace(/(\d)x(?=\d)/g, "$1 x ").match(/\d+\/\d+|[\p{L}\p{N}]+/gu) ?? [];
}
