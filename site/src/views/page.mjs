import { h } from "preact";
import { Home } from "./home.mjs";
import { KeyRow } from "./keys.mjs";
import { NumberSheet } from "./number.mjs";
import { NailRule, RuleMark } from "./marks.mjs";
import { rule } from "./measure.mjs";
import { Settings } from "./settings.mjs";
import { Renewal, Status } from "./status.mjs";
import { SumPage } from "./sum.mjs";
import { whenChanged } from "./unchanged.mjs";

/** @typedef {{ state: import("../shapes").State, acts: import("../shapes").Acts }} Props */

/** The whole page. The same at build time and in the browser. @param {Props} props */
export function Page({ state, acts }) {
  return [
    h("a", { class: "skip", href: "#main" }, "Skip to the work"),
    h(Head, { state, acts }),
    h(
      "main",
      { id: "main", tabIndex: -1 },
      state.page === "index" ? h(Home, { state, acts }) : h(SumPage, { state, acts }),
    ),
    h(Foot, { keeps: state.keeps, page: state.page, isSum: !!state.sum }),
    h(Settings, { bench: state.bench, look: state.look, acts }),
    h(NumberSheet, { state, acts }),
    h(KeyRow, { state, acts }),
    h("p", { class: "spoken", role: "status" }, state.spoken),
  ];
}

/** @param {Props} props */
function Head({ state, acts }) {
  return h(
    "header",
    { class: "house" },
    h("a", { class: "name", href: "./" }, h("span", null, "Tenpenny"), h(NailRule, null)),
    h(Status, { state }),
    h(
      "button",
      { type: "button", class: "rule", popovertarget: "settings" },
      h(RuleMark, null),
      h("span", null, h("span", { class: "spoken" }, "Your rule: "), rule(state.bench.mark)),
    ),
    h(Renewal, { state, acts }),
  );
}

const Foot = whenChanged(footed);

/** @param {{ keeps: boolean, page: string, isSum: boolean }} props */
function footed({ keeps, page, isSum }) {
  return h(
    "footer",
    { class: "foot" },
    !keeps &&
      h("p", null, "This browser keeps nothing between visits, so what you type is lost when the page is closed."),
    h(
      "p",
      null,
      "Measure the real stuff before you cut it. ",
      "Where a load, a wall or a safety rule is at stake, your local codes and licensed trades have the last word.",
    ),
    h("p", null, "No account, no tracking. What you type stays on this device."),
    h(
      "p",
      { class: "papers" },
      isSum && h("a", { href: "#sources" }, "Where this sum comes from"),
      h("a", { href: `about/${page}.html` }, isSum ? "How far to trust it" : "How far each sum is to be trusted"),
      h("a", { href: "licences.txt" }, "Licences, and where the source texts are"),
    ),
  );
}
