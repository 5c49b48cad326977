"""The working of convert: one length in every way it is said, on every rule, with the marks beside it; its proof."""

from fractions import Fraction
from itertools import pairwise

from calc import rule
from calc.bench import MARKS
from calc.declare import Values
from calc.drawing.figure import Figure
from calc.show import fraction, left_over, marks, plain
from calc.sums._tally import FOOT, feet_inches
from calc.typed.reader import said
from calc.units import MM_PER_INCH

CENTIMETRE = 10
WHOLE = 0.75
"""How tall the mark of a whole inch or centimetre is drawn, as a share of the rule's width."""
TALL = {
    "in": {1: WHOLE, 2: 0.62, 4: 0.5, 8: 0.4, 16: 0.3, 32: 0.22},
    "mm": {1: WHOLE, 2: 0.55, 5: 0.4, 10: 0.4},
}
"""The same of marks that part it into so many."""


def work(length: Fraction, mark: str, each_side: int) -> Values:
    """The length itself, told in decimals, in fractions, in feet; its neighbours on the rule; every other rule."""
    nearest = marks(length, rule.step(mark))
    beside = [nearest + at * rule.step(mark) for at in range(-each_side, each_side + 1)]
    return {
        "on_rule": length,
        "decimal_inches": length / MM_PER_INCH,
        "millimetres": length,
        "feet_inches": feet_inches(length) if length >= FOOT else None,
        "exactly": f"{fraction(length / MM_PER_INCH)} in, or {said(length, 'mm')} mm",
        "neighbours": [_neighbour(length, one, mark) for one in beside if one >= 0],
        "rules": [_on(length, one) for one in MARKS],
    }


def _neighbour(length: Fraction, at: Fraction, mark: str) -> Values:
    return {"mark": _named(at, mark), "decimal_inches": at / MM_PER_INCH, "millimetres": at, "off": length - at}


def _on(length: Fraction, mark: str) -> Values:
    """The nearest mark of one rule, and what it leaves over."""
    nearest = marks(length, rule.step(mark))
    label = next(option.label for option in rule.OPTIONS if option.key == mark)
    return {"rule": label, "mark": _named(nearest, mark), "left": left_over(length - nearest) or "on the mark"}


def _named(mm: Fraction, mark: str) -> str:
    """A mark as it is read off a rule."""
    return f"{fraction(mm / MM_PER_INCH)} in" if MARKS[mark][0] == "in" else f"{plain(mm)} mm"


def proof(v: Values) -> dict[str, float]:
    """Marks stand evenly; one of them is within half a mark; inches and millimetres are one length."""
    step = rule.step(v["mark"])
    nearest = min(abs(row["off"]) for row in v["neighbours"])
    strips = [other["millimetres"] - one["millimetres"] - step for one, other in pairwise(v["neighbours"])]
    return {
        "marks stand evenly": float(max(map(abs, strips), default=0)),
        "the nearest is within half a mark": float(max(Fraction(0), nearest - step / 2)),
        "25.4 mm to every inch": float(v["decimal_inches"] * Fraction("25.4") - v["millimetres"]),
    }


def figure(v: Values) -> Figure:
    """A piece of the rule about the length, its nearest mark figured, and a pencil line where the length is."""
    drawing = Figure("A piece of the rule", "Neighbouring marks of a rule, the length drawn among them as a line.")
    step, unit = rule.step(v["mark"]), MARKS[v["mark"]][0]
    nearest = marks(v["length"], step)
    left, right, high = max(-5 * step, -nearest), 5 * step, float(3 * step)
    drawing.outline([(left, 0), (right, 0), (right, high), (left, high)])
    for at in (nearest + n * step for n in range(-4, 5) if nearest + n * step >= 0):
        x, tall = float(at - nearest), high * _share(at, unit)
        drawing.line((x, high), (x, high - tall), "edge" if at == nearest else "thin")
        if at != nearest and tall == high * WHOLE:
            drawing.note((x, 0), _named(at, v["mark"]), dy=9)
    drawing.note((0, 0), _named(nearest, v["mark"]), dy=-12, name="mark")
    place = float(v["length"] - nearest)
    drawing.line((place, high * 0.9), (place, high * 1.5), "accent")
    drawing.note((place, high * 1.5), left_over(v["length"] - nearest) or "on the mark", dy=10, name="length")
    return drawing


def _share(at: Fraction, unit: str) -> float:
    """How tall a mark is, as a share of the rule's width: figured marks tallest, each halving shorter."""
    parts = (at / (MM_PER_INCH if unit == "in" else CENTIMETRE)).denominator
    return TALL[unit].get(parts, 0.16)
