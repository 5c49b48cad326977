/** Going from page to page without leaving: links of ours are followed here, and Python stays awake. */

/** The page an address names: "index", a sum's id, or "" when it is not one of ours.
 * @param {URL} address @param {import("./shapes").Catalogue} catalogue @returns {string} */
export function pageOf(address, catalogue) {
  const folder = new URL("./", document.baseURI);
  if (address.origin !== folder.origin || !address.pathname.startsWith(folder.pathname)) return "";
  const file = address.pathname.slice(folder.pathname.length).replace(/\.html$/, "") || "index";
  return file === "index" || catalogue.sums.some(({ id }) => id === file) ? file : "";
}

/** The texts a link brings along: `bevel.html#angle=14.04`. @param {URL} address @returns {Record<string, string>} */
export function broughtBy({ hash }) {
  return hash.includes("=") ? Object.fromEntries(new URLSearchParams(hash.slice(1))) : {};
}

/** Follow links of ours with `go`, and the browser's own back and forward with `back`.
 * @param {import("./shapes").Catalogue} catalogue
 * @param {(page: string, address: URL) => void} go
 * @param {(page: string, scroll: number) => void} back */
export function follow(catalogue, go, back) {
  history.scrollRestoration = "manual";
  document.addEventListener("click", (event) => {
    const link = event.target instanceof Element && event.target.closest("a");
    const page = link && plainly(event, link) ? pageOf(new URL(link.href), catalogue) : "";
    if (!link || !page || (link.getAttribute("href") ?? "").startsWith("#")) return;
    event.preventDefault();
    go(page, new URL(link.href));
  });
  addEventListener("popstate", ({ state }) =>
    back(pageOf(new URL(location.href), catalogue) || "index", state?.scroll ?? 0),
  );
}

/** Remember how far this page was scrolled, then stand at another address. @param {URL} address */
export function move(address) {
  history.replaceState({ scroll: scrollY }, "");
  history.pushState({ scroll: 0 }, "", address.href.replace(/#.*$/, ""));
}

/** @param {MouseEvent} event @param {HTMLAnchorElement} link */
function plainly(event, link) {
  return (
    !event.defaultPrevented &&
    event.button === 0 &&
    !(event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) &&
    !link.target &&
    !link.download
  );
}
