"""Opening the built page in a browser."""

from playwright.sync_api import Page, expect

SOON = 60_000
ANGLE = "#a-angle .figure"


def opened(page: Page, address: str, name: str) -> Page:
    """A page with Python awake."""
    page.goto(f"{address}{name}")
    expect(page.locator(".status.ready")).to_be_visible(timeout=SOON)
    return page
