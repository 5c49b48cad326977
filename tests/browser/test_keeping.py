"""What is typed is kept: before the page lives, over a reload, from sum to sum; what cannot be kept is said."""

from collections.abc import Callable

from playwright.sync_api import Page, Route, expect
from walking import ANGLE, SOON, opened

RESTLESS = """{
  const own = setTimeout;
  globalThis.setTimeout = (go, after, ...rest) => (after === 300 ? 0 : own(go, after, ...rest));
}"""


def held_back(page: Page) -> Callable[[], None]:
    """Keep the page's own code from arriving; the function lets it through."""
    waiting: list[Route] = []
    page.route("**/code/app-*.js", lambda route: waiting.append(route))

    def let_go() -> None:
        for route in waiting:
            route.continue_()
        page.unroute("**/code/app-*.js")

    return let_go


def test_typing_before_the_page_lives_is_kept_and_answered(page: Page, address: str) -> None:
    """The caret stays where it was, and the answer is to what was typed."""
    let_go = held_back(page)
    page.goto(f"{address}slope.html", wait_until="commit")
    page.locator("#f-rise").fill("7 1/2 in")
    page.locator("#f-run").fill("15 in")
    page.keyboard.press("ArrowLeft")
    let_go()
    expect(page.locator(ANGLE)).to_have_text("26.6°", timeout=SOON)
    expect(page.locator("#f-rise")).to_have_value("7 1/2 in")
    assert page.evaluate("document.activeElement.id + document.activeElement.selectionStart") == "f-run4"


def test_a_list_and_a_choice_before_the_page_lives_are_kept(page: Page, address: str) -> None:
    """A cell of a list and a touched choice count as typing."""
    let_go = held_back(page)
    page.goto(f"{address}board-measure.html", wait_until="commit")
    page.locator("[name='boards.0.count']").fill("5")
    page.locator("[name=rule][value=measured]").evaluate("(one) => one.click()")
    let_go()
    expect(page.locator(".status.ready")).to_be_visible(timeout=SOON)
    expect(page.locator("[name='boards.0.count']")).to_have_value("5")
    expect(page.locator("[name=rule][value=measured]")).to_be_checked()
    expect(page.locator(".story")).not_to_contain_text("boards")


def test_a_search_before_the_page_lives_is_kept(page: Page, address: str) -> None:
    """What was sought is found as soon as it can be."""
    let_go = held_back(page)
    page.goto(address, wait_until="commit")
    page.locator("#search").fill("how long a nai")
    let_go()
    expect(page.locator(".search .list strong").first).to_have_text("Nail")
    expect(page.locator("#search")).to_have_value("how long a nai")


def test_clearing_is_undone(page: Page, address: str) -> None:
    """Also after a reload."""
    opened(page, address, "slope.html").locator("#f-rise").fill("5 in")
    page.get_by_role("button", name="Clear", exact=True).click()
    expect(page.locator("#f-rise")).to_have_value("")
    page.reload()
    expect(page.locator(".status.ready")).to_be_visible(timeout=SOON)
    page.get_by_role("button", name="Undo clearing").click()
    expect(page.locator("#f-rise")).to_have_value("5 in")


def test_the_last_answer_is_there_before_python(page: Page, address: str) -> None:
    """After a reload, with Python kept away: what was typed and what it came to, said to be from last time."""
    opened(page, address, "slope.html").locator("#f-rise").fill("12 in")
    expect(page.locator(ANGLE)).to_have_text("45.0°", timeout=SOON)
    page.route("**/code/worker-*.js", lambda route: None)
    page.reload()
    expect(page.locator(ANGLE)).to_have_text("45.0°")
    expect(page.locator(".standing")).to_have_text("From last time.")
    page.goto(address)
    expect(page.locator(".recents")).to_contain_text("Slope")


def test_an_answer_is_kept_when_the_page_is_left_before_the_hand_has_rested(page: Page, address: str) -> None:
    """It is written down when nothing has been typed for a while, a moment that never comes here."""
    page.add_init_script(RESTLESS)
    opened(page, address, "slope.html").locator("#f-rise").fill("12 in")
    expect(page.locator(ANGLE)).to_have_text("45.0°", timeout=SOON)
    expect(page.locator(".working")).to_contain_text("45")
    assert page.evaluate("localStorage.getItem('tenpenny answer:slope')") is None
    page.route("**/code/worker-*.js", lambda route: None)
    page.reload()
    expect(page.locator(ANGLE)).to_have_text("45.0°")
    expect(page.locator(".standing")).to_have_text("From last time.")


def test_an_answer_goes_into_the_next_sum_and_can_be_taken_out_again(page: Page, address: str) -> None:
    """The link brings the angle; Python stays awake; a reload brings it no second time."""
    opened(page, address, "slope.html").locator("#f-rise").fill("12 in")
    expect(page.locator(ANGLE)).to_have_text("45.0°", timeout=SOON)
    page.locator(".carry a", has_text="Bevel").first.click()
    expect(page.locator("h1")).to_be_focused()
    expect(page.locator("h1")).to_have_text("Bevel gauge")
    expect(page.locator(".status.ready")).to_be_visible(timeout=1)
    expect(page.locator("#f-angle")).to_have_value("45")
    expect(page.locator("#r-angle")).to_contain_text("from Slope")
    page.locator("#f-angle").fill("30")
    page.reload()
    expect(page.locator("#f-angle")).to_have_value("30")
    page.get_by_role("button", name="Undo what came from Slope").click()
    expect(page.locator("#f-angle")).not_to_have_value("45")


def test_back_is_where_one_was(page: Page, address: str) -> None:
    """The page before, scrolled as it was."""
    opened(page, address, "slope.html").evaluate("scrollTo(0, 900)")
    page.locator(".house .name").evaluate("(link) => link.click()")
    expect(page.locator("h1")).to_have_text("Sums for the bench")
    assert page.evaluate("scrollY") == 0
    page.go_back()
    expect(page.locator("h1")).to_have_text("Slope")
    page.wait_for_function("scrollY === 900")


def test_the_look_is_on_before_the_first_paint(page: Page, address: str) -> None:
    """Full sun, chosen once, needs none of the page's own code."""
    opened(page, address, "slope.html").locator(".house .rule").tap()
    page.locator("#settings label", has_text="full sun").tap()
    held_back(page)
    page.reload(wait_until="commit")
    page.locator("h1").wait_for()
    assert page.evaluate("document.documentElement.dataset.look") == "sun"


def test_searching_needs_no_python(page: Page, address: str) -> None:
    """Results while typing, with Python kept away."""
    page.route("**/code/worker-*.js", lambda route: None)
    page.goto(address)
    page.locator("#search").fill("how long a nai")
    expect(page.locator(".search .list strong").first).to_have_text("Nail")
    page.locator("#search").fill("qqqq")
    expect(page.locator(".search .count")).to_contain_text("No sum here answers that yet")


def test_a_shut_store_is_said_and_the_page_goes_on(page: Page, address: str) -> None:
    """Without the browser's store answers come as ever."""
    page.add_init_script("Object.defineProperty(window, 'indexedDB', { get() { throw new Error('shut'); } })")
    opened(page, address, "slope.html").locator("#f-rise").fill("12 in")
    expect(page.locator(ANGLE)).to_have_text("45.0°", timeout=SOON)
    expect(page.locator(".foot")).to_contain_text("keeps nothing between visits")
