"""The maker's own round things, such as tins and plates, laid through both ends of an arc to trace it."""

from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.show import NOISE

Row = dict[str, Any]


def crown(half: Any, radius: Any) -> Any:
    """How high a circle's edge stands at its crown above a level line that is `half` long each side of it.

    The same as radius - sqrt(radius² - half²), in a form that keeps its figures where the curve is flat.
    """
    return half * half / (radius + trig.sqrt(radius * radius - half * half))


def traced(things: Sequence[Row] | None, span: Any, rise: Any) -> Values:
    """The thing that comes nearest at the crown, by how much it misses, and all of them, nearest first."""
    rows = sorted((_row(at, one, span, rise) for at, one in enumerate(things or (), 1)), key=_worth)
    best = rows[0] if rows and rows[0]["miss"] is not None else None
    if best and best["word"] != "true":
        best["word"] = "nearest"
    return {
        "nearest": best and best["thing"],
        "nearest_diameter": best and best["diameter"],
        "nearest_rise": best and best["crown"],
        "miss": best and best["miss"],
        "traced": rows or None,
    }


def _row(at: int, thing: Row, span: Any, rise: Any) -> Row:
    """A thing with the rise its edge has over the span, less the rise wanted; None where it is not as wide."""
    half, radius = span / 2, thing["diameter"] / 2
    told = {"thing": thing["thing"] or f"thing {at}", "diameter": thing["diameter"]}
    if radius < half:
        return {**told, "crown": None, "miss": None, "word": "too small"}
    over = crown(half, radius)
    miss = over - rise
    return {**told, "crown": over, "miss": miss, "word": _word(miss)}


def _word(miss: Any) -> str:
    if abs(miss) < NOISE:
        return "true"
    return "too high" if miss > 0 else "too flat"


def _worth(row: Row) -> tuple[bool, Any]:
    return (row["miss"] is None, abs(row["miss"] or Fraction(0)))
