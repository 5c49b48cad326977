"""Every sum on a small screen: its example typed and read back, its page fit for thumbs, eyes and screen readers."""

from typing import Any

import pytest
from playwright.sync_api import Page, expect
from rules import LOOKS, faults

from calc import discover
from calc.bench import Bench
from calc.declare import Sum
from calc.engine import reckon

SUMS = {one.id: one for one in discover.everything()}
PAGES = ["index", *SUMS]
SOON = 15_000
FOLLOW = """(address) => {
  const link = Object.assign(document.createElement("a"), { href: address });
  document.body.append(link);
  link.click();
  link.remove();
}"""
SHOWN = "(one) => one.querySelector('.measure')?.textContent ?? one.querySelector('input[type=text]').value"
UNFOLD = "document.querySelectorAll('details').forEach((fold) => { fold.open = true; })"
SMALL = """[...document.querySelectorAll(':is(main, header) :is(a, button, summary, select, input:not([type=radio]))')]
  .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 47.5).map((one) => one.outerHTML)"""


def walked(page: Page, name: str) -> Page:
    """A link to a page followed, without leaving, and everything on it unfolded."""
    page.evaluate(FOLLOW, f"./{name}.html")
    title = SUMS[name].title if name in SUMS else "Sums for the bench"
    expect(page.locator("h1")).to_have_text(title, timeout=SOON)
    page.evaluate(UNFOLD)
    return page


def type_in(page: Page, one: Sum, name: str, text: str) -> None:
    """Put a text where a person would: in a field, in the cells of a list, or by choosing."""
    described = page.locator(f".givens [name='{name}']")
    kind = one.given(name).kind
    if kind == "rows":
        rows = [[cell.strip() for cell in row.split(" x ")] for row in text.split(";")]
        for _ in rows[1:]:
            page.get_by_role("button", name="Add a row").click()
        for at, row in enumerate(rows):
            for column, cell in zip(one.given(name).columns, row, strict=True):  # type: ignore[attr-defined]
                page.locator(f"[name='{name}.{at}.{column.name}']").fill(cell)
    elif described.first.evaluate("(one) => one.tagName") == "SELECT":
        described.select_option(text)
    elif described.first.get_attribute("type") == "radio":
        page.locator(f".givens [name='{name}'][value='{text}']").check(force=True)
    else:
        described.fill(text)


def told(answer: dict[str, Any]) -> str:
    """The text of an answer with what the page leaves out put away."""
    return "".join(str(answer["text"]).split())


@pytest.mark.parametrize("name", SUMS)
def test_the_example_typed_is_answered_as_python_answers_it(shop: Page, name: str) -> None:
    """Cleared and typed again field by field, every single answer reads as it does without a page."""
    one = SUMS[name]
    page = walked(shop, name)
    page.get_by_role("button", name="Clear", exact=True).click()
    for given, text in one.example.givens.items():
        type_in(page, one, given, text)
    expect(page.locator(".answers.now")).to_be_visible(timeout=SOON)
    expect(page.locator(".story")).to_be_empty()
    page.evaluate(UNFOLD)
    for answer in reckon(one, one.example.givens, Bench()).to_dict()["answers"]:
        if answer["kind"] != "rows":
            shown = page.locator(f"#a-{answer['name']}").evaluate(SHOWN)
            assert "".join(shown.split()) == told(answer)


@pytest.mark.parametrize("name", PAGES)
def test_the_page_fits_a_small_screen_and_a_thumb(shop: Page, name: str) -> None:
    """At 320 px, unfolded, a field in hand: targets 48 px high, nothing to scroll sideways, however large the text."""
    shop.set_viewport_size({"width": 320, "height": 640})
    page = walked(shop, name)
    if name != "index":
        page.locator(".givens input[type=text]").first.focus()
    assert page.evaluate(SMALL) == []
    for size in ("200%", "100%"):
        page.evaluate("(size) => { document.documentElement.style.fontSize = size; }", size)
        assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0, size


@pytest.mark.parametrize("name", PAGES)
def test_the_accessibility_rules_find_nothing(shop: Page, name: str) -> None:
    """axe-core, everything unfolded, in each look, on a sheet so long that nothing lies over anything else."""
    shop.set_viewport_size({"width": 360, "height": 20000})
    page = walked(shop, name)
    for look in LOOKS:
        assert faults(page, look) == [], look
