/**
 * Finding a sum by what one wants to know: words in common with its questions, lightly stemmed, with the trade's other words.
 * @typedef {import("./shapes").Listed} Listed
 */

const IDLE = new Set(
  (
    "a an and are as at be by can do does for from give have how i if in into is it many me much my need of on one or " +
    "so that the then this to want what when where which will with"
  ).split(" "),
);

/** Words that may stand for each other at the bench. */
const ALIKE = [
  "length long longer measure",
  "width wide broad breadth",
  "thick thickness",
  "angle degree slope pitch tilt lean steep bevel",
  "cost price money pay worth",
  "board plank timber stock wood lumber",
  "hole bore drill pilot pre-bore",
  "mitre miter corner join frame",
  "lid top cover",
  "slot opening mouth gap",
  "add plus sum tot total together",
  "subtract minus less take",
  "fraction sixteenth eighth inch mark",
  "nail brad pin sprig",
  "hopper splay tray flare",
  "box chest case",
  "polygon hexagon octagon sides",
  "volume feet foot board-feet",
];
const GROUPS = new Map(
  ALIKE.flatMap((line, at) => line.split(" ").map((word) => /** @type {const} */ ([stem(word), at]))),
);
const WEIGHTS = /** @type {const} */ ({ title: 5, question: 3, asks: 2, purpose: 1 });

/** The sums that share most with what is typed, best first; none for nothing typed.
 * @param {Listed[]} sums @param {string} typed @returns {Listed[]} */
export function search(sums, typed) {
  const wanted = words(typed);
  const scored = sums.map((sum) => ({ sum, score: score(sum, wanted) })).filter((one) => one.score > 0);
  const best = Math.max(...scored.map((one) => one.score));
  return scored
    .filter((one) => one.score > best / 4)
    .sort((a, b) => b.score - a.score)
    .map((one) => one.sum);
}

/** @param {Listed} sum @param {string[]} wanted */
function score(sum, wanted) {
  const found = wanted.map((word) => worth(sum, word));
  return found.filter(Boolean).length * 2 < wanted.length ? 0 : found.reduce((all, one) => all + one, 0);
}

/** @param {Listed} sum @param {string} word */
function worth(sum, word) {
  const fields = /** @type {const} */ (["title", "question", "asks", "purpose"]);
  return Math.max(...fields.map((field) => WEIGHTS[field] * nearest(words([sum[field]].flat().join(" ")), word)));
}

/**
 * How near the nearest of the words comes: 1 the same, less for a beginning or another word for it.
 * @param {string[]} among
 * @param {string} word
 */
function nearest(among, word) {
  if (among.includes(word)) return 1;
  if (word.length > 1 && among.some((one) => one.startsWith(word))) return 0.7;
  const group = GROUPS.get(word);
  return group !== undefined && among.some((one) => GROUPS.get(one) === group) ? 0.5 : 0;
}

/** @param {string} text @returns {string[]} */
function words(text) {
  const found = text.toLowerCase().match(/[\p{L}\p{N}]+(?:-\p{L}+)*/gu) ?? [];
  const telling = found.filter((word) => !IDLE.has(word));
  return (telling.length ? telling : found).map(stem);
}

/** A word without its plural and -ing. @param {string} word */
function stem(word) {
  return word.length > 4
    ? word
        .replace(/(?:ies|y)$/, "i")
        .replace(/(?:(?<=[sxz]|[cs]h)es|(?<!s)s|ing|ed)$/, "")
        .replace(/e$/, "")
    : word;
}
