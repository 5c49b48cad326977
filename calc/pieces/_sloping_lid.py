"""What the lid of a sloping-lid box carries: hinge strip, battens that clear the box as it opens, and the slot."""

from typing import Any

from calc.bench import MARKS
from calc.declare import Values
from calc.errors import Refusal
from calc.pieces._asked import ask, up
from calc.sums._swing import to_arris, turns_past

NOTE = {"what": "note", "length": "note_length", "width": "note_width", "halved": "halved", "narrowed": "narrowed"}
HINGE = {"length": "depth", "strip": "leaf", "knuckle": "knuckle"}


def gauge(angle: Any, mark: str, lid_wide: Any) -> Values:
    """The bevel gauge's marks, by bevel: their error counted over the longest cut."""
    return ask("bevel", "mark", {}, angle=angle, mark=mark, cut=lid_wide)


def hinged(
    leaf: Any, knuckle: Any, angle: Any, lid_long: Any, lid_thickness: Any, kerf: Any, strip_nail: Any
) -> Values:
    """The fixed strip, the nail line and the gain, by hinge-strip."""
    own = {"nail": strip_nail} if strip_nail is not None else {}
    sizes = {"leaf": leaf, "knuckle": knuckle, "kerf": kerf, "length": lid_long, "thickness": lid_thickness}
    return ask("hinge-strip", "depth", HINGE, angle=angle, **sizes, **own)


def down(depth: Any, rabbet: Any, secant: Any, strip_under: Any) -> Any:
    """From the strip's sawn edge down the lid's under face to the front's inner face."""
    return (depth - rabbet) * secant - strip_under


def swing(down: Any, kerf: Any, lid_thickness: Any) -> Any:
    """How far the front's inner arris stands from the hinge pin."""
    return to_arris(down - kerf / 2, lid_thickness)


def batten_long(
    down: Any, swing: Any, kerf: Any, clearance: Any, lid_thickness: Any, batten_thickness: Any, batten_width: Any
) -> Any:
    """How long the battens may be and still swing past the front; Refusal where that is less than they are wide."""
    along = turns_past(swing, down - kerf / 2, lid_thickness, batten_thickness, clearance)
    long = along - kerf / 2 - clearance
    if long < batten_width:
        say = "the moving lid is too short to carry battens inside the box"
        raise Refusal(say, "give the sides more depth, or choose a hinge with narrower leaves", "depth")
    return long


def slot_room(inside_width: Any, batten_width: Any, clearance: Any) -> Any:
    """Between the battens; Refusal where they touch."""
    taken = 2 * (batten_width + clearance)
    if inside_width <= taken:
        told = f"give more than {up(taken)}, or narrower battens"
        raise Refusal("the two battens have no room side by side", told, "inside_width")
    return inside_width - taken


def slotted(note: str, note_length: Any, note_width: Any, halved: int, narrowed: int, mark: str) -> Values:
    """The slot for what goes in, by slot."""
    sheet = {"what": note, "length": note_length, "width": note_width, "halved": halved, "narrowed": narrowed}
    return ask("slot", "note", NOTE, **sheet, drills="mm" if MARKS[mark][0] == "mm" else "inch")


def slot_length(slotted: Values, slot_room: Any, inside_width: Any) -> Any:
    """Over its round ends; Refusal where the battens leave no room for it."""
    long = slotted["slot_length"]
    if long > slot_room:
        least = up(inside_width + long - slot_room)
        say = f"the slot is {up(long)} long and the battens leave {up(slot_room)}"
        raise Refusal(say, f"give {least} or more, or fold what goes in once more", "inside_width")
    return long


def leaf_end(leaf: Any, kerf: Any) -> Any:
    """How far the hinge leaf reaches down the moving lid from its sawn edge."""
    return leaf - kerf / 2


def slot_down(leaf_end: Any, down: Any, kerf: Any) -> Any:
    """The slot's middle, midway from the hinge leaf to the front."""
    return (leaf_end + down - kerf) / 2


def slot_spare(slot_down: Any, slot_width: Any, leaf_end: Any, down: Any, kerf: Any) -> Any:
    """The wood between the slot and the hinge leaf or the front, whichever is nearer; Refusal where no slot fits."""
    low = down - kerf
    if low - leaf_end <= slot_width:
        say = "no slot fits between the hinge leaf and the front"
        raise Refusal(say, "give the sides more depth, or choose a hinge with narrower leaves", "depth")
    return min(slot_down - leaf_end, low - slot_down) - slot_width / 2
