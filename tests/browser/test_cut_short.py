"""A page that is gone before its store has written: what was entered last is there again, and nothing stands twice."""

import pytest
from playwright.sync_api import Page, expect
from walking import SOON, box, opened, recorded

SLOW = """{
  const own = IDBDatabase.prototype.transaction;
  const never = { objectStore: () => ({ get: () => ({}), put: () => ({}) }) };
  IDBDatabase.prototype.transaction = function (names, mode, options) {
    return globalThis.slow && mode === "readwrite" ? never : own.call(this, names, mode, options);
  };
}"""
LID = "[name='cut:lid_long']"


def stop_writing(page: Page) -> None:
    """From now on the store takes everything and writes nothing, as when the page goes first."""
    page.evaluate("() => void (globalThis.slow = true)")


@pytest.fixture
def slow(page: Page, address: str) -> Page:
    """The box on a page whose store can be made to fall behind."""
    page.add_init_script(SLOW)
    return box(page, address)


def again(page: Page) -> Page:
    """The page opened once more, with a store that writes."""
    page.reload()
    expect(page.locator(".status.ready")).to_be_visible(timeout=SOON)
    expect(page.locator(".answers.now")).to_be_visible(timeout=SOON)
    return page


def one_piece(page: Page) -> None:
    """No copy was made."""
    expect(page.locator(".shelf summary, summary").filter(has_text="Your pieces")).to_contain_text("1")


def test_many_entries_of_which_the_store_has_the_first(slow: Page) -> None:
    """Each was typed over the one before; the last of them stands, whatever the store had come to."""
    recorded(slow, "lid_long", "7 in")
    expect(slow.locator(".undo").first).to_be_visible()
    slow.wait_for_timeout(300)
    stop_writing(slow)
    recorded(slow, "lid_wide", "9 1/2 in")
    recorded(slow, "back_wide", "8 1/2 in")
    again(slow)
    for name in ("lid_long", "lid_wide", "back_wide"):
        expect(slow.locator(f"#a-{name}.cut")).to_be_visible(timeout=SOON)
    one_piece(slow)
    recorded(slow, "lid_long", "7 1/8 in")
    one_piece(slow)


def test_the_first_entry_of_all(slow: Page) -> None:
    """The piece that was begun is the one that opens."""
    stop_writing(slow)
    recorded(slow, "lid_long", "7 in")
    again(slow)
    expect(slow.locator(LID)).to_have_value("7 in", timeout=SOON)
    one_piece(slow)


def test_what_another_tab_did_meanwhile_is_kept_as_well(slow: Page, address: str) -> None:
    """Both stand, each as a piece of its own."""
    recorded(slow, "lid_long", "7 in")
    slow.wait_for_timeout(300)
    other = opened(slow.context.new_page(), address, "sloping-lid-box.html")
    expect(other.locator("#a-lid_long.cut")).to_be_visible(timeout=SOON)
    stop_writing(slow)
    recorded(slow, "lid_wide", "9 1/2 in")
    recorded(other, "back_wide", "8 1/2 in")
    other.wait_for_timeout(300)
    other.close()
    expect(again(slow).locator("#a-back_wide.cut, #a-lid_wide.cut").first).to_be_visible(timeout=SOON)
    slow.get_by_text("Your pieces").tap()
    expect(slow.locator(".shelf li")).to_have_count(2, timeout=SOON)
