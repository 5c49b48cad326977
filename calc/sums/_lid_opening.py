"""How far a hinged lid turns before it meets something, and what it does there.

The pin is the origin, x runs to the front and y up. The pin stands level with the upper faces over the middle of the
kerf, so the moving lid's upper face is always on a line through it: the lid leans on whatever that line meets first.
"""

from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.show import plain

ARRIS, FACE, WALL, STRIP = "the back's upper edge", "the face of the back", "the wall", "its own strip"
Spot = tuple[Any, Any]


def work(
    strip: Any, kerf: Any, angle: Any, length: Any, thickness: Any, crest: Any, height: Any, **more: Any
) -> Values:
    """Where the pin is, what the lid meets, whether its weight is past the pin there, and a chain or prop for it."""
    _room_below(strip, angle, thickness)
    along, reach = strip + kerf / 2, kerf / 2 + length
    across, rise = along * trig.cos(angle), along * trig.sin(angle)
    found = {"across": across, "reach": reach, **_heights(rise, crest, height)}
    (level, up), meets = met(across, found["height"], reach, angle, more["behind"])
    lean = trig.atan(level / up) if up else 90 - angle
    balance = trig.atan(thickness / (kerf + length))
    found |= {"lean": lean, "opening": 90 + angle + lean, "meets": meets, "touch_across": level, "touch_up": up or None}
    found |= {"balance": balance, "spare": lean - balance, "stays": _stays(lean - balance, more["keep"])}
    return {**found, "rises": _rises(reach, thickness, lean), **held(found, angle, thickness, **more)}


def _room_below(strip: Any, angle: Any, thickness: Any) -> None:
    least = thickness * trig.tan(angle)
    if strip < least:
        say = "a lid this thick, sloping so, has nothing left of this strip on its under face"
        raise Refusal(say, f"give {plain(float(least) + 0.05, 1)} mm or more", "strip")


def _heights(rise: Any, crest: Any, height: Any) -> Values:
    """The back's top above the lid where they meet, and above the pin, from whichever is given."""
    if height is None:
        return {"crest": crest, "height": crest + rise}
    if height < rise:
        say = "the back would stop below the upper face of the lid"
        raise Refusal(say, f"give {plain(float(rise) + 0.05, 1)} mm or more", "height")
    return {"crest": height - rise, "height": height}


def met(across: Any, height: Any, reach: Any, angle: Any, behind: Any) -> tuple[Spot, str]:
    """How far back from the pin and how high above it the lid meets something, and what that is."""
    if reach < across:
        return (reach * trig.cos(angle), reach * trig.sin(angle)), STRIP
    spot, what = (across, height), ARRIS
    if reach * reach < across * across + height * height:
        return (across, trig.sqrt(reach * reach - across * across)), FACE
    if behind is not None and _end_back(reach, spot) > across + behind:
        wall = across + behind
        return (wall, trig.sqrt(reach * reach - wall * wall)), WALL
    return spot, what


def _end_back(reach: Any, spot: Spot) -> Any:
    """How far behind the pin the lid's end stands when the lid leans on a spot."""
    far = trig.sqrt(spot[0] * spot[0] + spot[1] * spot[1])
    return reach * spot[0] / far if far else reach


def _stays(spare: Any, keep: Any) -> str:
    if spare <= 0:
        return "no: it falls shut"
    return "yes" if spare >= keep else "hardly: a knock shuts it"


def _rises(reach: Any, thickness: Any, lean: Any) -> Any:
    """The most the lid's end stands above the pin on its way."""
    turn = min(lean, trig.atan(thickness / reach))
    return reach * trig.cos(turn) + thickness * trig.sin(turn)


def held(found: Values, angle: Any, thickness: Any, keep: Any, hold: Any, fix: Any, behind: Any) -> Values:
    """A chain or prop between lid and side, both ends equally far from the pin, at the opening it is to be held."""
    place = found["reach"] / 3 if fix is None else fix
    if place > found["reach"]:
        raise Refusal("this is beyond the end of the lid", f"give {plain(found['reach'], 1)} mm or less", "fix")
    balanced = 90 + angle + found["balance"]
    opening = min(found["opening"], balanced + keep) if hold is None else hold
    if opening > found["opening"]:
        least = plain(float(found["opening"]) - 0.05, 1)
        raise Refusal("the lid does not open so far", f"give {least} degrees or less", "hold")
    arm = trig.sqrt(place * place + thickness * thickness)
    tie = "a chain: past it the lid turns no further" if opening > balanced else "a prop: the lid rests on it"
    return {"fix": place, "hold": opening, "tie": 2 * arm * trig.sin(opening / 2), "tie_is": tie}


def proof(v: Values) -> dict[str, float]:
    """The lid turned by coordinates: its face meets the touching point, its weight is over the pin, the tie spans."""
    reach, thick = float(v["reach"]), float(v["thickness"])
    open_ = turned((1.0, 0.0), v["opening"] - v["angle"])
    touch = -float(v["touch_across"]), float(v["touch_up"] or 0)
    middle = turned((float(v["kerf"] + v["length"]) / 2, -thick / 2), 90 + v["balance"])
    ends = turned((float(v["fix"]), -thick), -v["angle"]), turned((float(v["fix"]), -thick), v["hold"] - v["angle"])
    gap = (ends[0][0] - ends[1][0]) ** 2 + (ends[0][1] - ends[1][1]) ** 2
    return {
        "the open lid's face goes through what it meets": (open_[0] * touch[1] - open_[1] * touch[0]) / reach,
        "balanced, its middle is plumb over the pin": middle[0] / reach,
        "chain or prop spans from side to lid": (gap - float(v["tie"]) ** 2) / reach**2,
        "what it meets is within its reach": max(0.0, touch[0] ** 2 + touch[1] ** 2 - reach**2) / reach**2,
    }


def turned(spot: tuple[float, float], degrees: Any) -> tuple[float, float]:
    """A point turned about the pin, anticlockwise as the drawing lies."""
    c, s = float(trig.cos(degrees)), float(trig.sin(degrees))
    return spot[0] * c - spot[1] * s, spot[0] * s + spot[1] * c
