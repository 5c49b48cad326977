"""Butt hinges on a lid: where each stands, how deep it is let in, and a screw that stays inside the wood."""

import math
from fractions import Fraction
from itertools import pairwise
from typing import Any

from calc.declare import Values
from calc.discover import find
from calc.errors import Refusal
from calc.show import plain

Row = dict[str, Any]
SCREW = ("screw_length", "screw_into", "screw_left", "pilot_soft", "pilot_hard", "soft_drill", "hard_drill", "screw")


def work(
    size: Fraction,
    leaf: Fraction,
    knuckle: Fraction,
    length: Fraction,
    thickness: Fraction,
    count: int,
    inset: Fraction | None,
    plate: Fraction,
    number: int | None,
    margin: Fraction,
) -> Values:
    """The gain is half the knuckle; hinges stand evenly from end to end; the screw by the sum of that name."""
    gain, ends = knuckle / 2, size if inset is None else inset
    if count == 1:
        ends = (length - size) / 2 if inset is None else inset
    spare = length - 2 * ends - count * size
    _refuse(spare, gain, length, thickness, inset)
    between = spare / (count - 1) if count > 1 else None
    return {
        **{"gain": gain, "under": thickness - gain, "inset": ends, "between": between},
        "marks": [_mark(at, ends, size, between) for at in range(count)],
        "stands": plate - gain if plate > gain else None,
        **_screw(plate, thickness - gain, number, margin),
    }


def _refuse(spare: Fraction, gain: Fraction, length: Fraction, thickness: Fraction, inset: Fraction | None) -> None:
    if gain >= thickness:
        raise Refusal("half this knuckle is as deep as the wood is thick", "choose a smaller hinge", "knuckle")
    if spare < 0:
        told = f"give {_up(length - spare)} or more, fewer hinges, or a smaller inset"
        raise Refusal("the hinges do not go side by side on this lid", told, "length" if inset is None else "inset")


def _up(size: Fraction) -> str:
    return f"{plain(Fraction(math.ceil(size * 10), 10), 1)} mm"


def _mark(at: int, ends: Fraction, size: Fraction, between: Fraction | None) -> Row:
    start = ends + at * (size + (between or 0))
    return {"hinge": at + 1, "start": start, "end": start + size}


def _screw(plate: Fraction, under: Fraction, number: int | None, margin: Fraction) -> Values:
    """The screw through the leaf into the wood under it; blanks where none is asked for or none stays inside."""
    if number is None:
        return dict.fromkeys(SCREW)
    try:
        found = find("screw").of(number=number, held=plate, second=under, margin=margin)
    except Refusal:
        return {**dict.fromkeys(SCREW), "screw": "none sold is so short: choose a smaller leaf or thicker wood"}
    names = ("pilot_soft", "pilot_hard", "soft_drill", "hard_drill")
    told = {f"screw_{name}": found[name] for name in ("length", "into", "left")}
    return {**told, **{name: found[name] for name in names}, "screw": f"No. {number}"}


def proof(v: Values) -> dict[str, float]:
    """The marks run to the far end; the pin is level with the face; the screw ends inside."""
    long, marks = float(v["length"]), v["marks"]
    taken = sum((row["end"] - row["start"] for row in marks), Fraction(0)) + 2 * v["inset"]
    gaps = sum((b["start"] - a["end"] for a, b in pairwise(marks)), Fraction(0))
    even = v["count"] > 1
    return {
        "the last hinge is as far from its end as the first": float(marks[0]["start"] + marks[-1]["end"]) / long - 1
        if even
        else 0.0,
        "hinges, gaps and ends make up the lid": float(taken + gaps) / long - 1 if even else 0.0,
        "a knuckle on the bottom of its gain has its middle in the face": float(v["gain"] * 2 / v["knuckle"]) - 1,
        "wood is left beyond the screw": max(0.0, float(v["margin"] - (v["screw_left"] or v["margin"]))) / long,
    }
