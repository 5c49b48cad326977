"""What the lid of a sloping-lid box carries: hinge strip, battens that clear the box as it opens, and the slot."""

from collections.abc import Mapping
from typing import Any

from calc.bench import MARKS
from calc.declare import Values
from calc.discover import find
from calc.errors import Refusal
from calc.pieces._sloping_shape import up
from calc.sums._batten import swung

NOTE = {"what": "note", "length": "note_length", "width": "note_width", "halved": "halved", "narrowed": "narrowed"}


def ask(sum_id: str, field: str, names: Mapping[str, str], **numbers: Any) -> Values:
    """Another sum's answers; where it refuses, its own words at the field of ours that they concern."""
    try:
        return find(sum_id).of(**numbers)
    except Refusal as refusal:
        raise Refusal(refusal.say, refusal.instead, names.get(refusal.field, field), source=refusal.source) from None


def strip(m: Values, nail: Any) -> dict[str, Any]:
    """The fixed strip, the moving lid and the gain, by hinge-strip."""
    own = {"nail": nail} if nail is not None else {}
    names = {"length": "depth", "strip": "leaf", "knuckle": "knuckle"}
    found = ask(
        "hinge-strip",
        "depth",
        names,
        leaf=m["leaf"],
        knuckle=m["knuckle"],
        angle=m["angle"],
        length=m["lid_long"],
        thickness=m["lid_thickness"],
        kerf=m["kerf"],
        **own,
    )
    return {name: found[name] for name in ("strip", "strip_under", "moving", "gain", "nail_line")}


def battens(m: Values) -> dict[str, Any]:
    """How long the battens may be and still swing past the front as the lid turns about its pin.

    The pin stands level with the upper face over the middle of the kerf. Distances from it, along the slope and square
    to it: the front's inner arris, on the lid's under face; the batten's lower front corner, which must stay nearer.
    """
    away = (m["depth"] - m["rabbet"]) * m["secant"] - m["strip_under"] - m["kerf"] / 2
    swing, along = swung(away, m["lid_thickness"], m["batten_thickness"], m["clearance"])
    long = along - m["kerf"] / 2 - m["clearance"]
    if long < m["batten_width"]:
        say = "the moving lid is too short to carry battens inside the box"
        raise Refusal(say, "give the sides more depth, or choose a hinge with narrower leaves", "depth")
    inset = m["side_overhang"] + m["side_thickness"] + m["clearance"]
    return {"batten_long": long, "swing": swing, "batten_in": inset, "slot_room": _between(m)}


def _between(m: Values) -> Any:
    room = m["inside_width"] - 2 * (m["batten_width"] + m["clearance"])
    if room <= 0:
        told = f"give more than {up(m['inside_width'] - room)}, or narrower battens"
        raise Refusal("the two battens have no room side by side", told, "inside_width")
    return room


def slot(m: Values) -> dict[str, Any]:
    """The slot, midway between the battens, and midway between the hinge leaf and the front on the way down."""
    begin = (m["lid_wide"] - m["slot_room"]) / 2
    found = ask(
        "slot",
        "note",
        NOTE,
        what=m["note"],
        length=m["note_length"],
        width=m["note_width"],
        halved=m["halved"],
        narrowed=m["narrowed"],
        drills="mm" if MARKS[m["mark"]][0] == "mm" else "inch",
        lid=m["lid_wide"],
        clear_from=begin,
        clear_to=m["lid_wide"] - begin,
    )
    _refuse_slot(m, found)
    high, low = _free(m)
    return {
        **{name: found[name] for name in ("slot_length", "slot_width", "drill", "size_from", "holes", "pitch")},
        "slot_begins": found["begins"],
        "slot_down": (high + low) / 2,
        "slot_spare": (low - high - found["slot_width"]) / 2,
    }


def _free(m: Values) -> tuple[Any, Any]:
    """From where to where the moving lid is free for a slot, down the slope from its sawn edge."""
    start = m["strip_under"] + m["kerf"]
    return m["leaf"] - m["kerf"] / 2, (m["depth"] - m["rabbet"]) * m["secant"] - start


def _refuse_slot(m: Values, found: Values) -> None:
    high, low = _free(m)
    if found["slot_length"] > m["slot_room"]:
        least = up(m["inside_width"] + found["slot_length"] - m["slot_room"])
        say = f"the slot is {up(found['slot_length'])} long and the battens leave {up(m['slot_room'])}"
        raise Refusal(say, f"give {least} or more, or fold what goes in once more", "inside_width")
    if low - high <= found["slot_width"]:
        say = "no slot fits between the hinge leaf and the front"
        raise Refusal(say, "give the sides more depth, or choose a hinge with narrower leaves", "depth")
