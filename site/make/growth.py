"""What more sums cost: the same project with dummies beside its own, built and timed against the one that it is."""

import os
import shutil
import subprocess
import sys
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory

from playwright.sync_api import Browser, sync_playwright

from make import browser
from make.host import serving
from make.places import CACHE, ROOT
from make.said import say
from make.timing import FIGURE, Rival, first_answer, settled, visitor

SIZES = (0, 50, 200, 800)
LEFT = shutil.ignore_patterns(".git", ".venv", ".cache", "node_modules", "dist", "__pycache__")
BUILD = """
import sys
from pathlib import Path
sys.path[:0] = ["site", "."]
from make import dist
dist.build(Path("dist"))
"""


def measure(runs: int) -> int:
    """Print, for each number of dummies, a first visit's bytes and the time to the first answer when kept."""
    browser.ready()
    with TemporaryDirectory() as place:
        for dummies in SIZES:
            _built(Path(place), dummies)
        with _page(Path(place)) as (chromium, host, asked):
            times = _times(chromium, host, runs)
            for dummies in SIZES:
                asked.clear()
                with visitor(chromium) as stranger, settled(stranger, _rival(dummies)) as page:
                    first_answer(page, host, _rival(dummies))
                    files = {Path(place) / path.split("?")[0].lstrip("/") for path in asked}
                weighed = sum(len(zlib.compress(file.read_bytes(), 9)) for file in files if file.is_file())
                took = median(times[dummies])
                ratio = took / median(times[SIZES[0]])
                say(f"{dummies:>4} more: {took:>5.0f} ms, {ratio:.2f}; {weighed:,} bytes deflated")
    return 0


def _built(place: Path, dummies: int) -> None:
    """The project with so many dummies, built into a folder named by their number."""
    say(f"Building with {dummies} more sums ...")
    copy = place / "copy"
    shutil.copytree(ROOT, copy, ignore=LEFT)
    (copy / "site" / "node_modules").symlink_to(ROOT / "site" / "node_modules")
    (copy / ".cache").symlink_to(CACHE)
    text = (ROOT / "calc" / "sums" / "slope.py").read_text("utf-8")
    for number in range(dummies):
        own = text.replace('id="slope"', f'id="dummy-{number}"').replace('title="Slope"', f'title="Dummy {number}"')
        (copy / "calc" / "sums" / f"dummy_{number}.py").write_text(own, "utf-8")
    subprocess.run([sys.executable, "-c", BUILD], cwd=copy, env={**os.environ, "PYTHONPATH": ""}, check=True)
    (copy / "dist").rename(place / f"with-{dummies}")
    shutil.rmtree(copy)


def _rival(dummies: int) -> Rival:
    path = f"with-{dummies}/slope.html#rise=6%20in&run=1%20ft"
    return Rival(f"with {dummies}", path, FIGURE, "26.6°", ".offline >> text=works offline")


@contextmanager
def _page(folder: Path) -> Iterator[tuple[Browser, str, list[str]]]:
    asked: list[str] = []
    shutil.copy(folder / f"with-{SIZES[0]}" / "index.html", folder / "index.html")
    arguments = list(browser.ARGUMENTS)
    with (
        serving(folder, heard=asked.append) as host,
        sync_playwright() as playwright,
        playwright.chromium.launch(executable_path=browser.executable(), args=arguments) as chromium,
    ):
        yield chromium, host, asked


def _times(chromium: Browser, host: str, runs: int) -> dict[int, list[float]]:
    """Milliseconds to the first answer of a kept page, interleaved."""
    warm = {dummies: visitor(chromium) for dummies in SIZES}
    for dummies, someone in warm.items():
        with settled(someone, _rival(dummies)) as page:
            first_answer(page, host, _rival(dummies), keep=True)
    times: dict[int, list[float]] = {dummies: [] for dummies in SIZES}
    for _ in range(runs + 1):
        for dummies, someone in warm.items():
            with settled(someone, _rival(dummies)) as page:
                times[dummies].append(first_answer(page, host, _rival(dummies)).took)
    return {dummies: each[1:] for dummies, each in times.items()}
