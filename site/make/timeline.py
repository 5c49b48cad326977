"""How the page starts, as a drawing: what has been reached when, from the browser's own timeline."""

from collections.abc import Sequence
from statistics import median
from xml.sax.saxutils import escape

from make.places import SITE
from make.timing import Visit

FILE = SITE / "starting.svg"
STEPS = {  # in the worker and on the page: the mark's name, and what it means
    "first-contentful-paint": "something to read is painted",
    "alive": "the page answers to the hand",
    "glue": "Pyodide's script is here",
    "wasm": "the interpreter is compiled",
    "snapshot": "its memory is here",
    "linked": "the interpreter is linked",
    "restored": "its memory is put back",
    "woken": "Python is awake",
    "brought": "the sum's code is in",
    "answered": "the sum is answered",
}
LAST = "the answer stands on the page"
WIDE, ROW, LEFT = 720, 22, 230
STYLE = "text{font:13px sans-serif;fill:#333}rect{fill:#b5651d}@media(prefers-color-scheme:dark){text{fill:#ddd}}"


def write(visits: Sequence[Visit], bare: float) -> None:
    """Draw the medians of some visits, and how long bare Pyodide took."""
    reached = [(says, median(one.steps[name] for one in visits)) for name, says in STEPS.items()]
    reached = [*sorted(reached, key=lambda step: step[1]), (LAST, median(one.took for one in visits))]
    FILE.write_text(drawn([*reached, ("bare Pyodide: 1 + 1 stands on its page", bare)]), "utf-8")


def drawn(reached: Sequence[tuple[str, float]]) -> str:
    """Rows of a bar each, to scale."""
    scale = (WIDE - LEFT - 80) / max(at for _, at in reached)
    rows = "".join(_row(says, at, scale, number) for number, (says, at) in enumerate(reached))
    size = f'width="{WIDE}" height="{ROW * len(reached) + 10}" viewBox="0 0 {WIDE} {ROW * len(reached) + 10}"'
    title = "<title>From opening a kept page to its first answer, in milliseconds (medians)</title>"
    return f'<svg xmlns="http://www.w3.org/2000/svg" role="img" {size}>{title}<style>{STYLE}</style>{rows}</svg>\n'


def _row(says: str, at: float, scale: float, number: int) -> str:
    y, long = 5 + ROW * number, at * scale
    bar = f'<rect x="{LEFT}" y="{y + 3}" width="{long:.1f}" height="{ROW - 6}"/>'
    words = f'<text x="{LEFT - 8}" y="{y + 15}" text-anchor="end">{escape(says)}</text>'
    return f'{words}{bar}<text x="{LEFT + long + 6:.1f}" y="{y + 15}">{at:.0f} ms</text>'
