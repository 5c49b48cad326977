"""How soon something to read is painted, on a page that is kept and opened after a while: its service worker sleeps."""

from statistics import median

from playwright.sync_api import Browser, BrowserContext

from make import slow
from make.timing import Rival, asleep, first_answer, settled, visitor

TIMES = 9
READING = "first-contentful-paint"


def measure(chromium: Browser, host: str, rival: Rival, rates: tuple[int, ...]) -> dict[str, dict[str, int]]:
    """Milliseconds from navigation, for each rate by turns: in the middle, and of the quarter that came soonest."""
    found: dict[int, list[float]] = {rate: [] for rate in rates}
    with visitor(chromium) as someone:
        with settled(someone, rival) as page:
            first_answer(page, host, rival, keep=True)
        for rate in rates * TIMES:
            found[rate].append(_painted(someone, host, rival, rate))
    return {f"{rate}x": _told(sorted(times)) for rate, times in found.items()}


def _painted(someone: BrowserContext, host: str, rival: Rival, rate: int) -> float:
    with settled(someone, rival) as page:
        asleep(page)
        with slow.slowed(rate):
            return first_answer(page, host, rival).steps[READING]


def _told(times: list[float]) -> dict[str, int]:
    return {"median ms": round(median(times)), "quarter ms": round(times[len(times) // 4])}
