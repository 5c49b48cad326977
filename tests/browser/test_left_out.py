"""What is left empty on a piece's page: what may be is told by what is missing for it, what may not be is asked for."""

from playwright.sync_api import Page, expect
from walking import SOON, box


def test_what_may_be_left_empty_is_no_answer_wanting(page: Page, address: str) -> None:
    """The wood and the price emptied: the box stays whole, and each field says what is not said for it."""
    box(page, address).locator("#f-species").fill("")
    page.locator("#f-price").fill("")
    expect(page.locator("#n-species")).to_contain_text("Left empty, so nothing is said of weight", timeout=SOON)
    expect(page.locator("#n-price")).to_contain_text(
        "Left empty, so nothing is said of cost of the wood.", timeout=SOON
    )
    expect(page.locator(".answers.now")).to_be_visible()
    expect(page.locator(".misfits")).to_have_count(0)


def test_what_must_be_given_is_asked_for_and_nothing_else(page: Page, address: str) -> None:
    """The thickness emptied: not the thicknesses that follow from it; a height emptied: one of the three."""
    box(page, address).locator("#f-stock_thickness").fill("")
    expect(page.locator(".misfits li")).to_have_text("Not decided yet: thickness of the stock.", timeout=SOON)
    page.locator("#f-front_height").fill("")
    wanted = "Not decided yet: thickness of the stock and one of height of the front edge or slope of the lid."
    expect(page.locator(".misfits li")).to_have_text(wanted, timeout=SOON)
