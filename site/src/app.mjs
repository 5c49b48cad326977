/**
 * The page comes to life: the prerendered drawing is taken over as it stands, then Python is woken and what was kept recalled.
 */

import { h, hydrate, render } from "preact";
import { onLeaving, riseWithKeypad, stayAwake, unfoldForPaper } from "./device.mjs";
import { alreadySought, alreadyTyped, keepingCaret } from "./fields-before.mjs";
import { mark } from "./marks.mjs";
import { startOffline } from "./offline.mjs";
import { startPython } from "./python.mjs";
import { makeActs } from "./state-acts.mjs";
import { makeAnswering } from "./state-answer.mjs";
import { recallLook } from "./state-look.mjs";
import { makeBuilding } from "./state-build.mjs";
import { makeNumber } from "./state-number.mjs";
import { fetched, recalledBench } from "./state-open.mjs";
import { makePieceActs } from "./state-piece-acts.mjs";
import { makeShelf } from "./state-shelf.mjs";
import { broughtBy } from "./state-route.mjs";
import { makeStore } from "./state-store.mjs";
import { makeVisits } from "./state-visit.mjs";
import { initial } from "./state.mjs";
import { Page } from "./views/page.mjs";

const root = /** @type {HTMLElement} */ (document.getElementById("page"));
const { page = "index", file = "" } = root.dataset;

const store = makeStore((state) => render(h(Page, { state, acts }), root));
const python = startPython({ page, onState: (python, said) => store.set({ python, said }) });
const offline = startOffline({ onState: (now) => store.set({ offline: now }) });
const answering = makeAnswering(store, python.ask);
const shelf = makeShelf(store);
const building = makeBuilding(store, python.ask, shelf.save);
const { put } = building;
const ask = () => (store.get().kept ? building.ask() : answering.ask());
const settled = () => (store.get().kept ? building.settled() : answering.settled());
const piece = { ...makePieceActs(store, building, shelf, python.ask), ...makeNumber(store, python.ask, (name, text) => acts.type(name, text)) };
const acts = makeActs(store, { ask, hush: python.hush, settled, put, piece, renew: () => offline.applyUpdate() });
const visits = makeVisits(store, { ask, put }, shelf);

/** Try until it can be had: a page opened on a weak signal stays readable meanwhile.
 * @template T @param {() => Promise<T>} attempt @param {number} [pause] @returns {Promise<T>} */
async function until(attempt, pause = 500) {
  try {
    return await attempt();
  } catch {
    await new Promise((go) => setTimeout(go, pause));
    return until(attempt, Math.min(pause * 2, 30000));
  }
}

/**
 * What came in the address, as texts for the fields; the address is then put right so that a reload does not bring them again.
 */
function broughtHere() {
  const { kept = "", ...texts } = broughtBy(new URL(location.href));
  if (kept || Object.keys(texts).length) history.replaceState(null, "", location.pathname);
  return { kept, brought: Object.keys(texts).length ? { texts, from: "a link" } : null };
}

async function start() {
  const bench = recalledBench();
  const [catalogue, sum] = await until(() => Promise.all([fetched("catalogue.json"), file ? fetched(file) : null]));
  const { kept, brought } = broughtHere();
  store.set(await bench);
  const left = await visits.left(sum, kept);
  const [over, search, restore, first] = [alreadyTyped(root), alreadySought(root), keepingCaret(), initial(page, catalogue, sum)];
  hydrate(h(Page, { state: first, acts }), root);
  store.begin(first);
  store.set({ look: recallLook(), wide: matchMedia("(min-width: 60rem)").matches });
  mark("alive");
  visits.enter(page, sum, left, over, brought);
  if (search) store.set({ search });
  restore();
  visits.follow();
  shelf.begin(building.ask);
  riseWithKeypad();
  unfoldForPaper();
  onLeaving(answering.leave);
  stayAwake(() => store.get().sum !== null);
}

start();
