/**
 * The one place where the state is held. Until it is begun, changes are gathered and nothing is drawn. A change made while
 * the page is being drawn (a field that is taken away gives up the caret) is drawn after that, never within; changes made
 * together are drawn once, when all of them are made; what is typed is drawn with its answer, if that comes soon.
 * @typedef {import("./shapes").State} State
 */

const SOON = 50; // milliseconds

/** @param {(state: State) => void} paint  called after each change, once begun */
export function makeStore(paint) {
  let state = /** @type {State} */ ({});
  let begun = false;
  let painting = false;
  let gathering = false;
  let again = false;
  let timer = 0;

  function draw() {
    again = true;
    clearTimeout(timer);
    if (!begun || painting || gathering) return;
    painting = true;
    try {
      for (; again; paint(state)) again = false;
    } finally {
      painting = false;
    }
  }

  /** Nothing is drawn until all of it has been done. @param {() => void} changes @param {() => void} after what to do if anything changed */
  function gathered(changes, after) {
    if (gathering) return changes();
    gathering = true;
    try {
      changes();
    } finally {
      gathering = false;
      if (again) after();
    }
  }

  return {
    get: () => state,
    /** @param {Partial<State>} change */
    set(change) {
      state = { ...state, ...change };
      draw();
    },
    /** Several changes, and what is to be asked of Python meanwhile, before the page is drawn once. @param {() => void} changes */
    together: (changes) => gathered(changes, draw),
    /**
     * What the hand has changed, and sees already: drawn with the next change, such as its answer, or alone when that is not
     * soon. An answer that comes at once is drawn at once.
     * @param {() => void} changes
     */
    soon(changes) {
      const { shown } = state;
      gathered(changes, () => (state.shown === shown ? void (timer = setTimeout(draw, SOON)) : draw()));
    },
    /**
     * The first state; what was set before stands.
     * @param {State} first
     */
    begin(first) {
      state = { ...first, ...state };
      begun = true;
    },
  };
}

/** @typedef {ReturnType<typeof makeStore>} Store */
