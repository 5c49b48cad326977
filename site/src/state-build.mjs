/**
 * A piece being built: each entry is kept at once, taken up by Python one after another, and what it changed is told.
 * @typedef {import("./shapes").State} State
 * @typedef {import("./shapes").Bench} Bench
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
  /** The piece whose drawings are shown, once Python has made them here. */
  let drawn = "";
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
    const before = keyOfPiece(kept, bench);
    /** Whether the reply is still to what stands here. */
    const holds = () => {
      const { kept: now } = store.get();
      return now?.id === kept.id && (!!next || keyOfPiece(now, bench) === before);
    };
    let key = "";
    const sooner = (/** @type {PieceReply} */ part) => void (key ||= holds() ? begun(next, part, bench) : "");
    const reply = await python({ op: "piece", sum: sum.id, record, bench, do: acts(kept, next, sum) }, sooner);
    if (key ? store.get().kept?.id !== kept.id : !holds()) return true;
    if (reply.fault) return lost(reply.fault);
    store.together(() => (key ? whole(kept.id, key, reply) : took(next, reply, bench)));
    return true;
  }

  /** How the piece stands is known; drawings and working stay as they were for the moment that the rest takes, if they are its own.
   * @param {Pending | undefined} next @param {PieceReply} part @param {Bench} bench @returns {string} the name of how it stands; "" if nothing was taken up */
  function begun(next, part, bench) {
    const { kept, shown } = store.get();
    if (!part.answer || !shown || drawn !== kept?.id) return "";
    const answer = { ...shown.answer, ...part.answer };
    store.together(() => took(next, { ...part, answer }, bench));
    return store.get().shown?.key ?? "";
  }

  /** The rest is there, unless something else has taken its place. @param {string} id @param {string} key @param {PieceReply} reply */
  function whole(id, key, { answer, settled: told, refusals = [] }) {
    const { kept, shown } = store.get();
    if (kept?.id !== id || shown?.key !== key) return;
    if (!answer) return lost(refusals.map(({ text }) => text).join(" "));
    store.set({ shown: { ...shown, answer } });
    keepStood(id, { key, answer, told });
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

  /** @param {Pending | undefined} next @param {PieceReply} reply @param {Bench} bench what it was asked with */
  function took(next, reply, bench) {
    const { kept: now, sum, refusals } = store.get();
    if (!now || !sum) return;
    const kept = next ? stamped(taken(now, next, reply, sum)) : now;
    const field = next && (next.act === "cut" ? `cut:${next.name}` : next.name);
    const others = refusals.filter((one) => one.field !== field && one.field in kept.drafts);
    if (next) save(kept, now.rev);
    const key = keyOfPiece(kept, bench);
    if (reply.ok) stands(kept, key, next, reply, others);
    else refused(kept, key, field ?? "", others, reply);
  }

  /** What cannot be worked out again is not asked over and over.
   * @param {Kept} kept @param {string} key @param {string} field @param {State["refusals"]} others @param {PieceReply} reply */
  function refused(kept, key, field, others, { refusals = [] }) {
    const here = refusals.map((one) => ({ ...one, field }));
    const settled = { key, told: store.get().settled?.told ?? null };
    const told = { refusals: [...others, ...here], spoken: here.map((one) => one.text).join(" ") };
    if (!field) return stand(kept, { ...told, fault: told.spoken, settled });
    stand(kept, { settled });
    rest(() => store.set(told), store.get().focus === field ? undefined : 0);
  }

  /** @param {Kept} kept @param {string} key @param {Pending | undefined} next @param {PieceReply} reply @param {State["refusals"]} others */
  function stands(kept, key, next, { settled: told, answer, changes, more }, others) {
    const { shown } = store.get();
    const now = answer ? { key, answer, kept: false } : shown;
    const at = next && { at: next.act === "cut" || next.act === "uncut" || next.act === "first" ? `cut:${next.name}` : next.act };
    const changed = next && next.act !== "settle" && changes && at ? { ...at, changes } : store.get().changed;
    stand(kept, { settled: { key, told: told ?? null }, shown: now, refusals: others, fault: "", changed });
    if (answer) drawn = kept.id;
    if (!more) keepStood(kept.id, { key, answer, told });
    if (changed && next) rest(() => store.set({ spoken: spoken(store.get()) }), next.act === "give" ? undefined : 0);
  }
  return { put, ask, settled };
}
