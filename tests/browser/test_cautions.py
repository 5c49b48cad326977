"""Many cautions: the first in sight, the others one touch away, and all of them on paper."""

from playwright.sync_api import Page, expect
from walking import box

from calc.bench import Bench
from calc.discover import find
from calc.engine import reckon


def test_of_many_cautions_the_first_stand_in_sight_and_the_rest_are_counted(page: Page, address: str) -> None:
    """None is left out; the wall, the lid that falls, the edge and the dust are in sight on a phone."""
    piece = find("sloping-lid-box")
    says = [one.say for one in reckon(piece, piece.example.givens, Bench()).cautions]
    cautions = box(page, address).locator(".answers > .cautions")
    expect(cautions.locator("li:visible")).to_have_count(4)
    for word in ("wall", "falls", "sharp", "dust"):
        expect(cautions.locator("li:visible", has_text=word)).to_have_count(1)
    cautions.locator("summary", has_text=f"{len(says) - 4} more to mind").tap()
    expect(cautions.locator("li:visible")).to_have_count(len(says))
    for say, shown in zip(says, cautions.locator("li").all(), strict=True):
        expect(shown).to_contain_text(say)


def test_all_cautions_are_printed(page: Page, address: str) -> None:
    """The fold opens for the printer."""
    box(page, address).emulate_media(media="print")
    page.evaluate("dispatchEvent(new Event('beforeprint'))")
    expect(page.locator(".answers > .cautions li:visible")).to_have_count(
        page.locator(".answers > .cautions li").count()
    )
