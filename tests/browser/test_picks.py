"""One of many, found by a part of its name, with the thumb and with the arrow keys."""

from playwright.sync_api import Page, expect
from walking import SOON, opened

NAMES = "#l-species [role=option]"


def test_a_part_of_a_name_narrows_and_a_touch_takes_it(page: Page, address: str) -> None:
    """Every name is wide and high enough for a thumb; the field keeps the caret, and the answer follows."""
    field = opened(page, address, "sag.html").locator("#f-species")
    field.fill("oak r")
    expect(page.locator(NAMES).first).to_contain_text("Oak")
    assert all(one.bounding_box()["height"] >= 48 for one in page.locator(NAMES).all())  # type: ignore[index]
    page.locator(NAMES).first.tap()
    expect(field).to_have_value("Oak, northern red (Quercus rubra)")
    expect(field).to_be_focused()
    expect(page.locator(NAMES)).to_have_count(0)
    expect(page.locator(".answers.now")).to_be_visible(timeout=SOON)


def test_the_arrow_keys_reach_the_names(page: Page, address: str) -> None:
    """Down from the field, down again, Enter; the botanical name serves as well."""
    field = opened(page, address, "sag.html").locator("#f-species")
    field.fill("fraxinus")
    page.keyboard.press("ArrowDown")
    page.keyboard.press("ArrowDown")
    expect(page.locator(NAMES).nth(1)).to_be_focused()
    page.keyboard.press("Enter")
    expect(field).to_have_value("Ash, blue (Fraxinus quadrangulata)")


def test_what_is_typed_is_sent_as_it_is(page: Page, address: str) -> None:
    """A part that stands in one name only is enough; one that stands nowhere is refused beside the field."""
    field = opened(page, address, "sag.html").locator("#f-species")
    field.fill("mahogany xyz")
    expect(page.locator("#n-species")).to_contain_text("is no wood in the table", timeout=SOON)
    field.fill("rubra")
    expect(page.locator("#n-species")).to_contain_text("could be", timeout=SOON)
    field.fill("quercus alba")
    expect(page.locator("#r-species")).to_have_text("read as Oak, white (Quercus alba)", timeout=SOON)
