"""A page is read before it comes to life: Python and its own script wait for the first paint, if there is one."""

import pytest
from playwright.sync_api import Page, expect

ALIVE = "() => performance.getEntriesByName('alive').length"
HIDDEN = "Object.defineProperty(document, 'hidden', { value: true });"
ENDLESS = """const later = setTimeout;
globalThis.setTimeout = (go, after, ...rest) => (after === 1000 ? 0 : later(go, after, ...rest));"""
"""The page's own patience never ends."""
SILENT = """globalThis.PerformanceObserver = class {
  static supportedEntryTypes = ["paint"];
  constructor(told) {
    globalThis.paint = (name) => told({ getEntriesByName: (wanted) => (wanted === name ? [{}] : []) });
  }
  observe() {}
  disconnect() {}
};"""
"""A browser that tells of a paint when the test says so."""
UNTOLD = """PerformanceObserver = { supportedEntryTypes: [] };
globalThis.requestAnimationFrame = (then) => void (globalThis.frame = then);"""
"""A browser that never tells of paints, and draws a frame when the test says so."""


@pytest.mark.parametrize(
    ("browser", "seen"), [(SILENT, "() => paint('first-contentful-paint')"), (UNTOLD, "() => frame()")]
)
def test_it_is_read_first(page: Page, address: str, browser: str, seen: str) -> None:
    """Until something to read is painted, the worked example stands there and no more is done."""
    page.add_init_script(ENDLESS + browser)
    page.goto(f"{address}slope.html")
    expect(page.locator("#a-angle .figure")).to_have_text("14.0°")
    assert (page.evaluate(ALIVE), page.workers) == (0, [])
    expect(page.locator("link[rel=modulepreload]")).to_have_count(1)  # what comes over the network may do so meanwhile
    page.evaluate(seen)
    expect(page.locator(".status.ready")).to_be_visible(timeout=60_000)
    assert page.evaluate(ALIVE) == 1


def test_a_first_paint_with_nothing_to_read_does_not_count(page: Page, address: str) -> None:
    """The paper alone."""
    page.add_init_script(ENDLESS + SILENT)
    page.goto(f"{address}slope.html")
    page.evaluate("() => paint('first-paint')")
    page.wait_for_timeout(1000)  # long enough for what must not come
    assert (page.evaluate(ALIVE), page.workers) == (0, [])


@pytest.mark.parametrize("script", [ENDLESS + SILENT + HIDDEN, SILENT])
def test_it_does_not_wait_for_ever(page: Page, address: str, script: str) -> None:
    """Opened in a tab behind another, where nothing is painted; or in a browser that tells of no paint."""
    page.add_init_script(script)
    page.goto(f"{address}slope.html")
    expect(page.locator(".status.ready")).to_be_visible(timeout=60_000)


def test_a_page_put_away_before_it_was_painted_goes_on(page: Page, address: str) -> None:
    """Whoever comes back to it finds it alive."""
    page.add_init_script(ENDLESS + SILENT)
    page.goto(f"{address}slope.html")
    page.evaluate("() => document.dispatchEvent(new Event('visibilitychange'))")
    expect(page.locator(".status.ready")).to_be_visible(timeout=60_000)
