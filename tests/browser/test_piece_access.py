"""A piece in the middle of its building, and the sheet about a number, held against the rules of accessibility."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect
from rules import LOOKS, faults
from walking import SOON, box, opened, recorded

SMALL = """[...document.querySelectorAll(
    ":is(main, dialog[open]) :is(a, button, summary, select, input:not([type=radio], [type=file]))")]
  .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 47.5).map((one) => one.outerHTML)"""

CUT_OFF = """[...document.querySelectorAll("a, button, summary, input, [tabindex]")].flatMap((one) => {
  const box = [...document.querySelectorAll("*")].find(
    (each) => each !== one && each.contains(one) && getComputedStyle(each).contentVisibility === "auto");
  const [its, out] = [one, box ?? one].map((each) => each.getBoundingClientRect());
  const sides = [its.left - out.left, out.right - its.right, its.top - out.top, out.bottom - its.bottom];
  return box && Math.min(...sides) < 5 ? [one.outerHTML] : [];
})"""


@pytest.fixture(scope="module")
def building(chromium: Browser, address: str) -> Iterator[Page]:
    """The sloping-lid box with cuts that do not all fit, one of them told to have come first, and one refused."""
    context = chromium.new_context(viewport={"width": 360, "height": 740}, has_touch=True, service_workers="block")
    page = box(context.new_page(), address)
    recorded(page, "front_long", "7 in")
    recorded(page, "back_wide", "7 1/8 in")
    page.get_by_role("button", name="Back, edge to edge: this was cut first").tap()
    expect(page.locator("#a-back_wide .order")).to_contain_text("Cut first", timeout=SOON)
    recorded(page, "lid_long", "7 in")
    page.locator("[name='cut:moving']").fill("7 inchs")
    page.keyboard.press("Enter")
    expect(page.locator("#a-moving.refused")).to_be_visible(timeout=SOON)
    yield page
    context.close()


@pytest.mark.parametrize("look", LOOKS)
def test_the_rules_find_nothing_in_a_piece_half_built(building: Page, look: str) -> None:
    """Changes shown, a gap with its choices, a cut that came first, one that could not be read, an undo."""
    building.set_viewport_size({"width": 360, "height": 20000})
    for shown in (".changed", ".misfits", ".order .key", ".size.refused", ".undo"):
        expect(building.locator(shown).first).to_be_visible()
    assert faults(building, look) == []
    assert building.evaluate(SMALL) == []


@pytest.mark.parametrize("look", LOOKS)
def test_the_rules_find_nothing_in_the_sheet_about_a_number(building: Page, look: str) -> None:
    """With why it is so, how true it is, what would make it another, and what cannot be read."""
    building.set_viewport_size({"width": 360, "height": 2000})
    building.locator("#a-lid_wide .number-name").click()
    sheet = building.locator("#number")
    expect(sheet).to_contain_text("A mark of misreading in each", timeout=SOON)
    sheet.locator("#wanted").fill("9 in")
    sheet.locator("#moved").select_option("inside_width")
    sheet.get_by_role("button", name="What must it be?").click()
    expect(sheet).to_contain_text("Inside width", timeout=SOON)
    assert faults(building, look) == []
    assert building.evaluate(SMALL) == []
    building.keyboard.press("Escape")


def test_the_sheet_about_a_sum_s_number_is_fit_too(building: Page, address: str) -> None:
    """On the narrowest screen nothing in it is cut off."""
    page = opened(building.context.new_page(), address, "slope.html")
    page.set_viewport_size({"width": 320, "height": 900})
    page.locator("#a-angle .number-name").click()
    expect(page.locator("#number")).to_contain_text("A mark of misreading", timeout=SOON)
    assert faults(page, "light") == []
    assert faults(page, "dark") == []
    assert page.evaluate("(one => one.scrollWidth - one.clientWidth)(document.querySelector('#number'))") <= 0


def test_the_ring_about_what_is_in_hand_is_not_cut_off(building: Page, address: str) -> None:
    """Boxes that are laid out late cut off what stands out over them: each has room for the ring of five pixels."""
    page = opened(building.context.new_page(), address, "slope.html")
    assert page.evaluate(CUT_OFF) == []
    page.get_by_role("link", name="Where this sum comes from").click()
    expect(page.locator("#sources")).to_be_in_viewport(ratio=0.9)
    assert page.evaluate("find('Euclid')")
