/**
 * A piece as a file, by shared/piece.schema.json. What a file says is never trusted: Python reads it, and only what Python gives
 * back is taken.
 * @typedef {import("./shapes-piece").Saved} Saved
 */

const LARGEST = 2_000_000;
const OURS = "Choose a file that was saved from a piece here.";

/** The text of the file: the same bytes for the same piece, a line to an entry. @param {Saved} record */
export function fileOf({ format, version, piece, title, bench, entries }) {
  const { unit, mark, angles, currency } = bench;
  const told = { format, version, piece, title, bench: { unit, mark, angles, currency } };
  const lines = Object.entries(told).map(([name, value]) => `${JSON.stringify(name)}: ${plain(value)}`);
  const each = entries.map((one) => `    ${plain({ act: one.act, name: one.name, text: one.text, unit: one.unit, mark: one.mark })}`);
  lines.push(each.length ? `"entries": [\n${each.join(",\n")}\n  ]` : '"entries": []');
  return `{\n${lines.map((line) => `  ${line}`).join(",\n")}\n}\n`;
}

/** What a file is called: its title in letters that every device takes. @param {Saved} record */
export function fileName({ title, piece }) {
  const bare = title.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-+|-+$/g, "");
  return `${bare.slice(0, 60) || piece}.json`;
}

/** What stands in a file's text, to be shown to Python; or why it is refused.
 * @param {string} text @returns {{ told?: any, refusal?: string }} */
export function inFile(text) {
  if (text.length > LARGEST) return { refusal: `This file is too large to be a piece. ${OURS}` };
  try {
    return { told: JSON.parse(text) };
  } catch {
    return { refusal: `This file is damaged, or no piece. ${OURS}` };
  }
}

/** Whether a file is so large that it is not even read. @param {{ size: number }} file */
export function tooLarge({ size }) {
  return size > LARGEST * 4;
}

/** Which of our pieces a file says it is; the first of ours where it says nothing of the kind, so that Python can refuse it.
 * @param {any} told @param {string[]} ours */
export function pieceIn(told, ours) {
  const said = told && typeof told === "object" && Object.hasOwn(told, "piece") ? told.piece : "";
  return ours.find((id) => id === said) ?? ours[0] ?? "";
}

/** @param {unknown} value @returns {string} */
function plain(value) {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  return `{${Object.entries(value)
    .map(([name, one]) => `${JSON.stringify(name)}: ${JSON.stringify(one)}`)
    .join(", ")}}`;
}
