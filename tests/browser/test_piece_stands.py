"""A piece half told: what is drawn from before says so, and what the saw decided is told beside the field."""

from playwright.sync_api import Page, expect
from walking import SOON, box, recorded


def test_a_size_that_was_cut_is_told_beside_its_field(page: Page, address: str) -> None:
    """The field keeps what was typed; what stands is beside it."""
    recorded(box(page, address), "front_height", "6 3/4 in")
    expect(page.locator("#r-front_height")).to_contain_text("cut at 6 3/4 in", timeout=SOON)


def test_what_is_drawn_for_other_sizes_says_so(page: Page, address: str) -> None:
    """Cleared and begun anew, the piece is not whole: drawing and bar are marked as from before."""
    box(page, address).get_by_role("button", name="Clear").first.tap()
    page.locator("#f-depth").fill("6 in")
    expect(page.locator(".board.open").first).to_be_visible(timeout=SOON)
    expect(page.locator(".glance").first).to_contain_text("from before")
