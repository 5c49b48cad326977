/**
 * A list of like things as one text. Python reads rows apart by ";" and cells by "x"; while it is being typed the page ends
 * each cell with a tab and each row but the last with a new line, so that a half-typed cell never falls into the next.
 * Where the first cell is the maker's own words, an x may stand in them: the other cells are counted from the right.
 */

/** The cells of a text in either form, every row at least `width` wide; `worded` when the first is free text.
 * @param {string} text @param {number} width @param {boolean} [worded] @returns {string[][]} */
export function cells(text, width, worded = false) {
  const rows = text.includes("\t") ? tabbed(text) : written(text, worded ? width : Infinity);
  return (rows.length ? rows : [[]]).map((row) =>
    Array.from({ length: Math.max(width, row.length) }, (_, at) => row[at] ?? ""),
  );
}

/** The text that keeps these cells while they are typed.
 * @param {string[][]} rows @returns {string} */
export function kept(rows) {
  return rows.map((row) => row.map((cell) => `${cell}\t`).join("")).join("\n");
}

/** The text Python reads: empty rows left out.
 * @param {string} text @returns {string} */
export function plainRows(text) {
  if (!text.includes("\t")) return text.trim();
  const rows = tabbed(text).map((row) => row.map((cell) => cell.trim()));
  return rows
    .filter((row) => row.some(Boolean))
    .map((row) => row.join(" x "))
    .join("; ");
}

/** The rows with one cell changed.
 * @param {string[][]} rows @param {number} row @param {number} column @param {string} text */
export function changed(rows, row, column, text) {
  const clean = text.replace(/[\t\n]/g, " ");
  return rows.map((line, at) => (at === row ? line.map((cell, place) => (place === column ? clean : cell)) : line));
}

/** @param {string} text */
function tabbed(text) {
  return text.split("\n").map((line) => line.split("\t").slice(0, -1));
}

/** @param {string} text @param {number} most cells in a row */
function written(text, most) {
  const lines = text.split(/[;\n]/).filter((line) => line.trim());
  return lines.map((line) => row(line.trim().split(/(\s*[x×*✕⨉ｘ]\s*)/i), most));
}

/** The cells of a row cut into cells and the signs between them; what is over is joined to the first.
 * @param {string[]} parts @param {number} most */
function row(parts, most) {
  const over = Math.max(0, parts.length - (2 * most - 1));
  return [parts.slice(0, over + 1).join(""), ...parts.slice(over + 1)].filter((_, at) => at % 2 === 0);
}
