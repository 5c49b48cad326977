/** The pages as plain HTML, made at build time from the same views that run in the browser. */

import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { initial, titleOf } from "./state.mjs";
import { Page } from "./views/page.mjs";

/**
 * @typedef {import("./shapes").Catalogue} Catalogue
 * @typedef {{ style: string, first?: string, manifest?: string, icon?: string, touchIcon?: string }} Assets  addresses relative to the page
 */

/** What the page may load and do; hosts should send the same as a header. */
export const POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self'",
  "connect-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** The colour of the browser's own frame: that of the paper. */
const PAPER = { light: "#f3ecdf", dark: "#191714" };

/** One page: "index" or a sum's id, whose data is then wanted too.
 * @param {{ page: string, catalogue: Catalogue, data?: import("./shapes").Sum | null, assets: Assets }} told
 * @returns {string} */
export function renderPage({ page, catalogue, data = null, assets }) {
  const state = initial(page, catalogue, data);
  const about = data
    ? data.purpose
    : "Shop sums for those who make small things of wood by hand: offline, on a phone, at the bench.";
  const file = catalogue.sums.find(({ id }) => id === page)?.data ?? "";
  const body = h(
    "div",
    { id: "page", "data-page": page, "data-file": file },
    h(Page, { state, acts: /** @type {any} */ ({}) }),
  );
  return document({ title: titleOf(data), about, page }, assets, [body]);
}

/** A page to be read: no script, nothing to type.
 * @param {{ title: string, about: string, body: import("preact").VNode<any>, assets: Assets }} told @returns {string} */
export function renderPaper({ title, about, body, assets }) {
  return document({ title, about, page: "" }, assets, [body]);
}

/** The page for an address that leads nowhere. @param {{ assets: Assets }} told @returns {string} */
export function renderNotFound({ assets }) {
  const body = h(
    "main",
    { class: "lost" },
    h("h1", null, "Nothing is kept under that name"),
    h("p", null, h("a", { href: "./" }, "Back to the sums")),
  );
  return document({ title: "Not here · Tenpenny", about: "", page: "" }, assets, [body]);
}

/**
 * @param {{ title: string, about: string, page: string }} told `page`: which to wake Python for; "" for none
 * @param {Assets} assets
 * @param {import("preact").VNode[]} body
 */
function document({ title, about, page }, assets, body) {
  const head = h(
    "head",
    null,
    h("meta", { "http-equiv": "Content-Security-Policy", content: POLICY }),
    h("meta", { charset: "utf-8" }),
    h("meta", {
      name: "viewport",
      content: "width=device-width, initial-scale=1, viewport-fit=cover, interactive-widget=resizes-content",
    }),
    h("title", null, title),
    about && h("meta", { name: "description", content: about }),
    h("meta", { name: "color-scheme", content: "light dark" }),
    Object.entries(PAPER).map(([scheme, content]) =>
      h("meta", { name: "theme-color", content, media: `(prefers-color-scheme: ${scheme})` }),
    ),
    h("link", { rel: "stylesheet", href: assets.style }),
    assets.first && h("script", { src: assets.first, "data-page": page || undefined }),
    assets.manifest && h("link", { rel: "manifest", href: assets.manifest }),
    assets.icon && h("link", { rel: "icon", href: assets.icon, type: "image/svg+xml" }),
    assets.touchIcon && h("link", { rel: "apple-touch-icon", href: assets.touchIcon }),
  );
  return `<!doctype html>\n${renderToString(h("html", { lang: "en-GB" }, head, h("body", null, body)))}\n`;
}
