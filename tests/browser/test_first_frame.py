"""A page is read before it comes to life: its own script waits behind the first frame, if one is drawn at all."""

from playwright.sync_api import Page, expect

NO_FRAMES = "globalThis.requestAnimationFrame = (then) => void (globalThis.frame = then);"
HIDDEN = "Object.defineProperty(document, 'hidden', { value: true });"
ALIVE = "() => performance.getEntriesByName('alive').length"


def test_it_is_read_first(page: Page, address: str) -> None:
    """Until a frame is drawn, the worked example stands there, Python's thread has begun, and no more is done."""
    page.add_init_script(NO_FRAMES)
    with page.expect_worker():
        page.goto(f"{address}slope.html")
    expect(page.locator("#a-angle .figure")).to_have_text("14.0°")
    assert page.evaluate(ALIVE) == 0
    page.evaluate("() => frame()")
    expect(page.locator(".status.ready")).to_be_visible(timeout=60_000)
    assert page.evaluate(ALIVE) == 1


def test_a_page_that_is_not_seen_does_not_wait(page: Page, address: str) -> None:
    """Opened in a tab behind another, where no frame is drawn."""
    page.add_init_script(NO_FRAMES + HIDDEN)
    page.goto(f"{address}slope.html")
    expect(page.locator(".status.ready")).to_be_visible(timeout=60_000)
