/**
 * Everything a view may ask for, and what it does to the state.
 * @typedef {import("./shapes").State} State
 * @typedef {import("./shapes").Entry} Entry
 * @typedef {import("./state-store.mjs").Store} Store
 * @typedef {import("./shapes-piece").Kept} Kept
 */

import { focusField, intoField, nextField } from "./fields.mjs";
import { cleared, exampled, reused, typed, undone } from "./state-entry.mjs";
import { keep } from "./state-keep.mjs";
import { keepLook, wear } from "./state-look.mjs";
import { doing, newName, typed as typedIn } from "./state-piece.mjs";

/**
 * @param {Store} store
 * @param {{ ask: () => void, hush: () => void, settled: () => void, renew: () => void, put: (change: (kept: Kept) => Kept) => void, piece: import("./shapes-piece").PieceActs }} outside
 * @returns {import("./shapes").Acts}
 */
export function makeActs(store, { ask, hush, settled, renew, put: build, piece }) {
  let hold = newName();
  /** @param {(entry: Entry) => Entry} change @param {(changes: () => void) => void} [drawing] */
  const put = (change, drawing = store.together) => {
    const { sum, entry } = store.get();
    const next = change(entry);
    drawing(() => {
      store.set({ entry: next });
      ask();
    });
    keep(`entry:${sum?.id}`, next).then((kept) => kept || store.set({ keeps: false }));
  };
  const sum = () => /** @type {import("./shapes").Sum} */ (store.get().sum);
  /** A piece takes it as an entry of its own, a sum in its fields.
   * @param {(kept: Kept) => Kept} built @param {(entry: Entry) => Entry} change @param {(changes: () => void) => void} [drawing] */
  const either = (built, change, drawing) => (store.get().kept ? build(built) : put(change, drawing));
  /** @param {"clear" | "example" | "undo"} act @returns {(kept: Kept) => Kept} */
  const whole = (act) => (kept) => doing(kept, { act, name: "", text: "" });
  /** @param {string} name @param {string} text @param {(changes: () => void) => void} [drawing] */
  const type = (name, text, drawing) => either((kept) => typedIn(kept, name, text, hold), (entry) => typed(entry, name, text), drawing);
  return {
    type: (name, text) => type(name, text),
    write: (name, text) => type(name, text, store.soon),
    reuse: (name) => {
      const text = store.get().entry.texts[name] ?? "";
      either((kept) => typedIn(kept, name, text, hold), (entry) => reused(entry, name));
      focusField(name);
    },
    clear: () => either(whole("clear"), cleared),
    example: () => either(whole("example"), (entry) => exampled(entry, sum())),
    undo: () => either(whole("undo"), undone),
    hold: (name) => {
      if (name !== store.get().focus) {
        hold = newName();
        hush();
      }
      store.set({ focus: name });
    },
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
    piece,
  };
}
