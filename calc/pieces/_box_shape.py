"""What plain boxes have alike: rabbeted corners, a bottom let into a rabbet from below, wood that moves across it."""

from typing import Any

from calc.errors import Refusal
from calc.pieces._asked import up
from calc.pieces._seasons import narrowest, widest


def rabbet(wall_thickness: Any) -> Any:
    """Half the walls' thickness, unless it is given."""
    return wall_thickness / 2


def tongue(wall_thickness: Any, rabbet: Any) -> Any:
    """What the rabbet leaves of the wall; Refusal where it goes through."""
    if rabbet >= wall_thickness:
        say = "the rabbet is as deep as the walls are thick"
        raise Refusal(say, f"give less than {up(wall_thickness)}", "rabbet")
    return wall_thickness - rabbet


def bottom_long(inside_wide: Any, rabbet: Any, allowance: Any) -> Any:
    """The bottom along its grain, between the rabbets; Refusal where it would fall through."""
    return _lies(inside_wide + 2 * rabbet - allowance, inside_wide)


def bottom_across(inside_deep: Any, rabbet: Any, allowance: Any, swells: Any, shrinks: Any) -> Any:
    """The bottom across its grain, so narrow that it fills its rabbets but for the allowance when it is dampest."""
    return _lies((inside_deep + 2 * rabbet - allowance) / widest(1, swells, shrinks), inside_deep)


def _lies(size: Any, opening: Any) -> Any:
    """The bottom, where it reaches both ledges."""
    if size <= opening:
        say = "the bottom would not reach its rabbets on both sides"
        raise Refusal(say, "give deeper rabbets, or a smaller allowance", "rabbet")
    return size


def bears(across: Any, opening: Any, swells: Any, shrinks: Any) -> Any:
    """How much of a part lies on either ledge at its driest, in the middle."""
    return (narrowest(across, swells, shrinks) - opening) / 2
