"""The shape of a flat-lid box: what follows from its givens by geometry alone, one small function to a size.

Front and back run from end to end and are rabbeted over the sides, the common way, so that the front shows no end
grain. All four walls have the same rabbet along their lower edges: the bottom lies in it from below, its edges hidden,
and where walls meet the rabbets run out into one another and nothing shows.
"""

from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.errors import Refusal
from calc.pieces._asked import answered, up
from calc.sums._drills import over
from calc.sums._screw import by_number

SCREW_IN, MARGIN = Fraction(25), Fraction(2)
"""Millimetres: the end screws in from a batten's ends; the lid left over a screw's point. Common practice."""


def inside_wide(width: Any, measured: str, wall_thickness: Any) -> Any:
    """Between the two sides."""
    return width if measured == "inside" else width - 2 * wall_thickness


def inside_deep(depth: Any, measured: str, wall_thickness: Any) -> Any:
    """Between front and back."""
    return depth if measured == "inside" else depth - 2 * wall_thickness


def inside_high(height: Any, measured: str, bottom_thickness: Any, lid_thickness: Any) -> Any:
    """From the bottom to the lid."""
    return height if measured == "inside" else height - bottom_thickness - lid_thickness


def batten_long(inside_deep: Any, clearance: Any, batten_width: Any) -> Any:
    """The battens, from front to back inside the box; Refusal where they would be shorter than they are wide."""
    long = inside_deep - 2 * clearance
    if long < batten_width:
        say = "the battens would be shorter than they are wide"
        raise Refusal(say, f"give {up(batten_width + 2 * clearance)} inside or more, or narrower battens", "depth")
    return long


def battens_over(inside_wide: Any, side_clearance: Any, batten_width: Any) -> Any:
    """Over the outer edges of both battens; Refusal where they have no room side by side."""
    over = inside_wide - 2 * side_clearance
    if over < 2 * batten_width:
        told = f"give {up(2 * (batten_width + side_clearance))} inside or more, or narrower battens"
        raise Refusal("the two battens have no room side by side", told, "width")
    return over


def lid_moves(lid_wide: Any, swells: Any, shrinks: Any) -> Any:
    """How far the lid's width goes from what it is now, whichever way is more."""
    return lid_wide * max(abs(swells), abs(shrinks)) / 100


def screw_in(batten_long: Any) -> Any:
    """The end screws, in from the ends of the batten."""
    return min(SCREW_IN, batten_long / 5)


def slot_moves(lid_moves: Any, batten_long: Any, screw_in: Any, lid_wide: Any) -> Any:
    """How far the lid goes at an end screw, either way: its share from the screw in the middle, which is fast."""
    return lid_moves * (batten_long / 2 - screw_in) / lid_wide


def screwed(screw: int, batten_thickness: Any, lid_thickness: Any, wood: str) -> Values:
    """The screw through a batten into the lid, by the screw sum; blanks where none stays inside."""
    pilot = {"light": "pilot_soft", "dense": "pilot_hard"}[wood]
    clear, _ = over(by_number(screw), "screw")
    try:
        found = answered("screw", number=screw, held=batten_thickness, second=lid_thickness, margin=MARGIN)
    except Refusal:
        return {"diameter": by_number(screw), "length": None, "hole": None, "clear": clear}
    return {"diameter": found["diameter"], "length": found["length"], "hole": found[pilot], "clear": clear}


def wood_volume(
    walls_wood: Any,
    bottom_long: Any,
    bottom_across: Any,
    bottom_thickness: Any,
    lid_long: Any,
    lid_wide: Any,
    lid_thickness: Any,
    batten_long: Any,
    batten_width: Any,
    batten_thickness: Any,
) -> Any:
    """All the wood, holes not taken out."""
    flat = bottom_long * bottom_across * bottom_thickness + lid_long * lid_wide * lid_thickness
    return walls_wood + flat + 2 * batten_long * batten_width * batten_thickness


def walls_wood(
    front_long: Any,
    front_high: Any,
    back_long: Any,
    back_high: Any,
    side_long: Any,
    side_high: Any,
    second_long: Any,
    second_high: Any,
    wall_thickness: Any,
    rabbet: Any,
    bottom_thickness: Any,
) -> Any:
    """The four walls, less their rabbets: part by part, as each came out."""
    ends = ((front_long, front_high), (back_long, back_high))
    sides = ((side_long, side_high), (second_long, second_high))
    corners = sum(2 * wall_thickness * rabbet * high for _, high in ends)
    low = sum(long - 2 * wall_thickness for long, _ in ends) + sum(long for long, _ in sides)
    return (
        sum(long * high * wall_thickness for long, high in (*ends, *sides)) - corners - low * rabbet * bottom_thickness
    )
