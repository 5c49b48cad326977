"""The page in WebKit, the engine of a phone's Safari: where its driver is installed, else not at all.

On Debian or Ubuntu: apt-get install webkit2gtk-driver xvfb.
"""

import shutil
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from make import dist
from make.host import serving

webdriver = pytest.importorskip("selenium.webdriver")
DRIVER = shutil.which("WebKitWebDriver")
BROWSERS = sorted(Path("/usr/lib").glob("*/webkit2gtk-4.*/MiniBrowser"))
ANSWER = "#answers.now #a-angle .figure"
LONGEST = 90  # seconds

pytestmark = [
    pytest.mark.skipif(not (DRIVER and BROWSERS), reason="no WebKit with a driver here"),
    pytest.mark.filterwarnings("ignore::DeprecationWarning"),  # the driver's own
]


@pytest.fixture
def webkit() -> Iterator[webdriver.WebKitGTK]:
    """A WebKit that is driven by its own driver."""
    options = webdriver.WebKitGTKOptions()
    options.binary_location = str(BROWSERS[0])
    options.add_argument("--automation")
    driver = webdriver.WebKitGTK(options=options, service=webdriver.WebKitGTKService(DRIVER))
    yield driver
    driver.quit()


def said(webkit: webdriver.WebKitGTK, where: str, wanted: str) -> str:
    """What stands at a place: what is wanted as soon as it is there, something else only at the end of patience."""
    end, text = time.monotonic() + LONGEST, ""
    while wanted not in text and time.monotonic() < end:
        text = " ".join(str(found.text) for found in webkit.find_elements("css selector", where))
        time.sleep(0.2)
    return text


def test_it_wakes_from_the_snapshot_and_answers(webkit: webdriver.WebKitGTK, tmp_path: Path) -> None:
    """The snapshot that was taken in Node is put back; nothing else is fetched in its place."""
    asked: list[str] = []
    dist.build(tmp_path / "dist")
    with serving(tmp_path / "dist", heard=asked.append) as host:
        webkit.get(f"{host}slope.html#rise=6%20in&run=1%20ft")
        assert said(webkit, ANSWER, "26.6°") == "26.6°"
    assert [path for path in asked if ".snapshot" in path]
    assert [path for path in asked if "python_stdlib" in path] == []


def test_it_answers_with_no_host_once_it_is_kept(webkit: webdriver.WebKitGTK, tmp_path: Path) -> None:
    """The host is stopped; the page opens again and Python answers."""
    dist.build(tmp_path / "dist")
    with serving(tmp_path / "dist") as host:
        webkit.get(f"{host}slope.html#rise=6%20in&run=1%20ft")
        assert "works offline" in said(webkit, ".offline", "works offline")
    webkit.get("about:blank")
    webkit.get(f"{host}slope.html#rise=3%20in&run=4%20in")
    assert said(webkit, ANSWER, "36.9°") == "36.9°"
