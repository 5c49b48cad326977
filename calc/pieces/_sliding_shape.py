"""The shape of a sliding-lid box: what follows from its givens by geometry alone, one small function to a size.

The sides run from end to end and are rabbeted over front and back, so that their lips and grooves reach the front. The
rabbets at the front stop at the groove's lower edge, where the front's top is; the lid runs out over it. The lid is
rabbeted on its upper face along both sides and the back: what is left is the tongue, and its under face is one plane.
All walls have the same rabbet along their lower edges, and the bottom lies in it from below: it hides the edges and
takes stock of any thickness, which a groove would not.
"""

from typing import Any

from calc.errors import Refusal
from calc.pieces._asked import up
from calc.pieces._box_shape import bears
from calc.pieces._seasons import narrowest, widest


def inside_long(length: Any, measured: str, wall_thickness: Any) -> Any:
    """Between front and back."""
    return length if measured == "inside" else length - 2 * wall_thickness


def inside_wide(width: Any, measured: str, wall_thickness: Any) -> Any:
    """Between the two sides."""
    return width if measured == "inside" else width - 2 * wall_thickness


def inside_high(height: Any, measured: str, bottom_thickness: Any, lid_thickness: Any, sunk: Any) -> Any:
    """From the bottom to the lid."""
    return height if measured == "inside" else height - bottom_thickness - lid_thickness - sunk


def lip(lid_thickness: Any, groove: Any, sunk: Any) -> Any:
    """The wood above the grooves; Refusal where there is none."""
    left = lid_thickness - groove + sunk
    if left <= 0:
        told = f"take a lid thicker than {up(groove - sunk)}, or a narrower iron"
        raise Refusal("nothing would be left of the sides above the grooves", told, "groove")
    return left


def behind(wall_thickness: Any, groove_deep: Any) -> Any:
    """The wood behind the grooves; Refusal where there is none."""
    if groove_deep >= wall_thickness:
        say = "the grooves would be as deep as the walls are thick"
        raise Refusal(say, f"give less than {up(wall_thickness)}", "groove_deep")
    return wall_thickness - groove_deep


def lid_tongue(groove: Any, play: Any) -> Any:
    """The lid's edge that runs in the grooves; Refusal where nothing is left of it."""
    if play >= groove:
        raise Refusal("nothing would be left of the lid's edge", f"give less than {up(groove)}", "play")
    return groove - play


def lid_wide(inside_wide: Any, groove_deep: Any, spare: Any, swells: Any, shrinks: Any) -> Any:
    """The lid across its grain, as dry as it is now: at its widest it leaves the spare."""
    return (inside_wide + 2 * groove_deep - spare) / widest(1, swells, shrinks)


def lid_field(lid_wide: Any, lid_rabbet: Any) -> Any:
    """The raised field of the lid; Refusal where there is none."""
    field = lid_wide - 2 * lid_rabbet
    if field <= 0:
        raise Refusal("nothing would be left of the lid between its rabbets", "give a wider box", "width")
    return field


def hold(lid_wide: Any, inside_wide: Any, groove_deep: Any, swells: Any, shrinks: Any) -> Any:
    """How much of the lid either groove holds at its driest; Refusal where it falls out."""
    held = bears(lid_wide, inside_wide, swells, shrinks)
    if held <= 0:
        deeper = up(groove_deep - held + (lid_wide - narrowest(lid_wide, swells, shrinks)) / 50)
        raise Refusal("at its driest the lid would leave its grooves", f"cut them {deeper} deep", "groove_deep")
    return held


def wood_volume(
    sides_wood: Any, ends_wood: Any, lid_wood: Any, bottom_long: Any, bottom_across: Any, bottom_thickness: Any
) -> Any:
    """All the wood; the thumb notch is not taken out."""
    return sides_wood + ends_wood + lid_wood + bottom_long * bottom_across * bottom_thickness


def sides_wood(
    side_long: Any,
    side_high: Any,
    second_long: Any,
    second_high: Any,
    front_high: Any,
    wall_thickness: Any,
    rabbet: Any,
    bottom_thickness: Any,
    groove: Any,
    groove_deep: Any,
) -> Any:
    """Both sides, less rabbets and grooves; at the back the groove runs into the rabbet."""

    def one(long: Any, high: Any) -> Any:
        ends = wall_thickness * rabbet * (high + front_high)
        low = (long - 2 * wall_thickness) * rabbet * bottom_thickness
        ploughed = groove * (groove_deep * long - wall_thickness * min(rabbet, groove_deep))
        return long * high * wall_thickness - ends - low - ploughed

    return one(side_long, side_high) + one(second_long, second_high)


def ends_wood(
    front_long: Any,
    front_high: Any,
    back_long: Any,
    back_high: Any,
    wall_thickness: Any,
    rabbet: Any,
    bottom_thickness: Any,
    groove: Any,
    groove_deep: Any,
) -> Any:
    """Front and back, less their lower rabbets; less the back's groove."""
    low = (front_long + back_long) * rabbet * bottom_thickness
    walls = (front_long * front_high + back_long * back_high) * wall_thickness
    return walls - low - back_long * groove * groove_deep


def lid_wood(lid_long: Any, lid_wide: Any, lid_thickness: Any, lid_rabbet: Any, lid_step: Any, lid_field: Any) -> Any:
    """The lid, less its rabbets along both sides and the back."""
    cut = lid_step * lid_rabbet * (2 * lid_long + lid_field)
    return lid_long * lid_wide * lid_thickness - cut
