"""The page as built from this source, served, and a phone to hold it in."""

from collections.abc import Iterator

import pytest
from make import browser, dist
from make.host import serving
from playwright.sync_api import Browser, Page, expect, sync_playwright


@pytest.fixture(scope="session")
def address(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """Where the page is served."""
    folder = tmp_path_factory.mktemp("page") / "dist"
    dist.build(folder)
    with serving(folder) as found:
        yield found


@pytest.fixture(scope="module")
def chromium() -> Iterator[Browser]:
    """One browser for the tests of a file."""
    with sync_playwright() as playwright:
        yield playwright.chromium.launch(executable_path=browser.executable(), args=list(browser.ARGUMENTS))


@pytest.fixture
def page(chromium: Browser) -> Iterator[Page]:
    """A phone that has been nowhere; at the end its console may hold no error, nor any refusal by the policy."""
    yield from _phone(chromium)


@pytest.fixture(scope="module")
def shop(chromium: Browser, address: str) -> Iterator[Page]:
    """A phone on which Python is awake, to walk from page to page without leaving."""
    for found in _phone(chromium):
        found.goto(address)
        expect(found.locator(".status.ready")).to_be_visible(timeout=60_000)
        yield found


def _phone(chromium: Browser) -> Iterator[Page]:
    context = chromium.new_context(
        viewport={"width": 360, "height": 740}, has_touch=True, is_mobile=True, service_workers="block"
    )
    found, faults = context.new_page(), list[str]()
    found.on("console", lambda told: faults.append(told.text) if told.type == "error" else None)
    found.on("pageerror", lambda fault: faults.append(str(fault)))
    yield found
    found.unroute_all(behavior="ignoreErrors")
    context.close()
    assert faults == []
