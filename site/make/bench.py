"""The bench: how soon the first answer is there, against bare Pyodide on the same host; bytes; keystroke to answer.

Everything is interleaved and given as a median, so that a busy machine slows all alike; the ratio is the finding.
"""

import json
import math
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from statistics import median
from typing import Any

from playwright.sync_api import Browser, sync_playwright

from make import browser, rivals, slow
from make.host import serving
from make.places import CACHE
from make.said import say
from make.timing import BARE, OURS, Rival, first_answer, keystrokes, spin, visitor

RATES = (1, 4)
ENTRIES = [f"{eighths // 8} {eighths % 8}/8 in" if eighths % 8 else f"{eighths // 8} in" for eighths in range(8, 88)]
Times = dict[str, list[float]]


def measure(runs: int) -> int:
    """Measure everything, print a table, write .cache/bench.json."""
    browser.ready()
    folder = rivals.host()
    asked: list[str] = []
    with serving(folder, heard=asked.append) as host, _chromium() as chromium:
        bytes_first = _bytes(chromium, host, folder, asked)
        times = _times(chromium, host, runs)
        typed = {f"{rate}x": _typed(chromium, host, rate) for rate in RATES}
    found = {"first answer": _summary(times), "keystroke to answer": typed, "first visit": bytes_first}
    (CACHE / "bench.json").write_text(json.dumps({**found, "every run": times}, indent=1), "utf-8")
    _show(found)
    return 0


@contextmanager
def _chromium() -> Iterator[Browser]:
    with sync_playwright() as playwright:
        yield playwright.chromium.launch(executable_path=browser.executable(), args=list(browser.ARGUMENTS))


def _times(chromium: Browser, host: str, runs: int) -> Times:
    warm = {rival.name: visitor(chromium) for rival in (OURS, BARE)}
    for rival in (OURS, BARE) * 2:
        first_answer(warm[rival.name], host, rival, keep=True)
    times: Times = {}
    for run in range(runs):
        say(f"Run {run + 1} of {runs} ...")
        for rate in RATES:
            for rival in (OURS, BARE) if run % 2 else (BARE, OURS):
                with slow.slowed(rate):
                    _note(times, f"kept, {rate}x", rival, first_answer(warm[rival.name], host, rival))
                    _note(times, f"first visit, {rate}x", rival, _cold(chromium, host, rival))
            with slow.slowed(rate):
                times.setdefault(f"spin, {rate}x", []).append(spin(chromium))
    return times


def _cold(chromium: Browser, host: str, rival: Rival) -> float:
    with visitor(chromium) as stranger:
        return first_answer(stranger, host, rival)


def _note(times: Times, what: str, rival: Rival, took: float) -> None:
    times.setdefault(f"{what}, {rival.name}", []).append(took)


def _summary(times: Times) -> dict[str, Any]:
    middle = {what: median(each) for what, each in times.items()}
    found = {}
    for what in (f"{visit}, {rate}x" for visit in ("first visit", "kept") for rate in RATES):
        ours, bare = (middle[f"{what}, {rival.name}"] for rival in (OURS, BARE))
        found[what] = {"ours ms": round(ours), "bare ms": round(bare), "ratio": round(ours / bare, 2)}
    return {**found, "slowed truly": round(middle[f"spin, {RATES[1]}x"] / middle[f"spin, {RATES[0]}x"], 1)}


def _typed(chromium: Browser, host: str, rate: int) -> dict[str, int]:
    with visitor(chromium) as someone, slow.slowed(rate):
        times = sorted(keystrokes(someone, host, ENTRIES))
    return {"median ms": round(median(times)), "p95 ms": round(times[math.ceil(0.95 * len(times)) - 1])}


def _bytes(chromium: Browser, host: str, folder: Path, asked: list[str]) -> dict[str, dict[str, int]]:
    """What a first visit fetches, each file once: as it lies there, and as brotli and gzip make it."""
    found = {}
    for rival, keep in ((OURS, False), (OURS, True), (BARE, False)):
        asked.clear()
        with visitor(chromium) as stranger:
            first_answer(stranger, host, rival, keep=keep)
        files = {folder / path.split("?")[0].lstrip("/") for path in asked}
        until = "until all is kept" if keep else "to the first answer"
        found[f"{rival.name}, {until}"] = {ending or "raw": _weigh(files, ending) for ending in ("", ".br", ".gz")}
    return found


def _weigh(files: set[Path], ending: str) -> int:
    small = {file: file.with_name(file.name + ending) for file in files if file.is_file()}
    return sum((packed if packed.exists() else file).stat().st_size for file, packed in small.items())


def _show(found: dict[str, Any]) -> None:
    say("\nFirst answer, median ms      ours    bare   ratio")
    for what, row in found["first answer"].items():
        if isinstance(row, dict):
            say(f"  {what:<24} {row['ours ms']:>7} {row['bare ms']:>7} {row['ratio']:>7}")
    say(f"  (at 4x a worker was slowed {found['first answer']['slowed truly']} times)")
    for rate, row in found["keystroke to answer"].items():
        say(f"Keystroke to answer, {rate}: median {row['median ms']} ms, p95 {row['p95 ms']} ms")
    for name, row in found["first visit"].items():
        say(f"First visit, {name}: {row['.br']:,} bytes as brotli, {row['.gz']:,} as gzip, {row['raw']:,} as they are")
