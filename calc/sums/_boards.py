"""Boards counted: exact board feet of each row, and the tally the hardwood trade makes of it."""

import math
from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from calc.units import MM_PER_INCH, factor

Row = dict[str, Any]
FOOT = 12 * MM_PER_INCH
HALF = Fraction(1, 2)


def reckoned(boards: Sequence[Row], rough: bool) -> list[Row]:
    """Each row of boards with its volume, its exact board feet and its hardwood tally; sizes in millimetres."""
    counted = [{**row, "thickness": counts_as(row["thickness"], rough), "measured": row["thickness"]} for row in boards]
    return [_row(row, surface) for row, surface in zip(counted, surfaces(counted), strict=True)]


def counts_as(thickness: Fraction, rough: bool) -> Fraction:
    """The thickness a board is reckoned at: bought rough, one under an inch counts as an inch (common practice)."""
    return max(thickness, MM_PER_INCH) if rough else thickness


def _row(row: Row, surface: int) -> Row:
    face = row["width"] * row["length"]
    one = row["thickness"] * face / factor("board_foot", "mm**3")
    volumes = {"volume": row["count"] * row["measured"] * face, "counted": row["count"] * row["thickness"] * face}
    tally = surface * row["thickness"] / MM_PER_INCH
    return {**row, "each": one, "all": row["count"] * one, "surface": surface, "tally": tally, **volumes}


def exact_surface(row: Row) -> Fraction:
    """Width in inches times length in whole feet, a broken foot dropped, over twelve: square feet of face, exact."""
    feet: int = math.floor(row["length"] / FOOT)
    return Fraction(row["width"] / MM_PER_INCH) * feet / 12


def surfaces(boards: Sequence[Row]) -> list[int]:
    """Square feet of face of each row, board by board to the nearest whole foot; exact halves go up and down in turn.

    Surface measure as the American Hardwood Export Council gives it; that halves of a foot take turns is from memory.
    """
    found, up = [], 1
    for row in boards:
        whole, part = divmod(exact_surface(row), 1)
        raised = (row["count"] + up) // 2 if part == HALF else row["count"] * (part > HALF)
        up = (up + row["count"]) % 2 if part == HALF else up
        found.append(row["count"] * int(whole) + raised)
    return found
