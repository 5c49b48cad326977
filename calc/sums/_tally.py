"""The working of tally: the result told in every way, the running tape, its proof and its drawing."""

import math
from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.show import MINUS, fraction, left_over, marks
from calc.typed.arithmetic import Reckoned, Term
from calc.typed.glyphs import clipped
from calc.typed.reader import said
from calc.typed.reckoning import LENGTH
from calc.units import MM_PER_INCH

FOOT = 12 * MM_PER_INCH
FINEST = Fraction(1, 64)
MOST_STRIPS = 8
"""Terms up to which the drawing shows each by itself; the last strip then stands for the rest."""
TALL = 330.0


def work(reckoning: Reckoned) -> Values:
    """A length with its tape, or, where a length was divided by a length, how many times it goes."""
    value, length = reckoning.value, reckoning.measure == LENGTH
    return {
        "result": value if length else None,
        "ratio": None if length else value,
        "whole": None if length or value < 0 else math.floor(value),
        "exactly": f"{fraction(value / MM_PER_INCH)} in, or {said(value, 'mm')} mm" if length else fraction(value),
        "feet_inches": feet_inches(value) if length and abs(value) >= FOOT else None,
        "decimal_inches": value / MM_PER_INCH if length else None,
        "tape": _tape(reckoning.terms) if length else None,
    }


def overdrawn(v: Values) -> bool:
    """True when something was taken away and the result is below nothing; not for a length that was typed as below."""
    reckoning: Reckoned = v["reckoning"]
    taken = any(term.sign < 0 or f" {MINUS} " in term.read for term in reckoning.terms)
    return taken and reckoning.value < 0


def feet_inches(mm: Fraction) -> str:
    """Feet, and inches to the nearest sixty-fourth with what is left over."""
    inches = marks(abs(mm) / MM_PER_INCH, FINEST)
    feet, rest = divmod(inches, 12)
    over = left_over(abs(mm) - inches * MM_PER_INCH)
    return f"{MINUS if mm < 0 else ''}{feet} ft {fraction(rest)} in{', ' if over else ''}{over}"


def _tape(terms: Sequence[Term]) -> tuple[Values, ...]:
    totals = _totals(terms)
    return tuple(
        {"term": f"{_sign(at, term)}{term.read}", "comes_to": term.sign * term.value, "total": totals[at + 1]}
        for at, term in enumerate(terms)
    )


def _sign(at: int, term: Term) -> str:
    return f"{MINUS} " if term.sign < 0 else "+ " if at else ""


def _totals(terms: Sequence[Term]) -> list[Fraction]:
    """The running total before the first term and after each."""
    found = [Fraction(0)]
    for term in terms:
        found.append(found[-1] + term.sign * term.value)
    return found


def proof(v: Values) -> dict[str, float]:
    """The tape ends at the result; inches and millimetres are one length; whole times leave less than one."""
    reckoning: Reckoned = v["reckoning"]
    found = {"the terms add up to the answer": float(_totals(reckoning.terms)[-1] - reckoning.value)}
    if v["result"] is None:
        over = v["ratio"] - v["whole"] if v["whole"] is not None else 0
        return found | {"what is over after the whole times is less than one": 0.0 if 0 <= over < 1 else float(over)}
    return found | {
        "the tape ends at the result": float(v["tape"][-1]["total"] - v["result"]),
        "25.4 mm to every inch": float(v["decimal_inches"] * Fraction(254, 10) - v["result"]),
    }


def figure(v: Values) -> Figure:
    """A strip for each term, laid where the running total stands: to the right when added, back when taken away."""
    reckoning: Reckoned = v["reckoning"]
    desc = "A strip for each term, one below the other, each beginning where the one above it ended."
    drawing = Figure("Tally", desc, tall=TALL)
    terms, totals = reckoning.terms, _totals(reckoning.terms)
    words = [f"{_sign(at, term)}{term.read}" for at, term in enumerate(terms)]
    if len(terms) > MOST_STRIPS:
        words, totals = [*words[: MOST_STRIPS - 1], "and the rest"], [*totals[:MOST_STRIPS], totals[-1]]
    low, high = float(min(totals)), float(max(totals))
    pitch = ((high - low) or 1.0) / 8
    for at, (start, end) in enumerate(pairwise(map(float, totals))):
        _strip(drawing, (start, end), -pitch * at, 0.4 * pitch, words[at], start + end <= low + high)
    if v["result"]:
        bottom, away = -pitch * (len(words) - 1), math.copysign(24, -v["result"])
        drawing.dimension((0, bottom), (float(v["result"]), bottom), "result", v["result"], away=away)
    return drawing


def _strip(drawing: Figure, ends: tuple[float, float], low: float, deep: float, words: str, left: bool) -> None:
    shape = [(ends[0], low), (ends[1], low), (ends[1], low + deep), (ends[0], low + deep)]
    drawing.outline(shape, "wood" if ends[1] >= ends[0] else "ghost")
    at, anchor = (min(ends), "start") if left else (max(ends), "end")
    drawing.note((at, low + deep), clipped(words), anchor, dy=9, name="reckoning")
