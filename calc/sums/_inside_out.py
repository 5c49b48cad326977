"""The working of inside-out: contents, inside and outside of a box from any one of the three; its proof."""

from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.errors import Refusal
from calc.sums._in_both import in_both

SIDES = ("length", "width", "height")
Size = Fraction


def work(
    known: str,
    length: Size,
    width: Size,
    height: Size,
    clearance: Size,
    headroom: Size,
    thickness: Size,
    bottom: Size | None,
    lid: Size | None,
) -> Values:
    """The inside first, from whatever is known; then outwards to the outside and inwards to the contents."""
    under, over = thickness if bottom is None else bottom, lid or Fraction(0)
    side = {"contents": clearance, "inside": Fraction(0), "outside": -thickness}[known]
    high = {"contents": headroom, "inside": Fraction(0), "outside": -under - over}[known]
    inside = (length + 2 * side, width + 2 * side, height + high)
    _hold(inside, known)
    outside = (inside[0] + 2 * thickness, inside[1] + 2 * thickness, inside[2] + under + over)
    contents = (inside[0] - 2 * clearance, inside[1] - 2 * clearance, inside[2] - headroom)
    return {
        "each_side": side,
        "above": high,
        "under": under,
        "over": over,
        **_named("inside", inside),
        **_named("outside", outside if known != "outside" else None),
        **_named("contents", contents if known != "contents" and min(contents) > 0 else None),
        "capacity": inside[0] * inside[1] * inside[2],
    }


def _named(what: str, sizes: Any) -> Values:
    return {f"{what}_{side}": sizes and sizes[at] for at, side in enumerate(SIDES)}


def _hold(inside: tuple[Size, Size, Size], known: str) -> None:
    """A Refusal where the walls leave nothing inside."""
    for side, size in zip(SIDES, inside, strict=True):
        if size <= 0:
            takes = "the bottom and the lid take" if side == "height" else "both sides take"
            say = f"{takes} all of it, and {in_both(-size)} more" if size else f"{takes} all of it"
            raise Refusal(say, "give a larger outside, or thinner wood", side)


def outer(v: Values) -> tuple[float, float, float]:
    """The outside as numbers, given or answered."""
    return _sizes(v, "outside")


def inner(v: Values) -> tuple[float, float, float]:
    """The inside as numbers."""
    return _sizes(v, "inside")


def _sizes(v: Values, what: str) -> tuple[float, float, float]:
    long, wide, high = (float(v[side if v["known"] == what else f"{what}_{side}"]) for side in SIDES)
    return long, wide, high


def proof(v: Values) -> dict[str, float]:
    """The wood, piece by piece, is the outside less the inside; contents and the air about them are the inside."""
    (long, wide, high), (length, width, height) = outer(v), inner(v)
    thick, under, over = (float(v[name]) for name in ("thickness", "under", "over"))
    ends = 2 * thick * wide * height + 2 * thick * length * height
    wood = ends + long * wide * (under + over)
    found = {"the wood is the outside less the inside": (long * wide * high - wood) / float(v["capacity"]) - 1}
    if v["known"] == "contents":
        air, top = float(v["clearance"]), float(v["headroom"])
        filled = float(v["length"] * v["width"] * v["height"]) + top * length * width
        filled += 2 * air * width * (height - top) + 2 * air * (length - 2 * air) * (height - top)
        found["contents and the air about them are the inside"] = filled / float(v["capacity"]) - 1
    return found
