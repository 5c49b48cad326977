"""A piece in the hand: sizes recorded as cut, told, undone, kept, copied, deleted, to a file and back, on paper."""

from pathlib import Path

from playwright.sync_api import Page, expect
from walking import SOON, box, opened

LID = "[name='cut:lid_long']"


def cut(page: Page, text: str) -> None:
    """The lid recorded as it came out."""
    page.locator(LID).tap()
    page.keyboard.type(text)
    page.keyboard.press("Enter")
    expect(page.locator("#a-lid_long.cut")).to_be_visible(timeout=SOON)
    expect(page.locator(".part .changed")).to_be_visible(timeout=SOON)


def test_a_cut_is_recorded_told_kept_and_undone(page: Page, address: str) -> None:
    """The planned size is selected and typed over; what follows is named, marked and spoken; a reload keeps it."""
    cut(box(page, address), "7 in")
    expect(page.locator(".part .changed")).to_contain_text("Overhang at the front")
    expect(page.locator("#a-moving .said")).to_contain_text("▲ was 5 3/4 in", timeout=SOON)
    expect(page.locator("#page > p.spoken")).to_contain_text("Overhang at the front is now 1/4 in", timeout=SOON)
    page.reload()
    expect(page.locator(".status.ready")).to_be_visible(timeout=SOON)
    expect(page.locator(LID)).to_have_value("7 in")
    page.get_by_role("button", name="Undo: Lid down the slope, upper face cut, 7 in").first.click()
    expect(page.locator(LID)).to_have_value("7 1/4 in", timeout=SOON)
    expect(page.locator(".undo")).to_have_count(0)


def test_a_box_ticked_is_cut_as_drawn_and_unticked_is_open(page: Page, address: str) -> None:
    """Nothing else moves."""
    tick = box(page, address).locator("#a-lid_long .tick input")
    tick.check()
    expect(page.locator(".part .changed")).to_contain_text("Nothing else changes", timeout=SOON)
    tick.uncheck()
    expect(page.locator("#a-lid_long.cut")).to_have_count(0, timeout=SOON)


def test_what_cannot_be_read_is_refused_beside_the_size(page: Page, address: str) -> None:
    """The text stays where it was typed."""
    box(page, address).locator(LID).fill("7 inchs")
    page.locator(LID).press("Enter")
    expect(page.locator("#a-lid_long .said")).to_contain_text("inchs", timeout=SOON)
    expect(page.locator(LID)).to_have_value("7 inchs")


def test_a_number_says_why_how_true_and_what_would_make_it_another(page: Page, address: str) -> None:
    """The sheet opens from its name; Escape closes it, and the focus is back."""
    name = box(page, address).locator("#a-lid_wide .number-name")
    name.click()
    sheet = page.locator("#number")
    expect(sheet).to_contain_text("outside width + 2 × overhang at each side", timeout=SOON)
    expect(sheet).to_contain_text("A mark of misreading in each", timeout=SOON)
    sheet.locator("#wanted").fill("9 in")
    sheet.locator("#moved").select_option("inside_width")
    sheet.get_by_role("button", name="What must it be?").click()
    expect(sheet).to_contain_text("Inside width 7 1/4 in", timeout=SOON)
    page.keyboard.press("Escape")
    expect(name).to_be_focused()


def test_an_ordinary_sum_is_asked_backwards(page: Page, address: str) -> None:
    """And what was found is put in its field."""
    opened(page, address, "slope.html").locator("#a-angle .number-name").click()
    page.locator("#wanted").fill("45")
    page.locator("#moved").select_option("rise")
    page.get_by_role("button", name="What must it be?").click()
    page.get_by_role("button", name="Use 12 in").click(timeout=SOON)
    expect(page.locator("#f-rise")).to_have_value("12 in")


def test_a_piece_is_named_copied_deleted_and_had_back(page: Page, address: str) -> None:
    """All of it stands on the first page too."""
    box(page, address).locator("#f-title").fill("Card <b>box</b>")
    page.locator(".shelf summary").first.click()
    page.get_by_role("button", name="Copy", exact=True).click()
    expect(page.locator("#f-title")).to_have_value("Card <b>box</b> 2")
    expect(page.locator(".shelf .kept-pieces li")).to_have_count(2)
    page.locator(".house .name").click()
    expect(page.locator(".yours strong").first).to_have_text("Card <b>box</b> 2")
    page.get_by_role("button", name="Delete Card <b>box</b> 2").click()
    expect(page.locator(".yours > .kept-pieces li")).to_have_count(1)
    page.get_by_role("button", name="Undo deleting").click()
    expect(page.locator(".yours > .kept-pieces li")).to_have_count(2)


def test_a_piece_goes_to_a_file_and_comes_back(page: Page, address: str, tmp_path: Path) -> None:
    """Another piece, with the same cut; a damaged file and a newer one are refused with a sentence."""
    cut(box(page, address), "7 in")
    page.locator(".shelf summary").first.click()
    with page.expect_download() as saved:
        page.get_by_role("button", name="Save to a file").click()
    text = Path(saved.value.path()).read_text("utf-8")
    for broken, say in ((text[:-9], "damaged"), (text.replace('"version": 1', '"version": 9'), "newer Tenpenny")):
        (tmp_path / "piece.json").write_text(broken, "utf-8")
        page.locator(".from-file input").set_input_files(tmp_path / "piece.json")
        expect(page.locator(".notice")).to_contain_text(say, timeout=SOON)
    (tmp_path / "piece.json").write_text(text.replace('"title": ""', '"title": "From a file"'), "utf-8")
    page.locator(".from-file input").set_input_files(tmp_path / "piece.json")
    expect(page.locator("#f-title")).to_have_value("From a file", timeout=SOON)
    expect(page.locator(LID)).to_have_value("7 in", timeout=SOON)


def test_two_tabs_keep_both_their_work(page: Page, address: str) -> None:
    """What is done in one tab stands in the other; neither writes over it."""
    cut(box(page, address), "7 in")
    other = page.context.new_page()
    cut(box(other, address), "6 7/8 in")
    expect(page.locator(LID)).to_have_value("6 7/8 in", timeout=SOON)
    expect(page.locator(".notice")).to_have_text("Changed in another tab.")
    other.close()


def test_the_bench_sheet_has_boxes_order_buying_and_cautions(page: Page, address: str) -> None:
    """On paper nothing is wider than the sheet, and nothing that is only for the screen is there."""
    box(page, address).set_viewport_size({"width": 703, "height": 1000})
    page.emulate_media(media="print")
    page.evaluate("dispatchEvent(new Event('beforeprint'))")
    for wanted in (".size .tick input", "#a-order table", "#a-buy table", ".cautions", ".drawing"):
        expect(page.locator(wanted).first).to_be_visible()
    expect(page.locator(".givens")).to_be_hidden()
    assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0
