"""Two cuts that cannot both fit: the maker says which came first."""

from playwright.sync_api import Page, expect
from walking import SOON, box, recorded


def test_the_cut_that_came_first_has_the_first_call(page: Page, address: str) -> None:
    """The front gave the width; then the back came first, and the front is short; undone, all is as it was."""
    recorded(box(page, address), "front_long", "7 in")
    expect(page.locator(".order")).to_have_count(0)
    recorded(page, "back_wide", "7 1/8 in")
    expect(page.locator(".part .misfits")).to_contain_text("The back stands 1/8 in", timeout=SOON)
    came_first = page.get_by_role("button", name="Back, edge to edge: this was cut first")
    expect(came_first).to_have_accessible_description("If so, the rest follows it instead.")
    came_first.tap()
    expect(page.locator("#a-back_wide .order")).to_have_text("Cut first: the rest follows it.", timeout=SOON)
    expect(page.locator(".part .misfits")).to_contain_text("The front is 1/8 in")
    expect(page.locator("#a-front_long .order button")).to_be_visible()
    page.get_by_role("button", name="Undo: Back, edge to edge came first").first.tap()
    expect(came_first).to_be_visible(timeout=SOON)
    expect(page.locator(".misfits")).to_contain_text("The back stands 1/8 in")
