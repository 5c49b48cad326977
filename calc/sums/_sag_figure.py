"""A shelf seen from the front, straight and bent, its load over it and its supports under it."""

from calc.bench import Bench
from calc.declare import Values
from calc.drawing.figure import Figure
from calc.sums._beams import CASES, Case
from calc.typed.scales import SCALES

STEPS = 32
TIMES = (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000)
METRIC = Bench(unit="mm", mark="mm")


def figure(v: Values) -> Figure:
    """The board bent as it will be in the long run, its sag drawn larger where it would not be seen."""
    span, thick, case = float(v["span"]), float(v["thickness"]), CASES[v["case"]]
    times = max((n for n in TIMES if n * float(v["sag_later"]) <= span / 8), default=1)
    drawing = Figure("Shelf under load", _words(case, times))
    drawing.outline([(0, 0), (span, 0), (span, thick), (0, thick)], "ghost")
    foot = _curve(v, case, times)
    drawing.outline([*foot, *((x, y + thick) for x, y in reversed(foot))])
    _held(drawing, case, span, thick)
    _load(drawing, v, case, span, thick)
    _sizes(drawing, v, min(foot, key=lambda spot: spot[1]), times)
    return drawing


def _sizes(drawing: Figure, v: Values, lowest: tuple[float, float], times: int) -> None:
    """Thickness at the left, sag at the right, span below."""
    span, thick = float(v["span"]), float(v["thickness"])
    drawing.line(lowest, (span, lowest[1]), "hidden")
    drawing.dimension((span, 0), (span, lowest[1]), "sag_later", v["sag_later"], away=30)
    drawing.dimension((0, 0), (0, thick), "thickness", v["thickness"], away=30)
    drawing.dimension((0, lowest[1]), (span, lowest[1]), "span", v["span"], away=-34)
    if times > 1:
        drawing.note((span / 2, lowest[1]), f"sag drawn {times} times its size", dy=-66)


def _words(case: Case, times: int) -> str:
    told = f", its sag drawn {times} times its size" if times > 1 else ""
    return f"A shelf from the front, straight and bent{told}. {case.label}."


def _curve(v: Values, case: Case, times: int) -> list[tuple[float, float]]:
    """The under face, from left to right: the load's own curve and that of the shelf's weight, added."""
    span, own = float(v["span"]), CASES[case.own]
    pulls = [
        float(v["coefficient"]) * v["load_force"],
        float(v["own_coefficient"]) * v["own_force"],
    ]
    deep = times * float(v["sag_later"]) / sum(pulls)
    shares = [n / STEPS for n in range(STEPS + 1)]
    return [(span * s, -deep * (pulls[0] * case.shape(s) + pulls[1] * own.shape(s))) for s in shares]


def _held(drawing: Figure, case: Case, span: float, thick: float) -> None:
    """A prop under an end that rests, a block about one that is held fast, nothing at one that is free."""
    size = min(max(span / 28, thick * 0.6), span / 6)
    for end, way in ((0.0, -1), (span, 1)) if case.support != "cantilever" else ((0.0, -1),):
        if case.support == "simple":
            drawing.outline([(end, 0), (end - size / 2, -size), (end + size / 2, -size)], "edge open")
            continue
        block = [(end, -size), (end + way * size, -size), (end + way * size, thick + size), (end, thick + size)]
        drawing.outline(block, "thin")
        drawing.hatch(block)


def _load(drawing: Figure, v: Values, case: Case, span: float, thick: float) -> None:
    """An arrow at each load, or a row of short ones, with what they come to."""
    tall = span / (8 if case.loads else 14)
    for share in case.loads or [(n + 0.5) / 12 for n in range(12)]:
        x, head = span * share, span / 60
        drawing.line((x, thick + tall), (x, thick), "accent")
        for way in (-1, 1):
            drawing.line((x, thick), (x + way * head / 2, thick + head), "accent")
    told = str(SCALES["mass"].shown(v["load"], METRIC))
    drawing.note((span * case.lowest, thick + tall), told, "end" if case.lowest == 1 else "middle", dy=10, name="load")
