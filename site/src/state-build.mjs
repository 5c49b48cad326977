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
import { makeRest } from "./state-rest.mjs";
import { spoken } from "./state-told.mjs";

/**
 * @param {import("./state-store.mjs").Store} store
 * @param {(request: any, sooner: (part: any) => void) => Promise<any>} python
 * @param {(kept: Kept, was: string) => void} save
 */
export function makeBuilding(store, python, save) {
  let busy = false;
  let asked = false;
  const { rest, settled } = makeRest();

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
    let key = "";
    const sooner = (/** @type {PieceReply} */ part) => void (key ||= begun(kept.id, next, part));
    const reply = await python({ op: "piece", sum: sum.id, record, bench, do: acts(kept, next, sum) }, sooner);
    if (store.get().kept?.id !== kept.id) return true;
    if (reply.fault) return lost(reply.fault);
    store.together(() => (key ? whole(key, reply) : took(next, reply)));
    return true;
  }

  /** How the piece stands is known; drawings and working stay as they were for the moment that the rest takes.
   * @param {string} id @param {Pending | undefined} next @param {PieceReply} part @returns {string} the name of how it stands; "" if nothing was taken up */
  function begun(id, next, part) {
    const { kept, shown } = store.get();
    if (kept?.id !== id || !part.answer || shown?.answer.sum !== part.answer.sum) return "";
    const answer = { ...shown.answer, ...part.answer };
    store.together(() => took(next, { ...part, answer }));
    return store.get().shown?.key ?? "";
  }

  /** The rest is there, unless something else has taken its place. @param {string} key @param {PieceReply} reply */
  function whole(key, { answer, settled: told }) {
    const { kept, shown } = store.get();
    if (!kept || !answer || shown?.key !== key) return;
    store.set({ shown: { ...shown, answer } });
    keepStood(kept.id, { key, answer, told });
  }

  /** @param {string} id @param {{ key: string, answer: PieceReply["answer"], told: PieceReply["settled"] }} stood */
  function keepStood(id, stood) {
    keep(`stood:${id}`, { version: store.get().catalogue.version, ...stood });
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
    rest(() => store.set(told), store.get().focus === field ? undefined : 0);
  }

  /** What cannot be worked out again is not asked over and over. @param {Kept} kept @returns {State["settled"]} */
  function unsettled(kept) {
    const { settled: told, bench } = store.get();
    return { key: keyOfPiece(kept, bench), told: told?.told ?? null };
  }

  /** @param {Kept} kept @param {Pending | undefined} next @param {PieceReply} reply @param {State["refusals"]} others */
  function stands(kept, next, { settled: told, answer, changes, more }, others) {
    const { bench, shown } = store.get();
    const key = keyOfPiece(kept, bench);
    const now = answer ? { key, answer, kept: false } : shown;
    const at = next && { at: next.act === "cut" || next.act === "uncut" || next.act === "first" ? `cut:${next.name}` : next.act };
    const changed = next && next.act !== "settle" && changes && at ? { ...at, changes } : store.get().changed;
    stand(kept, { settled: { key, told: told ?? null }, shown: now, refusals: others, fault: "", changed });
    if (!more) keepStood(kept.id, { key, answer, told });
    if (changed && next) rest(() => store.set({ spoken: spoken(store.get()) }), next.act === "give" ? undefined : 0);
  }
  return { put, ask, settled };
}
