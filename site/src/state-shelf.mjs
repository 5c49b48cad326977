/**
 * The pieces on this device: one open, the others listed; copied, named, deleted and had back, and kept apart from other tabs.
 * @typedef {import("./shapes").Sum} Sum
 * @typedef {import("./shapes-piece").Kept} Kept
 */

import { keep, recall } from "./state-keep.mjs";
import { allPieces, isBehind, onShelf, recallPiece, save as write, setAside, unwritten } from "./state-kept.mjs";
import { begun, copied, entryOf, newName, nextTitle, stamped } from "./state-piece.mjs";

const ELSEWHERE = "This piece was changed in another tab as well. Both are kept: what you did here stands in a copy of its own.";

/** @param {import("./state-store.mjs").Store} store */
export function makeShelf(store) {
  const tabs = typeof BroadcastChannel === "function" ? new BroadcastChannel("tenpenny pieces") : null;
  /** When a piece open here was last copied away from another tab's: all that was done before is in that copy. @type {Map<string, number>} */
  const copies = new Map();
  let askAgain = () => {};

  /** The list with this piece as it is now. @param {Kept} kept */
  function list(kept) {
    const others = store.get().pieces.filter(({ id }) => id !== kept.id);
    store.set({ pieces: [onShelf(kept), ...others] });
  }

  /** Keep a piece at once; another tab's work on it is never written over. @param {Kept} kept @param {string} was */
  async function save(kept, was) {
    list(kept);
    if (!was) keep(`open:${kept.record.piece}`, kept.id);
    const how = await write(kept, was);
    if (how === "shut") store.set({ keeps: false });
    if (how === "elsewhere") apart(kept);
    if (how === "kept") tabs?.postMessage({ id: kept.id, rev: kept.rev });
  }

  /** What was done here goes on as another piece. @param {Kept} kept */
  async function apart(kept) {
    const theirs = await recallPiece(kept.id);
    const now = store.get().kept;
    if (theirs && now?.id === kept.id && isSame(theirs, now)) return store.set({ kept: { ...now, rev: theirs.rev } });
    if (kept.at <= (copies.get(kept.id) ?? 0)) return;
    const open = now?.id === kept.id;
    const mine = stamped(copied(open ? now : kept, titleFor(kept)));
    if (open) copies.set(kept.id, mine.at);
    if (open) store.set({ kept: mine, notice: ELSEWHERE, spoken: ELSEWHERE, settled: null });
    if (open) askAgain();
    await save(mine, "");
    store.set({ pieces: await allPieces() });
  }

  /** What was being kept when a page was closed: where another tab has gone on since, it stands as a piece of its own.
   * @param {{ kept: Kept, was: string[], name: string }} one */
  async function late(one) {
    const { kept, was } = one;
    if (isBehind(kept, store.get().kept)) return setAside(one);
    const how = await write(kept, was);
    const theirs = how === "elsewhere" ? await recallPiece(kept.id) : undefined;
    if (theirs && !isSame(theirs, kept)) await write(stamped(copied(kept, titleFor(kept))), "");
    if (how !== "shut") setAside(one);
  }

  /** Whether another tab has come to the same. @param {Kept} one @param {Kept} other */
  function isSame(one, other) {
    return JSON.stringify([one.record, one.pending, one.drafts]) === JSON.stringify([other.record, other.pending, other.drafts]);
  }

  /** @param {Kept} kept */
  function titleFor({ record }) {
    const title = record.title || store.get().catalogue.sums.find(({ id }) => id === record.piece)?.title || "";
    return nextTitle(title, store.get().pieces.map((one) => one.title));
  }

  /** The piece that a page opens with: the one asked for, else the one open last, else the example.
   * @param {Sum} sum @param {string} id @returns {Promise<Kept>} */
  async function opening(sum, id) {
    const wanted = id || (await recall(`open:${sum.id}`));
    const found = typeof wanted === "string" && wanted ? await recallPiece(wanted) : undefined;
    if (!found || found.gone || found.record.piece !== sum.id) return begun(sum, store.get().bench);
    keep(`open:${sum.id}`, found.id);
    const typed = Object.entries(found.drafts).filter(([field]) => !field.startsWith("cut:"));
    const again = typed.map(([name, text]) => ({ act: /** @type {const} */ ("give"), name, text, hold: newName() }));
    return { ...found, pending: [...found.pending, ...again] };
  }

  /** What was left unwritten is written, and every piece listed. `ask` is called when another tab has changed the one open.
   * @param {() => void} ask */
  async function begin(ask) {
    askAgain = ask;
    for (const one of unwritten()) await late(one);
    store.set({ pieces: await allPieces() });
    tabs?.addEventListener("message", ({ data }) => heard(data, ask));
  }

  /** Another tab has changed a piece: it is read again. All that was entered here is kept before it is told of,
   * so nothing is lost by that. What still waits for Python there is taken up there, and told of then. @param {{ id: string, rev: string }} told @param {() => void} ask */
  async function heard({ id, rev }, ask) {
    store.set({ pieces: await allPieces() });
    const now = store.get().kept;
    const found = now?.id === id && now.rev !== rev ? await recallPiece(id) : undefined;
    const still = store.get().kept;
    if (!found || still?.rev !== now?.rev || now?.pending.length || found.pending.length) return;
    const notice = found.gone ? "Deleted in another tab; it is still here." : "Changed in another tab.";
    const { sum } = store.get();
    if (sum) store.set({ kept: found, entry: entryOf(found, sum), notice, changed: null, settled: null });
    ask();
  }
  return { save, opening, begin, titleFor };
}
