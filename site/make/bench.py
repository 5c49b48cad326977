"""The bench: how soon the first answer is there, against bare Pyodide on the same host; bytes, keystrokes, memory.

Everything is interleaved and given as a median, so that a busy machine slows all alike; the ratio is the finding.
"""

import json
from pathlib import Path
from statistics import median
from typing import Any

from playwright.sync_api import Browser, Playwright, sync_playwright

from make import browser, memory, painting, rivals, settling, slow, timeline, typed
from make.host import serving
from make.places import CACHE
from make.said import say
from make.timing import BARE, OURS, Visit, first_answer, settled, spin, visitor

RATES = (1, 4)
BOTH = (OURS, BARE)
TIMES = 3
"""How often a page has been open before it is kept: what a browser compiled the second time it uses the third."""
Visits = dict[str, list[Visit]]


def measure(runs: int) -> int:
    """Measure everything, print a table, write .cache/bench.json and the timeline."""
    browser.ready()
    folder = rivals.host()
    asked: list[str] = []
    with serving(folder, heard=asked.append) as host, sync_playwright() as playwright:
        held = {rival.name: memory.peak(playwright.chromium, host, rival) for rival in BOTH}
        with _launched(playwright) as chromium:
            weighed = _bytes(chromium, host, folder, asked)
            visits, spins = _visits(chromium, host, runs)
            painted = painting.measure(chromium, host, OURS, RATES)
            entered = settling.measure(chromium, host)
            keystrokes = {f"{rate}x": typed.measure(chromium, host, rate) for rate in RATES}
    told: dict[str, Any] = {
        "first answer": _summary(visits),
        "first paint": painted,
        "slowed truly": _slowed(spins),
        "keystroke to answer": keystrokes,
        "entry to a settled piece": entered,
        "memory": held,
        "bytes": weighed,
    }
    (CACHE / "bench.json").write_text(json.dumps(told, indent=1), "utf-8")
    timeline.write(visits[f"kept, {RATES[0]}x, {OURS.name}"], told["first answer"][f"kept, {RATES[0]}x"]["bare ms"])
    _show(told)
    return 0


def _launched(playwright: Playwright) -> Browser:
    return playwright.chromium.launch(executable_path=browser.executable(), args=list(browser.ARGUMENTS))


def _visits(chromium: Browser, host: str, runs: int) -> tuple[Visits, dict[int, list[float]]]:
    warm = {rival.name: visitor(chromium) for rival in BOTH}
    for rival in BOTH * TIMES:
        with settled(warm[rival.name], rival) as page:
            first_answer(page, host, rival, keep=True)
    visits: Visits = {}
    spins: dict[int, list[float]] = {rate: [] for rate in RATES}
    for run in range(runs):
        say(f"Run {run + 1} of {runs} ...")
        for rate in RATES:
            for rival in BOTH if run % 2 else BOTH[::-1]:
                with visitor(chromium) as stranger:
                    for what, someone in (("kept", warm[rival.name]), ("first visit", stranger)):
                        with settled(someone, rival) as page, slow.slowed(rate):
                            visits.setdefault(f"{what}, {rate}x, {rival.name}", []).append(
                                first_answer(page, host, rival)
                            )
            spins[rate].append(spin(chromium, rate))
    return visits, spins


def _summary(visits: Visits) -> dict[str, Any]:
    middle = {what: median(one.took for one in each) for what, each in visits.items()}
    found = {}
    for what in (f"{visit}, {rate}x" for visit in ("first visit", "kept") for rate in RATES):
        ours, bare = (middle[f"{what}, {rival.name}"] for rival in BOTH)
        found[what] = {"ours ms": round(ours), "bare ms": round(bare), "ratio": round(ours / bare, 2)}
    return found


def _slowed(spins: dict[int, list[float]]) -> float:
    return round(median(spins[RATES[1]]) / median(spins[RATES[0]]), 1)


def _bytes(chromium: Browser, host: str, folder: Path, asked: list[str]) -> dict[str, dict[str, int]]:
    """What a first visit fetches, each file once: as it lies there, and as brotli and gzip make it."""
    found = {}
    for rival, keep in ((OURS, False), (OURS, True), (BARE, False)):
        asked.clear()
        with visitor(chromium) as stranger:
            first_answer(settled(stranger, rival), host, rival, keep=keep)
        files = {folder / path.split("?")[0].lstrip("/") for path in asked}
        until = "until all is kept" if keep else "to the first answer"
        found[f"{rival.name}, {until}"] = {ending or "raw": _weigh(files, ending) for ending in ("", ".br", ".gz")}
    return found


def _weigh(files: set[Path], ending: str) -> int:
    """Bytes of some files, as compressed beside them with this ending where they are."""
    small = {file: file.with_name(file.name + ending) for file in files if file.is_file()}
    return sum((packed if packed.exists() else file).stat().st_size for file, packed in small.items())


def _show(found: dict[str, Any]) -> None:
    say("\nFirst answer, median ms      ours    bare   ratio")
    for what, row in found["first answer"].items():
        say(f"  {what:<24} {row['ours ms']:>7} {row['bare ms']:>7} {row['ratio']:>7}")
    say(f"  (at 4x a worker was slowed {found['slowed truly']} times)")
    bare = {rate: found["first answer"][f"kept, {rate}x"]["bare ms"] for rate in RATES}
    for rate, row in zip(RATES, found["first paint"].values(), strict=True):
        say(f"First paint, kept, {rate}x: median {row['median ms']} ms, {_of(row['median ms'], bare[rate])}")
        say(f"  the soonest quarter within {row['quarter ms']} ms")
    for rate, row in zip(RATES, found["keystroke to answer"].values(), strict=True):
        say(f"Keystroke to answer, every sum, {rate}x: median {row['median ms']} ms, p95 {row['p95 ms']} ms")
        say(f"  p95 is {_of(row['p95 ms'], bare[rate])}")
        say(f"  slowest, {row['slowest']}: median {row['slowest median ms']} ms")
    for name, row in found["entry to a settled piece"].items():
        say(f"Entry to a settled {name}: {row['median ms']} ms, longest {row['longest ms']}, drawn {row['drawn ms']}")
    for name, held in found["memory"].items():
        say(f"Memory of the page's process at most, {name}: {f'{held / 1e6:.0f} MB' if held else 'not told here'}")
    for name, row in found["bytes"].items():
        say(f"First visit, {name}: {row['.br']:,} bytes as brotli, {row['.gz']:,} as gzip, {row['raw']:,} as they are")


def _of(time: float, bare: float) -> str:
    """A time as a share of what bare Pyodide takes at that rate, which is a yardstick of how quick the machine is."""
    return f"{100 * time / bare:.1f} in 100 of bare Pyodide, kept"
