/**
 * The one place where the state is held. Until it is begun, changes are gathered and nothing is drawn.
 * @typedef {import("./shapes").State} State
 */

/** @param {(state: State) => void} paint  called after each change, once begun */
export function makeStore(paint) {
  let state = /** @type {State} */ ({});
  let begun = false;
  return {
    get: () => state,
    /** @param {Partial<State>} change */
    set(change) {
      state = { ...state, ...change };
      if (begun) paint(state);
    },
    /** The first state; what was set before stands. @param {State} first */
    begin(first) {
      state = { ...first, ...state };
      begun = true;
    },
  };
}

/** @typedef {ReturnType<typeof makeStore>} Store */
