/**
 * Everything a view may ask for, and what it does to the state.
 * @typedef {import("./shapes").State} State
 * @typedef {import("./shapes").Entry} Entry
 * @typedef {import("./state-store.mjs").Store} Store
 */

import { focusField, intoField, nextField } from "./fields.mjs";
import { cleared, exampled, reused, typed, undone } from "./state-entry.mjs";
import { keep } from "./state-keep.mjs";
import { keepLook, wear } from "./state-look.mjs";

/**
 * @param {Store} store
 * @param {{ ask: () => void, settled: () => void, renew: () => void }} outside
 * @returns {import("./shapes").Acts}
 */
export function makeActs(store, { ask, settled, renew }) {
  /** @param {(entry: Entry) => Entry} change */
  const put = (change) => {
    const { sum, entry } = store.get();
    const next = change(entry);
    store.set({ entry: next });
    keep(`entry:${sum?.id}`, next).then((kept) => kept || store.set({ keeps: false }));
    ask();
  };
  const sum = () => /** @type {import("./shapes").Sum} */ (store.get().sum);
  return {
    type: (name, text) => put((entry) => typed(entry, name, text)),
    reuse: (name) => {
      put((entry) => reused(entry, name));
      focusField(name);
    },
    clear: () => put(cleared),
    example: () => put((entry) => exampled(entry, sum())),
    undo: () => put(undone),
    hold: (name) => store.set({ focus: name }),
    release: () => (store.set({ focus: "" }), settled()),
    press: (key) => (key.act === "next" ? nextField(store.get().focus) : intoField(store.get().focus, key)),
    settle: (change) => {
      const bench = { ...store.get().bench, ...change };
      store.set({ bench });
      keep("bench", bench);
      ask();
    },
    dress: (look) => {
      store.set({ look });
      wear(look);
      keepLook(look);
    },
    seek: (search) => store.set({ search }),
    touch: (name) => focusField(name) || store.set({ focus: name }),
    renew,
  };
}
