/**
 * Which givens are asked for outright, and which are settled unless one says otherwise.
 * @typedef {import("../shapes").Sum} Sum
 * @typedef {import("../shapes").Given} Given
 */

/** Asked: what must be given, what the example fills, and what may be left empty beside it (the other ways to say the same).
 * @param {Sum} sum @returns {{ asked: Given[], settled: Given[] }} */
export function sorted(sum) {
  const asked = runs(sum)
    .filter((run) => run.some((given) => isAsked(sum, given)))
    .flat();
  return { asked, settled: sum.givens.filter((given) => !asked.includes(given)) };
}

/** @param {Sum} sum @param {Given} given */
function isAsked(sum, given) {
  const must = !given.optional && given.default === "";
  return must || given.name in sum.example.givens || !!sum.any_of?.names.includes(given.name);
}

/**
 * The givens one by one, but those that may be left empty and stand together as one run.
 * @param {Sum} sum
 * @returns {Given[][]}
 */
function runs(sum) {
  return sum.givens.reduce((/** @type {Given[][]} */ all, given, at) => {
    const joins = isFree(given) && isFree(sum.givens[at - 1]);
    return joins ? [...all.slice(0, -1), [...(all.at(-1) ?? []), given]] : [...all, [given]];
  }, []);
}

/** @param {Given | undefined} given */
function isFree(given) {
  return !!given?.optional && given.default === "";
}
