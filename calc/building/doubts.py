"""Cuts so far from what they were to be that a slip is likelier than a saw: a lost point, or inches for millimetres."""

from collections.abc import Iterator
from fractions import Fraction

from calc.building.gap import Choice, Gap, on_rule
from calc.building.settle import Settled
from calc.building.supposing import value_uncut
from calc.cells import entry
from calc.declare import Values
from calc.trig import Number
from calc.units import MM_PER_INCH

FAR, LEAST = 4, 5
"""So many times too large or small, and by so many millimetres or degrees at the least: our judgement, no source."""
SLIPS = (Fraction(10), Fraction(100), MM_PER_INCH)
"""By what a number is out where its point, a nought or its unit went astray."""
NEAR = 1.1
"""How many times the size it was to be, or what part of it, a likelier number may be."""


def doubts(settled: Settled) -> Iterator[Gap]:
    """Each cut that is asked about, in the order of entry; its choices are what was likelier meant, if a slip tells."""
    first = _as_first_planned(settled)
    for name, cut in settled.cuts.items():
        if _far(cut, first.get(name)) and _far(cut, planned := value_uncut(settled, name)):
            yield _doubt(settled, name, cut, planned)


def _as_first_planned(settled: Settled) -> Values:
    """What each cut was to be before anything was cut, which is soon found; None or no name where it is not known."""
    plan, asked = settled.piece.plan, settled.asked
    values = plan.known(asked, {})
    plan.redo(plan.leading(settled.cuts, values.keys()), values, plan.typed(asked, {}), {})
    return values


def _far(cut: Number, planned: Number | None) -> bool:
    if planned is None or planned <= 0 or max(cut - planned, planned - cut) < LEAST:
        return False
    return not 1 / FAR <= cut / planned <= FAR


def _doubt(settled: Settled, name: str, cut: Number, planned: Number) -> Gap:
    label, size = settled.piece.labels[name], settled.piece.sizes.get(name)
    was, now = on_rule(settled, name, planned), on_rule(settled, name, cut)
    say = f"The {label} was to be {was}, and came out at {now}: is that what you measured?"
    meant = [value for slip in SLIPS for value in (cut / slip, cut * slip) if planned / NEAR < value < planned * NEAR]
    texts = [entry(settled.piece.kinds[name].kind, value, settled.bench) for value in meant]
    choices = tuple(Choice(f"It is {text}", name, text) for text in texts)
    return Gap(name, size.part if size else "", cut - planned, say, choices)
