"""The working of a line of nails: distances in diameters, how many nails go in, their running marks; its proof."""

import math
from fractions import Fraction
from itertools import pairwise
from typing import Any

from calc import tables
from calc.declare import Values
from calc.errors import Refusal
from calc.show import plain
from calc.sums._nails import thickness_of
from calc.tables import CHECK

MOST = 500
"""Nails that are still marked out one by one."""
THIN = 5
"""Millimetres: nails from this thickness up have distances of their own."""
SQUAT = 7
"""A board thinner than this many diameters splits unless it is bored: Eurocode 5, 8.3.1.1(6), from memory."""
PLACES = {"along": ("a3", "a4", "a1"), "across": ("a4", "a3", "a2")}
"""What the ends of the line, the side of the row and the nails in the row are to the grain, as the table has them."""


def work(
    line: Fraction,
    nail: str | None,
    own: Fraction | None,
    run: str,
    hole: str,
    wood: str,
    load: str,
    wanted: Fraction,
    count: int | None,
    from_end: Fraction | None,
    row_in: Fraction | None,
    thickness: Fraction | None,
    own_end: Fraction | None,
    own_beside: Fraction | None,
    own_apart: Fraction | None,
) -> Values:
    """The least distances for this nail, then the nails: as many as asked for, or enough for the spacing wanted."""
    thick, said = thickness_of(nail, own)
    ends, beside, between = PLACES[run]
    found = [_by(place, hole, wood, load, thick) for place in (ends, beside, between)]
    end_by, beside_by, apart_by = (
        (mine, "yours") if mine is not None else by
        for mine, by in zip((own_end, own_beside, own_apart), found, strict=True)
    )
    kept = from_end if from_end is not None else end_by[0] * thick
    least = apart_by[0] * thick
    if 2 * kept > line:
        raise Refusal(f"{plain(kept, 1)} mm kept from both ends leaves no room", *_nearer(line, from_end, own_end))
    told = {"line": line, "kept": kept, "wanted": wanted, "least": least}
    return {
        "thick": thick,
        "end_by": end_by[0],
        "beside_by": beside_by[0],
        "apart_by": apart_by[0],
        "end_least": end_by[0] * thick,
        "beside_least": beside_by[0] * thick,
        "apart_least": least,
        "beside": row_in if row_in is not None else beside_by[0] * thick,
        "thick_from": said,
        "rules_from": "; ".join(dict.fromkeys((end_by[1], beside_by[1], apart_by[1]))),
        **_placed(told, count),
    }


def _nearer(line: Fraction, from_end: Fraction | None, own_end: Fraction | None) -> tuple[str, str]:
    """What to type where the ends leave no room, and at which entry: whichever asked for so much."""
    if from_end is not None:
        return f"give {plain(Fraction(math.floor(line * 5), 10), 1)} mm or less", "from_end"
    return ("give fewer diameters", "own_end") if own_end is not None else ("use a thinner nail", "line")


def _by(place: str, hole: str, wood: str, load: str, thick: Fraction) -> tuple[Fraction, str]:
    """A distance in diameters, the greatest for any direction of the load, and where it is from."""
    name = place + {"yes": "t", "no": "c"}[load] if place in ("a3", "a4") else place
    kinds = {"wood": {"any", "medium" if wood == "dense" else wood}, "nail": {"any", _kind(thick)}}
    row = next(
        row
        for row in tables.rows("nail_spacing")
        if (row["hole"], row["distance"]) == (hole, name) and all(row[part] in some for part, some in kinds.items())
    )
    return sum((Fraction(row[part]) for part in ("fixed", "turning")), Fraction(0)), _said(row["source"])


def _kind(thick: Fraction) -> str:
    return "thin" if thick < THIN else "thick"


def _said(source: str) -> str:
    return tables.work(source) if source else CHECK


def _placed(told: dict[str, Fraction], count: int | None) -> Values:
    """How many nails, how far apart, and each one's mark from one end; one nail alone stands in the middle."""
    span = told["line"] - 2 * told["kept"]
    most = math.floor(span / told["least"]) + 1
    by_wish = math.ceil(span / told["wanted"]) + 1
    number = count if count is not None else min(most, by_wish)
    if number > MOST or (number > 1 and not span):
        raise Refusal(
            f"this takes {number} nails" if span else "one nail only has room", "ask for fewer", _field(count)
        )
    apart = span / (number - 1) if number > 1 else None
    marks = [told["kept"] + at * apart for at in range(number)] if apart else [told["line"] / 2]
    return {
        "nails": number,
        "kept": told["kept"] if number > 1 else None,
        "apart": apart,
        "most": most,
        "by_wish": by_wish,
        "marks": [_mark(at, mark, told["line"]) for at, mark in enumerate(marks, 1)],
    }


def _field(count: int | None) -> str:
    return "wanted" if count is None else "count"


def _mark(at: int, mark: Fraction, line: Fraction) -> dict[str, Any]:
    return {"at": at, "mark": mark, "other": line - mark}


def proof(v: Values) -> dict[str, float]:
    """Turned end for end the marks are the same; from one to the next is the spacing; the last one is right."""
    marks, line = [row["mark"] for row in v["marks"]], v["line"]
    turned = [one + other - line for one, other in zip(marks, reversed(marks), strict=True)]
    gaps = [there - here - v["apart"] for here, there in pairwise(marks)]
    ends = line / 2 if v["kept"] is None else v["kept"]
    return {
        "turned end for end the marks are the same": float(max(map(abs, turned)) / line),
        "each nail is as far from the next": float(max(map(abs, gaps), default=Fraction(0)) / line),
        "the last mark is as far from its end as the first": float((line - marks[-1] - ends) / line),
        "one more than the most would crowd them": _room(v),
    }


def _room(v: Values) -> float:
    """How much would be left between the ends if one more than the most stood in the row; nothing where none would."""
    kept = v["end_least"] if v["from_end"] is None else v["from_end"]
    return max(0.0, float((v["line"] - 2 * kept - v["most"] * v["apart_least"]) / v["line"]))
