"""The parts of a sloping-lid box: sizes along and across the grain, angles, what each joins."""

from dataclasses import asdict, dataclass
from typing import Any

from calc.declare import Values
from calc.errors import Refusal
from calc.sums._lid import strips_of

UPRIGHT, SIDEWAYS, DOWN = "upright", "side to side", "down the slope"
MOST_STRIPS = 12


@dataclass(frozen=True, kw_only=True)
class Part:
    """One part: millimetres along the grain, across it and thick; `short` is its shorter face or edge.

    `strips` is how many widths of stock to glue up for it. `blank` is False for what is sawn out of another part.
    """

    part: str
    count: int
    length: Any
    width: Any
    thickness: Any
    grain: str
    joins: str
    bevel: Any = None
    cut: str = "square"
    short: Any = None
    strips: int = 1
    blank: bool = True


def parts(m: Values) -> list[Part]:
    """Every part, in the order of assembly; the lid before its strip is sawn off, then what becomes of it."""
    return [_glued(part, m) for part in (_side(m), _front(m), _bottom(m), _back(m), *_lid(m), _batten(m))]


def rows(found: list[Part]) -> list[dict[str, Any]]:
    """The parts as rows of the answer."""
    return [asdict(part) for part in found]


def _side(m: Values) -> Part:
    return Part(
        part="Side",
        count=2,
        length=m["back_height"],
        width=m["depth"],
        thickness=m["side_thickness"],
        grain=UPRIGHT,
        bevel=m["angle"],
        cut="top end to the slope",
        short=m["front_height"],
        joins="back, front, bottom, strip",
    )


def _front(m: Values) -> Part:
    return Part(
        part="Front",
        count=1,
        length=m["outside"],
        width=m["front_inner"],
        thickness=m["front_thickness"],
        grain=SIDEWAYS,
        bevel=m["angle"],
        cut="top edge bevelled, lower outside; ends rabbeted inside",
        short=m["front_outer"],
        joins="sides, bottom",
    )


def _bottom(m: Values) -> Part:
    return Part(
        part="Bottom",
        count=1,
        length=m["bottom_wide"],
        width=m["bottom_deep"],
        thickness=m["bottom_thickness"],
        grain=SIDEWAYS,
        joins="between sides, front and back",
    )


def _back(m: Values) -> Part:
    return Part(
        part="Back",
        count=1,
        length=m["back_high"],
        width=m["outside"],
        thickness=m["back_thickness"],
        grain=UPRIGHT,
        joins="back edges of the sides, bottom, strip; the wall",
    )


def _lid(m: Values) -> list[Part]:
    whole: dict[str, Any] = {
        "count": 1,
        "length": m["lid_wide"],
        "thickness": m["lid_thickness"],
        "grain": SIDEWAYS,
        "bevel": m["angle"],
        "cut": "back edge bevelled to stand plumb",
    }
    lid = Part(part="Lid, whole", width=m["lid_long"], short=m["lid_under"], joins="sawn into the next two", **whole)
    strip = Part(
        part="Fixed strip", width=m["strip"], short=m["strip_under"], joins="sides, back", blank=False, **whole
    )
    own = whole | {"bevel": None, "cut": "square"}
    return [lid, strip, Part(part="Moving lid", width=m["moving"], joins="strip, by hinges", blank=False, **own)]


def _batten(m: Values) -> Part:
    return Part(
        part="Batten",
        count=2,
        length=m["batten_long"],
        width=m["batten_width"],
        thickness=m["batten_thickness"],
        grain=DOWN,
        joins="under the moving lid, across its grain",
    )


def _glued(part: Part, m: Values) -> Part:
    """The same part with the widths of stock it takes; each glue joint loses what planing both its edges takes."""
    if not part.blank:
        return part
    if m["stock_width"] <= m["joint"] or (part.part == "Batten" and part.width > m["stock_width"]):
        raise Refusal(
            "this stock is too narrow to make a batten of", "give a wider stock or narrower battens", "stock_width"
        )
    strips = strips_of(part.width, m["stock_width"], m["joint"])
    if strips > MOST_STRIPS:
        say = f"the {part.part.lower()} would be glued up from {strips} strips of this stock"
        raise Refusal(say, "give a wider stock, or a smaller box", "stock_width")
    return Part(**(asdict(part) | {"strips": strips}))
