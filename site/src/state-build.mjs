/**
 * A piece being built: each entry is kept at once, taken up by Python one after another, and what it changed is told.
 * @typedef {import("./shapes").State} State
 * @typedef {import("./shapes-piece").Kept} Kept
 * @typedef {import("./shapes-piece").Pending} Pending
 * @typedef {import("./shapes-piece").PieceReply} PieceReply
 */

import { acts, base, taken } from "./state-acted.mjs";
import { keep } from "./state-keep.mjs";
import { entryOf, keyOfPiece, stamped } from "./state-piece.mjs";
import { spoken } from "./state-told.mjs";

const PATIENCE = 700;

/**
 * @param {import("./state-store.mjs").Store} store
 * @param {(request: any) => Promise<any>} python
 * @param {(kept: Kept, was: string) => void} save
 */
export function makeBuilding(store, python, save) {
  let busy = false;
  let asked = false;
  let timer = 0;
  let later = () => {};

  /** Do it when the hand has rested. @param {() => void} what @param {number} [patience] */
  function rest(what, patience = PATIENCE) {
    clearTimeout(timer);
    later = what;
    timer = setTimeout(settled, patience);
  }

  /** The hand has rested, or left the field. */
  function settled() {
    clearTimeout(timer);
    later();
    later = () => {};
  }

  /** Stand with the piece as it is now. @param {Kept} kept @param {Partial<State>} [more] */
  function stand(kept, more = {}) {
    const { sum } = store.get();
    if (sum) store.set({ kept, entry: entryOf(kept, sum), ...more });
  }

  /** Something was entered: kept first, then asked. @param {(kept: Kept) => Kept} change */
  function put(change) {
    const { kept } = store.get();
    if (!kept) return;
    const next = stamped(change(kept));
    store.together(() => {
      stand(next);
      save(next, kept.rev);
      ask();
    });
  }

  /** Ask until all that waits is taken up, and what is shown is how the piece stands. */
  async function ask() {
    asked = true;
    if (busy || !store.get().kept) return;
    busy = true;
    try {
      while (asked) {
        asked = false;
        while (await one());
      }
    } finally {
      busy = false;
    }
  }

  /** One entry, or none where only the bench is another; true while there is more to do. */
  async function one() {
    const { kept, sum, bench, settled: told } = store.get();
    if (!kept || !sum) return false;
    const next = kept.pending[0];
    if (!next && told && told.key === keyOfPiece(kept, bench)) return false;
    const record = { ...kept.record, entries: base(kept, next) };
    const reply = await python({ op: "piece", sum: sum.id, record, bench, do: acts(kept, next, sum) });
    if (store.get().kept?.id !== kept.id) return true;
    if (reply.fault) return lost(reply.fault);
    store.together(() => took(next, reply));
    return true;
  }

  /** Python is lost: what waits goes on waiting, and is kept. @param {string} fault */
  function lost(fault) {
    store.set({ fault, spoken: fault });
    return false;
  }

  /** @param {Pending | undefined} next @param {PieceReply} reply */
  function took(next, reply) {
    const { kept: now, sum, refusals } = store.get();
    if (!now || !sum) return;
    const kept = next ? stamped(taken(now, next, reply, sum)) : now;
    const field = next && (next.act === "cut" ? `cut:${next.name}` : next.name);
    const others = refusals.filter((one) => one.field !== field && one.field in kept.drafts);
    if (next) save(kept, now.rev);
    if (!reply.ok) return refused(kept, field ?? "", others, reply);
    stands(kept, next, reply, others);
  }

  /** @param {Kept} kept @param {string} field @param {State["refusals"]} others @param {PieceReply} reply */
  function refused(kept, field, others, { refusals = [] }) {
    const here = refusals.map((one) => ({ ...one, field }));
    const told = { refusals: [...others, ...here], spoken: here.map((one) => one.text).join(" ") };
    if (!field) return stand(kept, { ...told, fault: told.spoken, settled: unsettled(kept) });
    stand(kept, { settled: unsettled(kept) });
    rest(() => store.set(told), store.get().focus === field ? PATIENCE : 0);
  }

  /** What cannot be worked out again is not asked over and over. @param {Kept} kept @returns {State["settled"]} */
  function unsettled(kept) {
    const { settled: told, bench } = store.get();
    return { key: keyOfPiece(kept, bench), told: told?.told ?? null };
  }

  /** @param {Kept} kept @param {Pending | undefined} next @param {PieceReply} reply @param {State["refusals"]} others */
  function stands(kept, next, { settled: told, answer, changes }, others) {
    const { bench, shown, catalogue } = store.get();
    const key = keyOfPiece(kept, bench);
    const now = answer ? { key, answer, kept: false } : shown;
    const at = next && { at: next.act === "cut" || next.act === "uncut" || next.act === "first" ? `cut:${next.name}` : next.act };
    const changed = next && next.act !== "settle" && changes && at ? { ...at, changes } : store.get().changed;
    stand(kept, { settled: { key, told: told ?? null }, shown: now, refusals: others, fault: "", changed });
    keep(`stood:${kept.id}`, { version: catalogue.version, key, answer, told });
    if (changed && next) rest(() => store.set({ spoken: spoken(store.get()) }), next.act === "give" ? PATIENCE : 0);
  }
  return { put, ask, settled };
}
