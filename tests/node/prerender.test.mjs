// The pages as they are made at build time.
import assert from "node:assert/strict";
import { test } from "node:test";
import { POLICY, renderNotFound, renderPage } from "../../site/src/prerender.mjs";

const EVIL = `"><script>alert(1)</script><img src=x onerror=alert(1) style="color:red">`;
const ASSETS = { style: "code/page.css", first: "code/first.js" };
const LIMIT = { low: "", high: "", above: false, below: false, text: EVIL };
const GIVEN = {
  name: "rise",
  label: EVIL,
  kind: "length",
  help: EVIL,
  default: "",
  default_why: "",
  optional: false,
  limit: LIMIT,
};
const ANSWER = { name: "angle", label: EVIL, kind: "angle", help: EVIL, text: EVIL, left: EVIL, also: EVIL };
const NODES = [
  ["text", { class: EVIL, onclick: "alert(1)", style: "color:red" }, EVIL],
  ["script", {}, "alert(1)"],
  ["foreignObject", {}, EVIL],
];
const FIGURE = { width: 340, height: 200, title: EVIL, desc: EVIL, nodes: NODES };
const WORKED = {
  sum: "slope",
  givens: {},
  answers: [ANSWER],
  working: [],
  cautions: [{ say: EVIL, source: EVIL }],
  carry_on: [],
  figure: FIGURE,
};
const SUM = {
  id: "slope",
  title: EVIL,
  moment: "sketch",
  question: EVIL,
  asks: [EVIL],
  purpose: EVIL,
  limits_of: EVIL,
  givens: [GIVEN],
  any_of: null,
  sources: [{ work: EVIL, where: EVIL, basis: "read", note: EVIL }],
  cautions: [],
  example: { givens: { rise: EVIL }, story: EVIL },
  worked: WORKED,
};
const LISTED = {
  id: "slope",
  title: EVIL,
  moment: "sketch",
  question: EVIL,
  asks: [EVIL],
  purpose: EVIL,
  data: "data/slope.json",
};
const CATALOGUE = { version: "1", moments: [{ id: "sketch", title: EVIL }], sums: [LISTED] };
const PAGES = {
  index: renderPage({ page: "index", catalogue: CATALOGUE, assets: ASSETS }),
  slope: renderPage({ page: "slope", catalogue: CATALOGUE, data: SUM, assets: ASSETS }),
  lost: renderNotFound({ assets: ASSETS }),
};

for (const [name, html] of Object.entries(PAGES)) {
  test(`${name}: no word of the data becomes markup`, () => {
    const scripts = html.match(/<script[^>]*>/g) ?? [];
    assert.ok(
      scripts.every((tag) => /src="code\/(app|first)\.js"/.test(tag)),
      scripts.join(),
    );
    assert.doesNotMatch(html, /<img|<foreignObject/i);
    assert.doesNotMatch(html, /<[^>"]*(?:"[^"]*"[^>"]*)*\s(?:on\w+|style)=/i);
  });

  test(`${name}: the policy comes first, and is the one that hosts are told`, () => {
    assert.match(html, /^<!doctype html>\n<html lang="en-GB"><head><meta http-equiv="Content-Security-Policy"/);
    assert.ok(html.includes(`content="${POLICY}"`));
  });

  test(`${name}: every address is relative, so that any folder will do`, () => {
    const addresses = [...html.matchAll(/(?:href|src)="([^"]*)"/g)].map(([, address]) => address);
    assert.ok(addresses.length > 0);
    for (const address of addresses) assert.doesNotMatch(address, /^(?:\/|[a-z]+:)/);
  });
}

test("the worked example stands in the fields and the answers", () => {
  const html = renderPage({
    page: "slope",
    catalogue: CATALOGUE,
    data: { ...SUM, example: { givens: { rise: "3 in" }, story: "A lid." } },
    assets: ASSETS,
  });
  assert.match(html, /<input[^>]*name="rise"[^>]*value="3 in"/);
  assert.match(html, /id="a-angle"/);
});

test("every page leads to the licences; a sum's page to where it comes from", () => {
  for (const page of [PAGES.index, PAGES.slope]) assert.match(page, /<a href="licences\.txt">/);
  assert.match(PAGES.slope, /<a href="#sources">/);
  assert.match(PAGES.slope, /<section[^>]*id="sources"/);
});

test("a sum that is not there is not offered to carry on with", () => {
  const carry_on = [
    { to: "slope", why: "", givens: {} },
    { to: "nowhere", why: "", givens: {} },
  ];
  const data = { ...SUM, worked: { ...WORKED, carry_on } };
  const html = renderPage({ page: "slope", catalogue: CATALOGUE, data, assets: ASSETS });
  assert.match(html, /href="slope\.html"/);
  assert.doesNotMatch(html, /nowhere/);
});
