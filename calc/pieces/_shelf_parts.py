"""The parts of a wall shelf: sizes along and across the grain, what each joins, how they are nailed together."""

from typing import Any

from calc.pieces._joints import END, LONG, Row, joint, nail
from calc.pieces._part import Part, sawn

SIDEWAYS, UPRIGHT = "side to side", "upright"


def end_part(end_high: Any, depth: Any, end_thickness: Any, foot_deep: Any, stock_width: Any, joint: Any) -> Part:
    """The two ends, before their curves and housings."""
    size, stock = (end_high, depth, end_thickness), (stock_width, joint)
    cut = "front corners rounded; housed across inside"
    return sawn("End", 2, size, UPRIGHT, "shelf, rail", stock, cut=cut, short=foot_deep)


def shelf_part(shelf_long: Any, shelf_deep: Any, shelf_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The shelf itself."""
    size, stock = (shelf_long, shelf_deep, shelf_thickness), (stock_width, joint)
    return sawn("Shelf", 1, size, SIDEWAYS, "housed in the ends; nailed on the rail", stock)


def rail_part(rail_long: Any, rail_wide: Any, rail_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The rail under the shelf, through which the screws go."""
    size, stock = (rail_long, rail_wide, rail_thickness), (stock_width, joint)
    return sawn("Rail", 1, size, SIDEWAYS, "between the ends, under the shelf; the wall", stock)


def listed(end_part: Part, shelf_part: Part, rail_part: Part) -> list[Part]:
    """Every part."""
    return [end_part, shelf_part, rail_part]


def ends_to_shelf(nails: str, wood: str, spacing: Any, behind: Any, shelf_long: Any, shelf_deep: Any) -> Row:
    """Through the ends, at their housings, into the ends of the shelf."""
    return joint("Ends to shelf", nail(nails, wood, behind, shelf_long), (shelf_deep,) * 2, spacing, END)


def ends_to_rail(nails: str, wood: str, spacing: Any, end_thickness: Any, rail_long: Any, rail_wide: Any) -> Row:
    """Through the ends into the ends of the rail."""
    return joint("Ends to rail", nail(nails, wood, end_thickness, rail_long), (rail_wide,) * 2, spacing, END)


def shelf_to_rail(nails: str, wood: str, spacing: Any, shelf_thickness: Any, rail_wide: Any, rail_long: Any) -> Row:
    """Down through the shelf into the rail's upper edge."""
    return joint("Shelf to rail", nail(nails, wood, shelf_thickness, rail_wide), (rail_long,), spacing, LONG)


def jointed(shelf_to_rail: Row, ends_to_shelf: Row, ends_to_rail: Row) -> list[Row]:
    """Every nailed joint, in the order of assembly."""
    return [shelf_to_rail, ends_to_shelf, ends_to_rail]


PARTS = (end_part, shelf_part, rail_part)
JOINTS = (ends_to_shelf, ends_to_rail, shelf_to_rail)
