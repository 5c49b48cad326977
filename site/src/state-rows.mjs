/**
 * A list of like things as one text. Python reads rows apart by ";" and cells by "x"; while it is being typed the page ends
 * each cell with a tab and each row but the last with a new line, so that a half-typed cell never falls into the next.
 */

/** The cells of a text in either form, every row at least `width` wide.
 * @param {string} text @param {number} width @returns {string[][]} */
export function cells(text, width) {
  const rows = text.includes("\t") ? tabbed(text) : written(text);
  return (rows.length ? rows : [[]]).map((row) => Array.from({ length: Math.max(width, row.length) }, (_, at) => row[at] ?? ""));
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
  return rows.filter((row) => row.some(Boolean)).map((row) => row.join(" x ")).join("; ");
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

/** @param {string} text */
function written(text) {
  const lines = text.split(/[;\n]/).filter((line) => line.trim());
  return lines.map((line) => line.trim().split(/\s*[x×*]\s*/i));
}
