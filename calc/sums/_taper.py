"""The working of taper: whichever three sizes are given, the others; its proof and its drawing."""

from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.drawing.figure import Figure
from calc.errors import Refusal
from calc.sums._in_both import in_both

FOOT = Fraction("304.8")
LONGEST = 20_000
"""Millimetres past which a taper is no longer one of a board."""
WIDEST = 1000
"""Millimetres past which its large end is not."""
QUARTERS = 4


def work(length: Any, start: Any, end: Any, angle: Any, per_foot: Any, faces: int, straight: Any) -> Values:
    """Start, end and length first, from whichever three are given; the rest follows from them."""
    lean = _lean(angle, per_foot, faces)
    long, large, small = _sizes(length, start, end, lean)
    _refuse(long, large, small, angle)
    drop = (large - small) / faces
    turn = trig.atan(drop / long) if angle is None else angle
    return {
        "length": long,
        "start": large,
        "end": small,
        "angle": turn,
        "per_foot": (large - small) / long * FOOT if per_foot is None else per_foot,
        "drop": drop,
        "one_in": long / drop,
        "slant": trig.sqrt(long * long + drop * drop),
        "included": 2 * turn if faces == 2 else None,
        "point": long * large / (large - small),
        "whole": straight + long if straight else None,
        "marks": _marks(long, large, small, straight),
    }


def _lean(angle: Any, per_foot: Any, faces: int) -> Any:
    """What is lost in width for each millimetre of length; None when neither angle nor taper in a foot says it."""
    if angle is not None and per_foot is not None:
        say = "the angle and the taper in a foot say the same thing"
        raise Refusal(say, "clear one of them, and fill in a length or a width", "per_foot")
    if angle is not None:
        return faces * trig.tan(angle)
    return None if per_foot is None else per_foot / FOOT


def _sizes(length: Any, start: Any, end: Any, lean: Any) -> tuple[Any, Any, Any]:
    if lean is None:
        return length, start, end
    if length is None:
        return (start - end) / lean, start, end
    return (length, end + length * lean, end) if start is None else (length, start, start - length * lean)


def _refuse(length: Any, start: Any, end: Any, angle: Any) -> None:
    if end < 0:
        point = length * start / (start - end)
        say = f"at this taper the wood comes to a point after {in_both(point)}"
        raise Refusal(say, "give a shorter length or a slighter taper", "length")
    if start <= end:
        raise Refusal("the small end is not smaller than the large end", "give it less width", "end")
    if start > WIDEST:
        say = f"at this taper the large end would be {in_both(start)} wide"
        raise Refusal(say, "give a shorter length or a slighter taper", "length")
    if length > LONGEST:
        say = "so slight a taper would run on past 20 m between these widths"
        raise Refusal(say, "give more taper, or widths that differ less", "per_foot" if angle is None else "angle")


def _marks(length: Any, start: Any, end: Any, straight: Any) -> tuple[Values, ...]:
    """The width at every quarter of the way, its place from the large end of the wood."""
    share = [Fraction(one, QUARTERS) for one in range(QUARTERS + 1)]
    return tuple({"at": straight + length * one, "width": start - (start - end) * one} for one in share)


def proof(v: Values) -> dict[str, float]:
    """By the triangle that the sides would close: widths go with the distance from its point."""
    point, slant = float(v["point"]), float(v["slant"])
    return {
        "both ends are as wide as they are far from the point": (
            float(v["end"]) * point - float(v["start"]) * (point - float(v["length"]))
        )
        / (float(v["start"]) * point),
        "the slant's sine is what is planed off": slant * float(trig.sin(v["angle"])) / float(v["drop"]) - 1,
        "the slant's cosine is the length": slant * float(trig.cos(v["angle"])) / float(v["length"]) - 1,
        "in as many feet as it is long it loses what the ends differ by": float(
            v["per_foot"] * v["length"] / FOOT / (v["start"] - v["end"]) - 1
        ),
    }


def figure(v: Values) -> Figure:
    """The piece from the side, large end at the left, what is planed off dashed."""
    long, large, small, square = (float(v[name]) for name in ("length", "start", "end", "straight"))
    drop, below = float(v["drop"]), float(v["drop"]) if v["faces"] == 2 else 0.0
    drawing = Figure(
        "Tapered piece",
        "A board from the side, its large end at the left; it narrows to the right, what is planed off dashed.",
    )
    drawing.outline([(-square, 0), (0, 0), (long, 0), (long, large), (-square, large)], "ghost")
    corners = [(-square, 0), (0, 0), (long, below), (long, below + small), (0, large), (-square, large)]
    drawing.outline(corners)
    drawing.grain(corners)
    drawing.dimension((0, 0), (long, 0), "length", v["length"], away=-22)
    if square:
        drawing.dimension((-square, 0), (0, 0), "straight", v["straight"], away=-22)
    drawing.dimension((-square, 0), (-square, large), "start", v["start"])
    drawing.dimension((long, below), (long, below + small), "end", v["end"], away=-22)
    drawing.line((0, large), (long, large), "thin")
    drawing.angle((0, large), -float(v["angle"]), 0, "angle", v["angle"], reach=90, beside=True)
    if drop / long > 1:
        drawing.dimension((long, below + small), (long, large), "drop", v["drop"], away=-22)
    return drawing
