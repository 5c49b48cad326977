/** What is said only when the hand has rested, so that nothing is said of an entry that is half typed. */

const PATIENCE = 700; // milliseconds

/** `rest` puts something off until the hand has rested for so long, in place of what was put off before; `settled` is to be told when the hand has rested, or
 * has left the field; `never` lets it go. @param {number} [usual] milliseconds */
export function makeRest(usual = PATIENCE) {
  let timer = 0;
  let later = () => {};

  function never() {
    clearTimeout(timer);
    later = () => {};
  }

  function settled() {
    const what = later;
    never();
    what();
  }

  /** @param {() => void} what @param {number} [patience] */
  function rest(what, patience = usual) {
    never();
    later = what;
    timer = setTimeout(settled, patience);
  }

  return { rest, settled, never };
}
