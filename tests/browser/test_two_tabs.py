"""Two tabs with one piece: what is entered in both within a second is kept, and the tab that steps aside says so."""

from typing import Any

import pytest
from playwright.sync_api import Page, expect
from walking import SOON, box, recorded

KEPT = """() => new Promise((go) => {
  const ask = indexedDB.open("tenpenny");
  ask.onsuccess = () => {
    const kept = ask.result.transaction("kept").objectStore("kept").getAll();
    kept.onsuccess = () => go(kept.result.filter((one) => one && one.record && one.pending));
  };
})"""
ENTERED = """([name, text]) => {
  const field = document.querySelector(`[name="${name}"]`);
  field.value = text;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  field.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true }));
}"""


def texts(piece: dict[str, Any]) -> set[str]:
    """All that was entered in a piece, taken up or waiting."""
    return {one["text"] for one in piece["record"]["entries"] + piece["pending"]}


@pytest.mark.parametrize("gap", [0, 60, 400, 900])
def test_nothing_entered_in_two_tabs_is_lost(page: Page, address: str, gap: int) -> None:
    """A cut in one, two givens in the other: all in one piece, or in one and one copy, of which a sentence tells."""
    recorded(box(page, address), "lid_long", "7 in")
    other = box(page.context.new_page(), address)
    expect(other.locator("#a-lid_long.cut")).to_be_visible(timeout=SOON)
    page.evaluate(ENTERED, ["cut:front_long", "7 1/4 in"])
    page.wait_for_timeout(gap)
    other.evaluate(ENTERED, ["depth", "6 1/16 in"])
    other.evaluate(ENTERED, ["price", "8.75"])
    for tab in (page, other):
        expect(tab.locator(".answers.now")).to_be_visible(timeout=SOON)
    expect(other.locator(".notice")).to_be_visible(timeout=SOON)
    page.wait_for_timeout(500)
    found = [texts(one) for one in page.evaluate(KEPT)]
    mine, theirs = {"7 in", "7 1/4 in"}, {"7 in", "6 1/16 in", "8.75"}
    told = [tab.locator(".notice").all_inner_texts() for tab in (page, other)]
    if len(found) == 1:
        assert found[0] >= mine | theirs
        assert told[1] == ["Changed in another tab."]
    else:
        assert len(found) == 2
        assert any(one >= mine for one in found)
        assert any(one >= theirs for one in found)
        assert any("Both are kept" in "".join(one) for one in told)


def test_two_tabs_that_begin_at_once_begin_two_pieces(page: Page, address: str) -> None:
    """Neither has been kept before, so each is a piece of its own, and both are listed."""
    other = box(page.context.new_page(), address)
    box(page, address).evaluate(ENTERED, ["depth", "6 in"])
    other.evaluate(ENTERED, ["depth", "7 in"])
    for tab in (page, other):
        expect(tab.locator(".answers.now")).to_be_visible(timeout=SOON)
        expect(tab.locator(".shelf .kept-pieces li")).to_have_count(2, timeout=SOON)
    assert {"6 in", "7 in"} <= set.union(*map(texts, page.evaluate(KEPT)))
