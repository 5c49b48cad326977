/**
 * The small sheet about one number: why it is that, how true it is, and what would make it another.
 * @typedef {import("./shapes").State} State
 */

import { sent } from "./state-entry.mjs";

const FIXED = new Set(["choice", "rows", "reckoning", "text"]);

/** The givens that may be changed little by little, those that were typed first; none whose part is cut. @param {State} state */
export function changeable({ sum, entry, settled }) {
  const cut = new Set(settled?.told?.givens.filter(({ state }) => state === "cut").map(({ name }) => name));
  const free = (sum?.givens ?? []).filter(({ kind, name }) => !FIXED.has(kind) && !cut.has(name));
  const typed = free.filter(({ name }) => entry.texts[name]?.trim());
  return [...typed, ...free.filter((one) => !typed.includes(one) && !sum?.any_of?.names.includes(one.name))];
}

/**
 * @param {import("./state-store.mjs").Store} store
 * @param {(request: any) => Promise<any>} python
 * @param {(name: string, text: string) => void} type
 */
export function makeNumber(store, python, type) {
  /** What the door needs to know of the sum or piece. */
  function about() {
    const { sum, kept, entry, bench, about: asked } = store.get();
    const known = kept ? { record: kept.record } : { givens: sum ? sent(entry, sum) : {} };
    return { sum: sum?.id ?? "", bench, answer: asked?.answer.name, name: asked?.answer.name, ...known };
  }

  /** @param {Partial<import("./shapes-piece").About>} change @param {string} [name] for this number only */
  function ask(change, name) {
    const { about: now } = store.get();
    if (now && (!name || now.answer.name === name)) store.set({ about: { ...now, ...change } });
  }
  const isGiven = (/** @type {string} */ name) => changeable(store.get()).some((one) => one.name === name);
  const sheet = () => /** @type {HTMLDialogElement | null} */ (document.getElementById("number"));
  return {
    about: async (/** @type {import("./shapes-piece").About["answer"]} */ answer) => {
      const given = changeable(store.get())[0]?.name ?? "";
      store.set({ about: { answer, why: null, trust: null, wanted: "", given, found: null, refusal: "" } });
      sheet()?.showModal();
      const asked = about();
      const [why, trust] = await Promise.all([
        store.get().kept ? python({ op: "why", ...asked }) : null,
        python({ op: "true", ...asked }),
      ]);
      const most = trust.ok ? trust.slips.find((/** @type {any} */ one) => one.by?.value && isGiven(one.name))?.name : "";
      const now = store.get().about;
      const moved = now?.given === given && most ? { given: most } : {};
      ask({ why: why?.ok ? why : null, trust: trust.ok ? trust : { say: said(trust), slips: [] }, ...moved }, answer.name);
    },
    ask: (/** @type {Partial<import("./shapes-piece").About>} */ change) => ask({ ...change, found: null, refusal: "" }),
    find: async () => {
      const now = store.get().about;
      if (!now) return;
      const reply = await python({ op: "backwards", ...about(), wanted: now.wanted, given: now.given });
      ask(reply.ok ? { found: reply, refusal: "" } : { found: null, refusal: said(reply) }, now.answer.name);
    },
    use: (/** @type {string} */ text) => {
      const given = store.get().about?.found?.given;
      sheet()?.close();
      if (given) type(given, text);
    },
    close: () => store.set({ about: null, focus: "" }),
  };
}

/** @param {any} reply */
function said({ refusals, fault }) {
  return fault ?? (refusals ?? []).map((/** @type {any} */ one) => one.text).join(" ");
}
