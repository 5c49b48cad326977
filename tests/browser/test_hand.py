"""The page in the hand: drawing, keys, fields and answers are one thing, and nothing moves under the thumb."""

import re

from playwright.sync_api import Page, expect
from walking import ANGLE, SOON, opened


def test_touching_a_dimension_takes_its_field_in_hand(page: Page, address: str) -> None:
    """Its text is selected, so that typing takes its place, and the dimension stands out."""
    opened(page, address, "slope.html").locator(".drawing [data-name=rise] .touch").tap()
    expect(page.locator("#f-rise")).to_be_focused()
    expect(page.locator(".drawing [data-name=rise]")).to_have_class(re.compile("held"))
    page.keyboard.type("12 in")
    expect(page.locator("#f-rise")).to_have_value("12 in")
    expect(page.locator(ANGLE)).to_have_text("45.0°", timeout=SOON)


def test_our_keys_leave_the_caret_and_count_marks(page: Page, address: str) -> None:
    """Five and three touches of an eighth, on to the next field, and a unit."""
    opened(page, address, "slope.html").locator("#f-rise").tap()
    page.keyboard.type("5")
    for _ in range(3):
        page.get_by_role("button", name="add ⅛").tap()
    expect(page.locator("#f-rise")).to_have_value("5 3/8")
    expect(page.locator("#f-rise")).to_be_focused()
    page.get_by_role("button", name="next field").tap()
    expect(page.locator("#f-run")).to_be_focused()
    page.keyboard.type("30")
    page.get_by_role("button", name="cm", exact=True).tap()
    expect(page.locator("#f-run")).to_have_value("30 cm")


def test_the_answer_stands_over_the_keys_while_one_types(page: Page, address: str) -> None:
    """Its name and its figure, as they are lower down."""
    opened(page, address, "slope.html").locator("#f-rise").tap()
    page.keyboard.type("12 in")
    expect(page.locator(".keys .glance strong")).to_have_text("45.0°", timeout=SOON)
    expect(page.locator(".keys .glance")).to_contain_text("Angle")
    expect(page.locator(".keys .glance")).to_be_in_viewport()


def test_the_keys_of_a_row_stand_level(page: Page, address: str) -> None:
    """Those that count marks with the others, all of one height."""
    opened(page, address, "slope.html").locator("#f-rise").tap()
    expect(page.locator(".keyrow")).to_have_count(2)
    for row in page.locator(".keyrow").all():
        stands = [key.bounding_box() or {} for key in row.locator(".key").all()]
        assert len(stands) > 1
        assert len({(one["y"], one["height"]) for one in stands}) == 1


def test_of_any_two_the_last_two_count_and_the_third_comes_back(page: Page, address: str) -> None:
    """The one typed first is answered in its place, and can be had again."""
    opened(page, address, "slope.html").locator("#f-rise").fill("5 in")
    page.locator("#f-run").fill("12 in")
    page.locator("#f-angle").fill("45")
    expect(page.locator("#f-rise")).to_have_attribute("placeholder", "12 in", timeout=SOON)
    expect(page.locator("#r-rise")).to_have_text("answered ")
    page.get_by_role("button", name="Use it").click()
    expect(page.locator("#f-rise")).to_have_value("5 in")
    expect(page.locator("#f-run")).to_have_attribute("placeholder", "5 in", timeout=SOON)


def test_a_refusal_stands_beside_its_field_and_the_old_answer_says_so(page: Page, address: str) -> None:
    """Which field, what is wrong, what to type instead; gone as soon as it is put right."""
    opened(page, address, "slope.html").locator("#f-rise").fill("3 in")
    page.locator("#f-run").fill("1 f")
    expect(page.locator("#n-run")).to_contain_text("“1 f” has “f” for a unit; use in, ft", timeout=SOON)
    expect(page.locator("#f-run")).to_have_attribute("aria-invalid", "true")
    expect(page.locator(".answers.refused .standing")).to_contain_text("before the last change")
    page.locator("#f-run").press_sequentially("t")
    expect(page.locator(".answers.now")).to_be_visible(timeout=SOON)
    expect(page.locator("#f-run")).not_to_have_attribute("aria-invalid", "true")


def test_half_an_example_is_told_of(page: Page, address: str) -> None:
    """What is still the example's is named beside the fields and beside the answer."""
    opened(page, address, "slope.html").locator("#f-rise").fill("5 in")
    expect(page.locator(".story")).to_have_text("Still using the example’s run.")
    expect(page.locator(".standing")).to_contain_text("with the example’s numbers")
    page.locator("#f-run").fill("12 in")
    expect(page.locator(".story")).to_be_empty()


def test_nothing_above_the_answers_moves_while_they_arrive(page: Page, address: str) -> None:
    """A steep slope is drawn on the sheet that a flat one had, and the fields stay where they were."""
    opened(page, address, "slope.html")
    places = "[...document.querySelectorAll('.fields .line, #answers-title')].map((one) => one.offsetTop)"
    page.locator("#f-rise").fill("3 in")
    page.locator("#f-run").fill("12 in")
    expect(page.locator(ANGLE)).to_have_text("14.0°", timeout=SOON)
    before = page.evaluate(places)
    for rise, angle in (("12 in", "45.0°"), ("9 ft 11 15/16 in", "84.3°"), ("1/16 in", "0.3°")):
        page.locator("#f-rise").fill(rise)
        expect(page.locator(ANGLE)).to_have_text(angle, timeout=SOON)
        assert page.evaluate(places) == before


def test_the_rule_in_hand_decides_how_answers_read(page: Page, address: str) -> None:
    """Settings are one touch from every page, change every answer, and are there next time."""
    opened(page, address, "slope.html").locator(".house .rule").tap()
    page.locator("#settings label", has_text="half mm").tap()
    page.get_by_role("button", name="Done").tap()
    expect(page.locator("#a-length .measure").first).to_have_text("314 mm", timeout=SOON)
    page.reload()
    expect(page.locator(".house .rule")).to_contain_text("half mm")
    expect(page.locator("#a-length .measure").first).to_have_text("314 mm", timeout=SOON)


def test_rows_come_and_go(page: Page, address: str) -> None:
    """A row added is in hand at once; one taken away takes its board with it, wherever one goes next."""
    opened(page, address, "board-measure.html")
    rows = page.locator(".row")
    before = rows.count()
    page.get_by_role("button", name="Add a row").click()
    expect(rows).to_have_count(before + 1)
    expect(rows.last.locator("input").first).to_be_focused()
    page.locator(".house .name").evaluate("(link) => link.click()")
    page.go_back()
    expect(rows).to_have_count(before + 1)
    page.get_by_role("button", name=f"take away row {before + 1}").click()
    expect(rows).to_have_count(before)
    expect(page.locator(".answers.now")).to_be_visible(timeout=SOON)
