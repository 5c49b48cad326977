"""A cut typed without its point: asked about beside its field, and put right by one touch."""

from playwright.sync_api import Page, expect
from walking import SOON, box


def test_a_lost_point_is_asked_about_and_put_right(page: Page, address: str) -> None:
    """What was likelier meant is offered first; taken, it stands as the cut, and nothing is asked any more."""
    field = box(page, address).locator("[name='cut:front_height']")
    field.fill("1685 mm")
    page.keyboard.press("Enter")
    asked = page.locator(".part .misfits li").first
    expect(asked).to_contain_text("is that what you measured?", timeout=SOON)
    asked.get_by_role("button", name="It is 168.5 mm").tap()
    expect(page.locator(".misfits")).to_have_count(0, timeout=SOON)
    expect(field).to_have_value("168.5 mm")
    expect(page.locator("#a-front_height.cut")).to_be_visible()
