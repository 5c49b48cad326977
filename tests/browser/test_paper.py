"""What comes out of the printer: nothing folded or laid out too late, letters large enough, and where it comes from."""

import pytest
from playwright.sync_api import Page, expect
from walking import SOON, box, opened, recorded

A4 = 703
"""The printed width of an A4 sheet with margins of 12 mm, in CSS pixels; that of a Letter sheet is 725."""
LETTERS = """() => [...document.querySelectorAll(".drawing text")].map((one) => {
  const { a, b } = one.getScreenCTM();
  return parseFloat(getComputedStyle(one).fontSize) * Math.hypot(a, b) * 0.75;
})"""


def printed(page: Page) -> Page:
    """As the printer has it."""
    page.set_viewport_size({"width": A4, "height": 1000})
    page.emulate_media(media="print")
    page.evaluate("dispatchEvent(new Event('beforeprint'))")
    return page


@pytest.mark.parametrize("name", ["slope", "movement", "sloping-lid-box", "wall-shelf"])
def test_the_printed_page_says_where_it_comes_from(page: Page, address: str, name: str) -> None:
    """The sources stand far below the first screen, and are laid out all the same; the sheet is not too wide."""
    sources = printed(opened(page, address, f"{name}.html")).locator("#sources li")
    for one in sources.all():
        expect(one).to_be_visible()
        assert one.evaluate("(one) => one.checkVisibility({ contentVisibilityAuto: true })")
        assert one.inner_text()
    assert sources.count()
    assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0


@pytest.mark.parametrize("name", ["sloping-lid-box", "flat-lid-box", "sliding-lid-box", "wall-shelf", "splayed-tray"])
def test_the_letters_in_a_drawing_are_large_enough_on_paper(page: Page, address: str, name: str) -> None:
    """Eight points at least, in the drawing and in the piece taken apart."""
    letters = printed(opened(page, address, f"{name}.html")).evaluate(LETTERS)
    assert len(letters) > 9
    assert min(letters) >= 8


def test_the_bench_sheet_has_what_does_not_fit_and_no_buttons(page: Page, address: str) -> None:
    """A cut that misses is on the sheet with the part; what can only be touched is not."""
    recorded(box(page, address), "front_long", "7 in")
    recorded(page, "back_wide", "7 1/8 in")
    sheet = printed(page)
    expect(sheet.locator(".part .misfits")).to_contain_text("The back stands 1/8 in", timeout=SOON)
    expect(sheet.locator(".part .misfits")).to_be_visible()
    for one in sheet.locator("button:not(.number-name)").all():
        expect(one).to_be_hidden()
