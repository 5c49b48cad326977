"""The wood in a sloping-lid box, part by part: what is left after every bevel and rabbet, slot and holes not taken out.

By the areas of sections, in cubic millimetres; the solids of the box come to the same by another way.
"""

from typing import Any


def sides_wood(
    side_thickness: Any,
    depth: Any,
    back_height: Any,
    front_height: Any,
    second_deep: Any,
    second_back: Any,
    second_front: Any,
) -> Any:
    """Two sides, each a trapezium."""
    return side_thickness * (depth * (back_height + front_height) + second_deep * (second_back + second_front)) / 2


def front_wood(
    front_long: Any, front_thickness: Any, front_inner: Any, front_outer: Any, rabbet: Any, side_thickness: Any
) -> Any:
    """The front less its two rabbets, which are cut from its higher face."""
    fall = (front_inner - front_outer) / front_thickness
    rabbets = 2 * side_thickness * rabbet * (front_inner - rabbet * fall / 2)
    return front_long * front_thickness * (front_inner + front_outer) / 2 - rabbets


def boards_wood(
    bottom_wide: Any, bottom_deep: Any, bottom_thickness: Any, back_wide: Any, back_high: Any, back_thickness: Any
) -> Any:
    """Bottom and back, square all round."""
    return bottom_wide * bottom_deep * bottom_thickness + back_wide * back_high * back_thickness


def lid_wood(lid_wide: Any, lid_thickness: Any, strip: Any, strip_under: Any, moving: Any) -> Any:
    """Fixed strip and moving lid; the kerf between them is sawdust."""
    return lid_wide * lid_thickness * ((strip + strip_under) / 2 + moving)


def battens_wood(batten_long: Any, batten_width: Any, batten_thickness: Any) -> Any:
    """Two battens."""
    return 2 * batten_long * batten_width * batten_thickness


def wood_volume(sides_wood: Any, front_wood: Any, boards_wood: Any, lid_wood: Any, battens_wood: Any) -> Any:
    """All of it."""
    return sides_wood + front_wood + boards_wood + lid_wood + battens_wood


WOODS = (sides_wood, front_wood, boards_wood, lid_wood, battens_wood)
"""What each kind of part is worked out by."""
