"""Opening the built page in a browser."""

from playwright.sync_api import Page, expect

SOON = 60_000
ANGLE = "#a-angle .figure"


def opened(page: Page, address: str, name: str) -> Page:
    """A page with Python awake."""
    page.goto(f"{address}{name}")
    expect(page.locator(".status.ready")).to_be_visible(timeout=SOON)
    return page


def box(page: Page, address: str) -> Page:
    """The sloping-lid box, with its answers."""
    opened(page, address, "sloping-lid-box.html")
    expect(page.locator(".answers.now")).to_be_visible(timeout=SOON)
    return page


def recorded(page: Page, name: str, text: str) -> None:
    """A size recorded as it came out, and taken up."""
    page.locator(f"[name='cut:{name}']").fill(text)
    page.keyboard.press("Enter")
    expect(page.locator(f"#a-{name}.cut")).to_be_visible(timeout=SOON)
    expect(page.locator(".answers.now")).to_be_visible(timeout=SOON)
