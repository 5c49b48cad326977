"""The page without its host: kept whole, said truly, changed over only when asked. In a folder inside a host's."""

import hashlib
import re
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from elsewhere import built, changed, copied
from make import browser
from make.host import serving
from make.timing import asleep
from playwright.sync_api import BrowserContext, Page, Playwright, expect, sync_playwright

FOLDER = "deep/shop/"
SOON = 60_000
CAME = "() => performance.getEntriesByType('navigation')[0].workerFinalSourceType"
"""Where the page came from by a static route (Service Workers, "Resource timing of static routes")."""
OPENS = "async () => (await caches.keys()).filter((name) => name.startsWith('tenpenny opens '))"
INTERPRETER = """() => performance.getEntriesByType("resource")
  .filter(({ name }) => name.endsWith(".wasm"))
  .map(({ workerStart, transferSize }) => [workerStart > 0, transferSize])"""


@pytest.fixture(scope="module")
def releases(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    """This release, and a later one in which the slope's rise has another name."""
    copy = copied(tmp_path_factory.mktemp("project"))
    now = built(copy).rename(copy / "now")
    changed(copy, "calc/sums/slope.py", 'label="Rise"', 'label="Height gained"')
    return now, built(copy)


@pytest.fixture
def home(releases: tuple[Path, Path], tmp_path: Path) -> Path:
    """A host's folder with this release in a folder inside it."""
    shutil.copytree(releases[0], tmp_path / "host" / FOLDER)
    shutil.copy(releases[0] / "index.html", tmp_path / "host" / "index.html")
    return tmp_path / "host"


@pytest.fixture(scope="module")
def playwright() -> Iterator[Playwright]:
    """Playwright, started once."""
    with sync_playwright() as started:
        yield started


@pytest.fixture
def context(playwright: Playwright, tmp_path: Path) -> Iterator[BrowserContext]:
    """A phone-sized browser that keeps what it is given, and has been nowhere."""
    kept = playwright.chromium.launch_persistent_context(
        tmp_path / "profile",
        executable_path=browser.executable(),
        args=list(browser.ARGUMENTS),
        viewport={"width": 360, "height": 740},
    )
    yield kept
    kept.close()


class Faults(list[str]):
    """What the console said was wrong."""

    def watch(self, page: Page) -> Page:
        """Listen to a page."""
        page.on("console", lambda told: self.append(told.text) if told.type == "error" else None)
        page.on("pageerror", lambda fault: self.append(str(fault)))
        return page


@pytest.fixture
def faults() -> Iterator[Faults]:
    """Nothing may go wrong unnoticed."""
    found = Faults()
    yield found
    assert found == []


def opened(context: BrowserContext, faults: Faults, address: str) -> Page:
    """A page opened, with Python awake."""
    page = faults.watch(context.new_page())
    page.goto(address)
    awake(page)
    return page


def awake(page: Page) -> None:
    """Wait until Python is."""
    expect(page.locator(".status.ready")).to_be_visible(timeout=SOON)


def kept_whole(page: Page) -> None:
    """Wait until the page says so."""
    expect(page.locator(".status .offline")).to_have_text("works offline", timeout=SOON)


def rises_to(page: Page, rise: str, angle: str) -> None:
    """Type a rise and wait for the angle."""
    page.locator("#f-rise").fill(rise)
    expect(page.locator("#a-angle .figure")).to_have_text(angle, timeout=SOON)


def kept_files(page: Page) -> list[str]:
    """What is kept, by its hash; and the list of it."""
    return page.evaluate(
        "async () => (await (await caches.open('tenpenny /deep/shop/')).keys()).map(({ url }) => url.split('/').pop())"
    )


def hashes(release: Path) -> set[str]:
    """The SHA-256 of every file that is to be kept."""
    found = (file for file in release.rglob("*") if file.is_file() and file.name != "sw.js")
    return {hashlib.sha256(file.read_bytes()).hexdigest() for file in found}


def test_the_second_visit_needs_no_host(home: Path, context: BrowserContext, faults: Faults) -> None:
    """Every page opens and answers with the server stopped, under its plain name, a query or a fragment."""
    with serving(home) as address:
        page = opened(context, faults, f"{address}{FOLDER}slope.html")
        kept_whole(page)
        page.close()
    for name in ("", "slope.html", "index.html?from=home", "slope.html?x=1#main"):
        page = opened(context, faults, f"{address}{FOLDER}{name}")
        kept_whole(page)
        if name.startswith("slope"):
            rises_to(page, "12 in", "45.0°")
        page.close()


def test_a_page_opens_while_the_service_worker_sleeps(home: Path, context: BrowserContext, faults: Faults) -> None:
    """From its copy, with nobody woken first and the server stopped; then all is as ever."""
    with serving(home) as address:
        page = opened(context, faults, f"{address}{FOLDER}slope.html")
        kept_whole(page)
    for name in ("", "slope.html", "slope.html#rise=6%20in"):
        page.close()
        asleep(context.new_page())
        page = opened(context, faults, f"{address}{FOLDER}{name}")
        assert page.evaluate(CAME) == "cache"
        expect(page.locator("link[rel=modulepreload]")).to_have_count(0)  # what is kept is not begun beside the paint
        kept_whole(page)


def test_a_copy_that_was_damaged_is_made_again(home: Path, context: BrowserContext, faults: Faults) -> None:
    """When another page is opened the next time."""
    with serving(home) as address:
        page = opened(context, faults, f"{address}{FOLDER}slope.html")
        kept_whole(page)
        [name] = page.evaluate(OPENS)
        page.evaluate(
            "async ([name, address]) => (await caches.open(name)).put(address, new Response('rubbish'))",
            [name, f"{address}{FOLDER}slope.html"],
        )
    page.close()
    asleep(context.new_page())
    page = opened(context, faults, f"{address}{FOLDER}")
    kept_whole(page)
    page.close()
    asleep(context.new_page())
    page = opened(context, faults, f"{address}{FOLDER}slope.html")
    assert page.evaluate(CAME) == "cache"
    rises_to(page, "12 in", "45.0°")


def test_a_reload_asks_the_host_for_nothing_but_the_service_worker(
    home: Path, context: BrowserContext, faults: Faults
) -> None:
    """Nothing that is kept is fetched again."""
    asked: list[str] = []
    with serving(home, heard=asked.append) as address:
        page = opened(context, faults, f"{address}{FOLDER}slope.html")
        kept_whole(page)
        asked.clear()
        page.reload()
        awake(page)
        kept_whole(page)
    assert set(asked) <= {f"/{FOLDER}sw.js"}


def test_the_interpreter_is_fetched_by_its_own_name(home: Path, context: BrowserContext, faults: Faults) -> None:
    """Beside that name the browser keeps what it compiled; taken from the store directly it is compiled anew."""
    with serving(home) as address:
        page = opened(context, faults, f"{address}{FOLDER}slope.html")
        kept_whole(page)
    page.reload()
    awake(page)
    assert page.workers[0].evaluate(INTERPRETER) == [[True, 0]]


def test_a_later_release_waits_for_a_yes(
    releases: tuple[Path, Path], home: Path, context: BrowserContext, faults: Faults
) -> None:
    """It is offered when it is whole; until the yes the old page goes on; what is typed is there after it."""
    with serving(home) as address:
        page = opened(context, faults, f"{address}{FOLDER}slope.html")
        kept_whole(page)
        before = set(kept_files(page))
        shutil.rmtree(home / FOLDER)
        shutil.copytree(releases[1], home / FOLDER)
        page.reload()
        rises_to(page, "6 in", "26.6°")
        expect(page.get_by_role("button", name="Change over")).to_be_visible(timeout=SOON)
        assert before < set(kept_files(page)), "the old release stays whole while the new one waits"
        expect(page.locator("label[for=f-rise]")).to_have_text("Rise")
    page.locator("#f-rise").fill("12 in")
    page.get_by_role("button", name="Change over").click()
    expect(page.locator("label[for=f-rise]")).to_have_text("Height gained", timeout=SOON)
    expect(page.locator("#f-rise")).to_have_value("12 in")
    awake(page)
    kept_whole(page)
    expect(page.locator("#a-angle .figure")).to_have_text("45.0°", timeout=SOON)
    assert set(kept_files(page)) == {"list", *hashes(releases[1])}
    assert len(page.evaluate(OPENS)) == 1, "what the old release was opened with is gone"
    page.close()
    asleep(context.new_page())
    page = opened(context, faults, f"{address}{FOLDER}slope.html")
    expect(page.locator("label[for=f-rise]")).to_have_text("Height gained")
    assert page.evaluate(CAME) == "cache"


def test_it_does_not_say_whole_while_a_file_is_missing(home: Path, context: BrowserContext, faults: Faults) -> None:
    """A file that cannot be had is said, and had as soon as it can be."""
    hidden = (home / FOLDER / "licences.txt").rename(home / "licences.txt")
    with serving(home) as address:
        page = faults.watch(context.new_page())
        page.goto(f"{address}{FOLDER}slope.html")
        expect(page.locator(".status .offline")).to_have_text(re.compile("Not everything"), timeout=SOON)
        hidden.rename(home / FOLDER / "licences.txt")
        kept_whole(page)
    assert all("404" in fault for fault in faults)
    faults.clear()


def test_a_damaged_file_is_mended(home: Path, context: BrowserContext, faults: Faults) -> None:
    """Python whose library was damaged on this device is fetched again, and answers."""
    with serving(home) as address:
        page = opened(context, faults, f"{address}{FOLDER}slope.html")
        kept_whole(page)
        page.evaluate(
            """async () => {
              const cache = await caches.open("tenpenny /deep/shop/");
              const { files } = await (await cache.match(new URL("kept/list", location.href))).json();
              const { hash } = files.find(({ url }) => url.startsWith("python/lib"));
              await cache.put(new URL(`kept/${hash}`, location.href), new Response("rubbish"));
            }"""
        )
        page.reload()
        awake(page)
        rises_to(page, "12 in", "45.0°")
    assert not [fault for fault in faults if "Content Security Policy" in fault]
    faults.clear()


def test_a_worker_that_dies_is_replaced(home: Path, context: BrowserContext, faults: Faults) -> None:
    """The question that was open is asked again, and answered."""
    with serving(home) as address:
        page = opened(context, faults, f"{address}{FOLDER}slope.html")
        rises_to(page, "6 in", "26.6°")
        page.workers[0].evaluate("setTimeout(() => self.close(), 50) && 1")
        page.wait_for_timeout(500)
        rises_to(page, "12 in", "45.0°")


def test_a_page_that_is_not_here_says_so(home: Path, context: BrowserContext) -> None:
    """Offline before everything was fetched: a sentence instead of a blank page."""
    hidden = (home / FOLDER / "slope.html").rename(home / "slope.html")
    with serving(home) as address:
        page = context.new_page()
        page.goto(f"{address}{FOLDER}")
        expect(page.locator(".status .offline")).to_have_text(re.compile("Not everything"), timeout=SOON)
    page.goto(f"{address}{FOLDER}{hidden.name}")
    expect(page.locator("body")).to_contain_text("not on this device yet")
