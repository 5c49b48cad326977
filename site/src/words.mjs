/** The words of a question as they are compared: without idle ones, without endings, with the trade's other words for them. */

const IDLE = new Set(
  (
    "a an and any are as at be been by can could did do does for from get give going had has have how i if in into is it " +
    "its just let many me much must my need of off on one or please put should so some than that the them then there " +
    "these they this to too us use want was we what when where which will with would you your"
  ).split(" "),
);

/** Words that may stand for each other at the bench. */
const ALIKE = [
  "length long longer measure",
  "width wide broad breadth",
  "thick thickness",
  "angle degree slope pitch tilt lean leaning rake steep bevel",
  "cost price money pay worth expensive",
  "board plank timber stock wood lumber",
  "hole bore drill pilot pre-bore",
  "mitre miter corner",
  "lid top cover",
  "slot opening mouth",
  "add plus sum tot total together",
  "subtract minus less take",
  "fraction sixteenth eighth inch mark in",
  "nail brad pin sprig",
  "hopper splay tray flare",
  "box chest case carcase",
  "polygon hexagon octagon sides",
  "rabbet rebate",
  "groove housing dado plough",
  "clamp cramp",
  "warp cup twist wind bow",
  "curve arch arc",
  "ellipse oval",
  "round circle circular",
  "shrink swell movement expand expansion move shrinkage",
  "sag bend deflection deflect droop",
  "weigh weight heavy mass",
  "varnish oil finish paint coat lacquer wax stain",
  "charge sell earn price",
  "leg foot feet",
  "mm millimetre millimeter metric cm",
  "shelf shelves bookshelf",
  "slat baluster rail",
  "wall hang hanging",
  "cut saw sawn",
  "coin note card banknote",
  "moisture damp humidity dry wet",
];
export const GROUPS = new Map(
  ALIKE.flatMap((line, at) => line.split(" ").map((word) => /** @type {const} */ ([stem(word), at]))),
);

/** Things in a row as they are spoken. @param {string[]} things @param {string} [or] */
export function listed(things, or = "and") {
  return things.length > 1 ? `${things.slice(0, -1).join(", ")} ${or} ${things.at(-1)}` : things.join("");
}

/** The telling words of a text; all of them when none tells.
 * @param {string} text @returns {string[]} */
export function words(text) {
  const plain = text.toLowerCase().replace(/[’']/g, "");
  const found = plain.match(/\d+\/\d+|[\p{L}\p{N}]+(?:-\p{L}+)*/gu) ?? [];
  const telling = found.filter((word) => !IDLE.has(word));
  return (telling.length ? telling : found).map(stem);
}

/** A word without its plural, -ing and -ed. @param {string} word */
function stem(word) {
  return word.length > 3
    ? word
        .replace(/(?:ies|y)$/, "i")
        .replace(/(?:(?<=[sxz]|[cs]h)es|(?<!s)s|(?<=..)ing|(?<=..)ed)$/, "")
        .replace(/(?<=([bdgmnprt]))\1$/, "")
        .replace(/e$/, "")
    : word;
}
