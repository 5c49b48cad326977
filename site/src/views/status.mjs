import { h } from "preact";

/** @type {Record<string, string>} */
const PYTHON = { waking: "Python is waking…", ready: "Ready", failed: "Python cannot start here" };

/** One quiet line: is Python awake, and is everything on this device. "Works offline" only when that has been proved.
 * @param {{ state: import("../shapes").State }} props */
export function Status({ state: { python, said, offline } }) {
  const { whole, fetching, problem } = offline;
  const share = fetching ? Math.floor((100 * fetching.done) / Math.max(1, fetching.total)) : 0;
  const kept = whole ? "works offline" : fetching ? `keeping for offline, ${share}%` : problem;
  return h(
    "p",
    { class: `status ${python}`, role: "status" },
    h("span", { class: "now" }, said || (PYTHON[python] ?? python)),
    kept && h("span", { class: "offline" }, kept),
  );
}

/**
 * A newer version waits until it is asked for.
 * @param {{ state: import("../shapes").State, acts: import("../shapes").Acts }} props
 */
export function Renewal({ state, acts }) {
  if (!state.offline.update) return null;
  return h(
    "p",
    { class: "renewal" },
    "A new version is here. ",
    h("button", { type: "button", class: "key", onClick: acts.renew }, "Change over"),
  );
}
