"""Nailed joints of a piece: the nail for each, how many, and whether glue helps."""

import math
from typing import Any

from calc.declare import Values
from calc.errors import Refusal
from calc.pieces._asked import answered
from calc.sums._drills import under

CROSS, END, LONG = "none: cross grain", "none: end grain holds no glue", "yes: long grain to long grain"
NONE_FITS: Values = {
    "nail": "none of this kind fits",
    "along_held": None,
    "length": None,
    "diameter": None,
    "hole": None,
    "thickness_from": "",
}
NAILED, SCREWED = "nails", "screws"
"""What a joint is held by."""
Row = dict[str, Any]


def nail(nails: str, wood: str, held: Any, second: Any, lean: Any = 0) -> Values:
    """The nail for a thickness held and the wood behind it, by the nail sum; blanks where no nail of the kind fits."""
    try:
        return answered("nail", held=held, second=second, lean=lean, kind=nails, wood=wood)
    except Refusal:
        return NONE_FITS


def count(long: Any, spacing: Any) -> int:
    """Nails along a joint: one to every spacing or part of one, and two at least. Common practice.

    >>> count(200, 60)
    4
    """
    wanted: int = math.ceil(long / spacing)
    return max(2, wanted)


def joint(name: str, found: Values, lines: tuple[Any, ...], spacing: Any, glue: str) -> Row:
    """A joint nailed along these lines."""
    nails = sum(count(long, spacing) for long in lines)
    sizes = {key: found[key] for key in ("nail", "length", "diameter", "hole")}
    told = {"joint": name, "held": found["along_held"], "count": nails, "glue": glue, "from": found["thickness_from"]}
    return told | {"by": NAILED} | sizes


def held(found: list[Row], by: str) -> list[Row]:
    """The joints held by nails, or by screws, for which one of the kind fits."""
    return [row for row in found if row["by"] == by and row["length"] is not None]


def drill(found: Row | None, *more: str) -> str:
    """The drill for the hole that the table of joints tells, and the tools after it; no size where it tells none.

    >>> drill({"length": 19, "hole": 1.25}, "hammer", "punch")
    'drill 1.2 mm, or 3/64 in (1.19 mm); hammer, punch'
    >>> drill(None, "hammer", "punch")
    'drill, hammer, punch'
    """
    if found is None or found["hole"] is None or found["length"] is None:
        return ", ".join(("drill", *more))
    return f"drill {under(found['hole'])[0]}; {', '.join(more)}"


def shopping(found: list[Row], by: str) -> list[Row]:
    """The nails, or the screws, to buy: sizes together, shortest first."""
    rows = held(found, by)
    sizes = {row["nail"]: row["length"] for row in rows}
    return [
        {"nail": name, "length": sizes[name], "count": sum(row["count"] for row in rows if row["nail"] == name)}
        for name in sorted(sizes, key=lambda name: sizes[name])
    ]
