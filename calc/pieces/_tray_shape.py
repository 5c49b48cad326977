"""The shape of a splayed tray: every angle and edge asked of the splay sum, and what of it lies at which level.

z runs up from what the tray stands on. The inner faces lean out; with edges bevelled level they begin at z = 0, and
with square edges at `low`, since the tray then stands on its outer arrises. The inner top arris is the highest either
way. The bottom is let in from above, its edges planed to the lean: it wedges itself between the sides and cannot fall
out, and no groove needs ploughing on the slant.
"""

from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.pieces._asked import ask, up

SPLAY = {"size": "wide", "other": "long", "height": "height", "lean": "lean", "thickness": "side_thickness"}
CORNERS = ("outside_top", "outside_bottom", "inside_top", "inside_bottom")


def low(edges: str, side_thickness: Any, lean: Any) -> Any:
    """How far the lower inner arrises stand above the outer: nothing where the edges are level."""
    return side_thickness * trig.sin(lean) if edges == "square" else 0


def inside_deep(height: Any, floor_up: Any) -> Any:
    """From the floor to the rim; Refusal where there is none."""
    if height <= floor_up:
        raise Refusal("the bottom fills all of the height", f"give more than {up(floor_up)}", "height")
    return height - floor_up


def foot_long(long: Any, floor_up: Any, lean: Any) -> Any:
    """What the inside length would be at z = 0; Refusal where the sides meet above it."""
    return _foot(long, floor_up, lean, "long")


def foot_wide(wide: Any, floor_up: Any, lean: Any) -> Any:
    """What the inside width would be at z = 0; Refusal where the sides meet above it."""
    return _foot(wide, floor_up, lean, "wide")


def _foot(size: Any, floor_up: Any, lean: Any, field: str) -> Any:
    taken = 2 * floor_up * trig.tan(lean)
    if size <= taken:
        raise Refusal("the sides would meet under the bottom", f"give more than {up(taken)}", field)
    return size - taken


def splayed(corners: str, foot_long: Any, foot_wide: Any, lean: Any, height: Any, side_thickness: Any) -> Values:
    """The angles and edges of sides with level edges, by splay: first the ends, then the long sides."""
    sizes = {"size": foot_wide, "other": foot_long, "height": height, "thickness": side_thickness}
    return ask("splay", "lean", SPLAY, sides=4, joint=corners, lean=lean, **sizes)


def long_edges(splayed: Values, low: Any, height: Any) -> Values:
    """The four long edges of a long side."""
    return _edges(splayed["parts"][-1], low, height)


def end_edges(splayed: Values, low: Any, height: Any) -> Values:
    """The four long edges of an end."""
    return _edges(splayed["parts"][0], low, height)


def _edges(part: Values, low: Any, height: Any) -> Values:
    """Edges left square lie on the same faces, higher inside and lower outside than the level ones."""

    def at(face: str, level: Any) -> Any:
        foot, top = part[f"{face}_bottom"], part[f"{face}_top"]
        return foot + (top - foot) * level / height

    levels = {"outside_top": height - low, "outside_bottom": 0, "inside_top": height, "inside_bottom": low}
    return {name: at(name.partition("_")[0], level) for name, level in levels.items()}


def longest(edges: Values) -> Any:
    """The longest of four edges: how far the finished part reaches."""
    return max(edges[name] for name in CORNERS)


def blank_over(around: Values, edges: str, height: Any, low: Any, lean: Any, side_thickness: Any) -> Any:
    """How much longer than its outer top arris a side is while its edges are square; nothing where that is the longest.

    An edge planed level loses its inner top arris, which stood the thickness times sin(lean) higher than the rim and is
    the longest of a butted side.
    """
    taken = side_thickness * trig.sin(lean) if edges == "level" else 0
    gains = (around["inside_top"] - around["inside_bottom"]) / (height - low)
    return max(0, around["inside_top"] + gains * taken - around["outside_top"])


def mean(edges: Values) -> Any:
    """The length at the middle of the section."""
    return sum(edges[name] for name in CORNERS) / 4


def side_wide(splayed: Values, edges: str, height: Any, low: Any, lean: Any) -> Any:
    """Up one face from arris to arris."""
    return splayed["slant"] if edges == "level" else (height - low) / trig.cos(lean)


def blank_wide(splayed: Values, edges: str, side_wide: Any) -> Any:
    """The width to rip the sides to, before their edges are bevelled."""
    return side_wide + (splayed["blank_width"] - splayed["slant"] if edges == "level" else 0)


def edge_cut(splayed: Values, corners: str, edges: str) -> Any:
    """The line that the sawn end makes across the finished edge: on one planed level, half a right angle or none."""
    if edges == "level":
        return 45 if corners == "mitre" else 0
    return splayed[f"{corners}_mark"]


def floor_long(corners: str, long_edges: Values, splayed: Values, floor_up: Any, low: Any, height: Any) -> Any:
    """From end to end on the level of the floor: of butted long sides, less what covers the ends."""
    return _at_floor(long_edges, floor_up, low, height) - (2 * splayed["wall"] if corners == "butt" else 0)


def floor_wide(end_edges: Values, floor_up: Any, low: Any, height: Any) -> Any:
    """From side to side on the level of the floor."""
    return _at_floor(end_edges, floor_up, low, height)


def _at_floor(edges: Values, floor_up: Any, low: Any, height: Any) -> Any:
    foot, top = edges["inside_bottom"], edges["inside_top"]
    return foot + (top - foot) * (floor_up - low) / (height - low)
