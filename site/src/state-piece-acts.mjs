/**
 * Everything a view may ask for on a piece's page.
 * @typedef {import("./shapes-piece").Kept} Kept
 */

import { offer } from "./device.mjs";
import { fileName, fileOf, inFile, pieceIn, tooLarge } from "./state-file.mjs";
import { recallPiece } from "./state-kept.mjs";
import { another, around, begun, copied, doing, drafted, entryOf, recorded, stamped, titled } from "./state-piece.mjs";
import { planned } from "./state-told.mjs";

/**
 * @param {import("./state-store.mjs").Store} store
 * @param {{ put: (change: (kept: Kept) => Kept) => void, ask: () => void }} building
 * @param {ReturnType<typeof import("./state-shelf.mjs").makeShelf>} shelf
 * @param {(request: any) => Promise<any>} python
 */
export function makePieceActs(store, { put, ask }, shelf, python) {
  const draft = (/** @type {string} */ name) => store.get().kept?.drafts[`cut:${name}`] ?? "";
  /** @param {string} notice @param {string} [removed] */
  const say = (notice, removed = "") => store.set({ notice, removed, spoken: notice });

  /** Another piece stands on the page. @param {Kept} kept */
  function open(kept) {
    const { sum } = store.get();
    if (!sum) return;
    store.set({ kept, entry: entryOf(kept, sum), changed: null, settled: null, refusals: [], removed: "" });
    ask();
  }

  /** One made from the one that is open. @param {(kept: Kept, title: string) => Kept} make @param {string} how */
  function made(make, how) {
    const { kept } = store.get();
    if (!kept) return;
    const fresh = stamped(make(kept, shelf.titleFor(kept)));
    open(fresh);
    shelf.save(fresh, "");
    say(`${fresh.record.title}: ${how}.`);
  }

  /** @param {string} id @param {number} gone */
  async function marked(id, gone) {
    const now = store.get().kept;
    const kept = now?.id === id ? now : await recallPiece(id);
    if (kept) await shelf.save(stamped({ ...kept, gone }), kept.rev);
    return kept;
  }

  /** @param {File} file */
  async function load(file) {
    const text = tooLarge(file) ? "" : await file.text();
    const { told, refusal } = inFile(text);
    if (refusal) return say(`Not opened: ${refusal}`);
    const { catalogue, bench } = store.get();
    const ours = catalogue.sums.filter((one) => one.moment === "piece").map((one) => one.id);
    const sum = pieceIn(told, ours);
    const reply = await python({ op: "piece", sum, record: told || "none", bench });
    if (!reply.ok) return say(`Not opened: ${reply.fault ?? reply.refusals.map((/** @type {any} */ one) => one.text).join(" ")}`);
    const kept = stamped(around(reply.record));
    await shelf.save(kept, "");
    if (store.get().sum?.id === sum) open(kept);
    say(`${kept.record.title || "The piece"}: opened from the file, and kept here.`);
  }
  return {
    draft: (/** @type {string} */ name, /** @type {string} */ text) => put((kept) => drafted(kept, name, text)),
    record: (/** @type {string} */ name) => {
      if (draft(name).trim()) put((kept) => recorded(kept, name, draft(name)));
    },
    tick: (/** @type {string} */ name, /** @type {boolean} */ on) =>
      put((kept) => (on ? recorded(kept, name, draft(name).trim() || planned(store.get(), name)) : doing(kept, { act: "uncut", name, text: "" }))),
    tickAll: (/** @type {string[]} */ names) => {
      const all = names.map((name) => /** @type {[string, string]} */ ([name, planned(store.get(), name)]));
      put((kept) => doing(kept, { act: "all", name: names[0] ?? "", text: "", all }));
    },
    first: (/** @type {string} */ name) => put((kept) => doing(kept, { act: "first", name, text: "" })),
    choose: (/** @type {string} */ name, /** @type {string} */ text) => put((kept) => recorded(kept, name, text)),
    undo: () => put((kept) => doing(kept, { act: "undo", name: "", text: "" })),
    title: (/** @type {string} */ title) => put((kept) => titled(kept, title)),
    copy: () => made(copied, "a copy, cuts and all"),
    another: () => made(another, "the same sizes, nothing cut yet"),
    begin: () => {
      const { sum, bench } = store.get();
      if (sum) open(begun(sum, bench));
      say("A new piece, with the example’s sizes. What you had is kept.");
    },
    remove: async (/** @type {string} */ id) => {
      const kept = await marked(id, Date.now());
      const { sum, bench } = store.get();
      if (sum && store.get().kept?.id === id) open(begun(sum, bench));
      say(`${kept?.record.title || "The piece"} is deleted.`, id);
    },
    bringBack: async (/** @type {string} */ id) => {
      await marked(id, 0);
      const kept = await recallPiece(id);
      if (kept && store.get().sum?.id === kept.record.piece) open(kept);
      say(`${kept?.record.title || "The piece"} is back.`);
    },
    save: () => {
      const { kept } = store.get();
      if (kept) offer(fileName(kept.record), fileOf(kept.record));
    },
    load: (/** @type {File | undefined} */ file) => void (file && load(file)),
    print: () => globalThis.print(),
  };
}
