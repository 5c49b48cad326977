/**
 * Our own row of keys: which keys a field wants, and what a key does to the text before the caret.
 * @typedef {import("./shapes").Key} Key
 * @typedef {import("./shapes").Bench} Bench
 */

/** @type {Key[]} */
const MARKS = [
  { label: "½", name: "add ½", mark: 2 },
  { label: "¼", name: "add ¼", mark: 4 },
  { label: "⅛", name: "add ⅛", mark: 8 },
  { label: "1/16", name: "add 1/16", mark: 16 },
];
/** @type {Key} */
const THIRTY_SECOND = { label: "1/32", name: "add 1/32", mark: 32 };
/** @type {Key} */
const SPACE = { label: "space", name: "space", text: " " };
/** @type {Key} */
const RUB = { label: "⌫", name: "rub out", act: "rub" };
/** @type {Key} */
const NEXT = { label: "next", name: "next field", act: "next" };
/** @type {Key[]} */
const ANGLES = [
  { label: "°", name: "degrees", text: "°" },
  { label: "′", name: "minutes", text: "′" },
  { label: "1 in", name: "1 in", text: "1 in " },
];
/** @type {Record<string, string>} */
const SIGNS = {
  "+": "plus",
  "−": "minus",
  "×": "times",
  "÷": "divided by",
  "(": "open bracket",
  ")": "close bracket",
  "/": "slash",
};

const MIXED = /(?<![\d.,/])(?:(\d+)[ -])?(\d+)\/(\d+)$/;
const INCHES = /\s*(?:in|inch|inches|"|″)$/;
const WHOLE = /(?<![\d.,/])(\d+)$/;

/** Units of their own that stand in one row with the other keys. */
const MOST = 3;

/** @param {string} unit @returns {Key} */
const unit = (unit) => ({ label: unit, name: unit, text: unit === "ft" ? " ft " : ` ${unit}` });

/** @param {string} sign @returns {Key} */
const sign = (sign) => ({ label: sign, name: SIGNS[sign] ?? sign, text: sign });

/** Kinds for which the device should not show its number pad; all others are numbers first, with their units on our keys. */
const WORDS = new Set(["choice", "text"]);

/** The device's own pad for a kind. @param {string} kind */
export function padFor(kind) {
  return WORDS.has(kind) ? undefined : kind === "count" ? "numeric" : "decimal";
}

/** The rows of keys for an entry; none where the device's own keypad has all that is wanted.
 * @param {{ kind: string, units?: string[], limit?: { low: string } }} given @param {Bench} bench @returns {Key[][]} */
export function keysFor({ kind, units: named = [], limit }, bench) {
  const inches = !/mm/.test(bench.mark) || /in|ft/.test(bench.unit);
  const marks = inches ? [...MARKS, ...(/32|64/.test(bench.mark) ? [THIRTY_SECOND] : [])] : [];
  if (kind === "length")
    return [
      [...marks, sign("/"), SPACE],
      [...units(bench), RUB, NEXT],
    ];
  if (kind === "reckoning") return [[..."+−×÷()"].map(sign), [...marks, SPACE], [...units(bench), RUB]];
  if (kind === "angle") return [[...ANGLES, sign("/"), SPACE, RUB, NEXT]];
  const under = limit?.low.startsWith("-") ? [sign("−")] : [];
  const [mine, rest] = [[...under, ...named.map(unit)], [SPACE, RUB, NEXT]];
  return named.length ? (mine.length > MOST ? [mine, rest] : [[...mine, ...rest]]) : [];
}

/** @param {Bench} bench */
function units(bench) {
  const metric = ["mm", "cm"].map(unit);
  const inches = ["in", "ft"].map(unit);
  return /in|ft/.test(bench.unit) ? [...inches, ...metric] : [...metric, unit("m"), unit("in")];
}

/** The text before the caret after a key. Marks are counted as on a rule: 5 and ⅛ thrice is 5 3/8; 5 7/8 and ⅛ is 6.
 * @param {Key} key @param {string} before @returns {string} */
export function pressed(key, before) {
  if (key.act === "rub") return before.slice(0, -1);
  if (key.mark) return marked(before, key.mark);
  if (key.text?.startsWith(" ")) return spaced(before, key.text);
  return before + (key.text ?? "");
}

/** @param {string} before @param {string} text */
function spaced(before, text) {
  return before.endsWith(" ") || !before ? before + text.trimStart() : before + text;
}

/** @param {string} before @param {number} parts */
function marked(before, parts) {
  const unit = INCHES.exec(before)?.[0] ?? "";
  const plain = before.slice(0, before.length - unit.length);
  const found = MIXED.exec(plain) ?? WHOLE.exec(plain);
  if (!found) return spaced(before, ` 1/${parts}`);
  const [whole = 0, top = 0, bottom = 1] =
    found.length > 2 ? found.slice(1).map((digits) => Number(digits ?? 0)) : [Number(found[1])];
  return plain.slice(0, found.index) + mixed((whole * bottom + top) * parts + bottom, bottom * parts) + unit;
}

/** A mixed number in lowest terms. @param {number} top @param {number} bottom */
function mixed(top, bottom) {
  const whole = Math.floor(top / bottom);
  const rest = top % bottom;
  const shared = gcd(rest, bottom);
  return [whole || "", rest ? `${rest / shared}/${bottom / shared}` : ""].filter(Boolean).join(" ");
}

/** @param {number} a @param {number} b @returns {number} */
function gcd(a, b) {
  return b ? gcd(b, a % b) : a;
}
