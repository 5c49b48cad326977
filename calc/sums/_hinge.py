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
PILOTS = ("pilot_soft", "pilot_hard", "soft_drill", "hard_drill")
SCREW = ("screw_length", "screw_into", "screw_left", "screw_gripped", *PILOTS, "screw")


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
    gain, deepest = knuckle / 2, max(knuckle / 2, plate)
    if deepest >= thickness:
        thick = "knuckle" if gain >= thickness else "plate"
        raise Refusal("the gain would be as deep as the wood is thick", "choose a smaller hinge", thick)
    ends, between = _placed(size, length, count, inset)
    return {
        **{"gain": gain, "under": thickness - deepest, "inset": ends, "between": between},
        "marks": [_mark(at, ends, size, between) for at in range(count)],
        "stands": plate - gain if plate > gain else None,
        **_screw(plate, thickness - deepest, number, margin),
    }


def _placed(size: Fraction, length: Fraction, count: int, inset: Fraction | None) -> tuple[Fraction, Fraction | None]:
    """From the end to the first hinge, and from hinge to hinge; one alone stands midway, unless its inset is given."""
    spare, insets = length - count * size, min(count, 2)
    midway = spare / 2 if count == 1 else size
    ends = midway if inset is None else inset
    if spare < insets * ends:
        raise _crowded(count, inset is not None and spare >= 0, spare, insets * max(ends, Fraction(0)) - spare + length)
    return ends, (spare - 2 * ends) / (count - 1) if count > 1 else None


def _crowded(count: int, smaller: bool, spare: Fraction, least: Fraction) -> Refusal:
    """Hinges that do not go on the lid: the inset is at fault where a smaller one would do, else the lid is short."""
    say = (
        "the hinges do not go side by side on this lid" if count > 1 else "the hinge would run off the end of this lid"
    )
    fewer = ", or fewer hinges" if count > 1 else ""
    if smaller:
        return Refusal(say, f"give {_tenths(math.floor(spare * 10 / min(count, 2)))} or less{fewer}", "inset")
    more = ", fewer hinges, or a smaller inset" if spare >= 0 else fewer
    return Refusal(say, f"give {_tenths(math.ceil(least * 10))} or more{more}", "length")


def _tenths(tenths: int) -> str:
    return f"{plain(Fraction(tenths, 10), 1)} mm"


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
    told = {f"screw_{name}": found[name] for name in ("length", "into", "left", "gripped")}
    return {**told, **{name: found[name] for name in PILOTS}, "screw": f"No. {number}"}


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
        "hinges stay on the lid": max(0.0, float(marks[-1]["end"]) / long - 1),
        "wood is left beyond the screw": max(0.0, float(v["margin"] - (v["screw_left"] or v["margin"]))) / long,
    }
