"""The sizes of a splayed tray and of what it is cut from."""

from fractions import Fraction
from typing import Any

from calc.building.size import Step
from calc.declare import Values
from calc.errors import Refusal
from calc.pieces import _tray_parts as parts
from calc.pieces import _tray_room as room
from calc.pieces import _tray_shape as shape
from calc.pieces._asked import ask
from calc.pieces._counted import STOCKED, thicknesses
from calc.pieces._size import sizes_by
from calc.pieces._tray_yields import YIELDS
from calc.trig import cos, tan

size = sizes_by(YIELDS)
ALIKE = Fraction(1, 2)
"""Millimetres that parts alike may differ by: common practice, what four nailed corners still close on."""


def face_gauge(face_cut: Any, mark: str, side_wide: Any) -> Values:
    """The gauge's marks for the line across the faces, by bevel."""
    return ask("bevel", "mark", {}, angle=face_cut, mark=mark, cut=side_wide)


def lean_gauge(lean: Any, mark: str, side_wide: Any) -> Values:
    """The gauge's marks for the lean, by bevel."""
    return ask("bevel", "mark", {}, angle=lean, mark=mark, cut=side_wide)


def edge_gauge(square_mark: Any, mark: str, side_thickness: Any) -> Values:
    """The gauge's marks for the line across a square edge, by bevel; blanks where no two marks are so near square."""
    return _or_square(square_mark, mark, side_thickness)


def corner_gauge(dihedral: Any, mark: str, side_wide: Any) -> Values:
    """The gauge's marks for what a corner is past square, by bevel; blanks where no two marks are so near it."""
    return _or_square(dihedral - 90, mark, side_wide)


def _or_square(angle: Any, mark: str, cut: Any) -> Values:
    try:
        return ask("bevel", "mark", {}, angle=angle, mark=mark, cut=cut)
    except Refusal:
        return {"set_run": None, "set_rise": None}


STEPS = (
    *(Step(name=work.__name__, work=work) for work in (shape.splayed, shape.long_edges, shape.end_edges)),
    *(Step(name=work.__name__, work=work) for work in (face_gauge, lean_gauge, edge_gauge, corner_gauge)),
    *(Step(name=work.__name__, work=work) for work in (room.hand_foot, room.hand_clear, room.bored_out)),
    *(Step(name=work.__name__, work=work) for work in (*parts.PARTS, *parts.JOINTS, parts.jointed)),
    Step(name="cut_list", work=parts.listed),
    *STOCKED,
)
"""Worked out on the way: other sums asked once each, the parts and the joints that several tables speak of."""

WANTED = (
    size("long_side", "Outer top arris of the long sides", "Along the top of the outer face, sawn or finished.",
         lambda long_edges: long_edges["outside_top"], part="long side"),
    size("end_side", "Outer top arris of the ends", "Along the top of the outer face, sawn or finished.",
         lambda end_edges: end_edges["outside_top"], part="end"),
    size("face_cut", "Line across the faces, off square", "Both faces of every side, by the sum of splayed sides.",
         lambda splayed: splayed["face_cut"], "atan(sin(lean) * tan(45))", kind="angle", part="long side"),
    size("square_mark", "Line across a square edge, off square", "While the edges are square still.",
         lambda splayed, corners: splayed[f"{corners}_mark"], kind="angle"),
    size("bevel", "Bevel of the ends, off square", "To tilt a saw by, measured square to the cut.",
         lambda splayed, corners: splayed[f"{corners}_bevel"], kind="angle", part="long side"),
    size("side_wide", "Sides up the face", "From arris to arris, the same on both faces.", shape.side_wide,
         "(height - low) / cos(lean)", part="long side"),
    size("face_run", "Gauge for the faces, run", "The nearest pair of marks on your rule.",
         lambda face_gauge: face_gauge["set_run"]),
    size("face_rise", "Gauge for the faces, rise", "Square to the run.", lambda face_gauge: face_gauge["set_rise"]),
    size("edge_run", "Gauge for the square edges, run", "Blank where a square does.",
         lambda edge_gauge: edge_gauge["set_run"]),
    size("edge_rise", "Gauge for the square edges, rise", "Square to the run.",
         lambda edge_gauge: edge_gauge["set_rise"]),
    size("long_blank", "Blank of the long sides at its longest", "What the board must give, its edges square still.",
         lambda long_side, long_edges, edges, height, low, lean, side_thickness:
         long_side + shape.blank_over(long_edges, edges, height, low, lean, side_thickness)),
    size("end_blank", "Blank of the ends at its longest", "What the board must give, its edges square still.",
         lambda end_side, end_edges, edges, height, low, lean, side_thickness:
         end_side + shape.blank_over(end_edges, edges, height, low, lean, side_thickness)),
)  # fmt: skip
TRAY = (
    size("volume", "Inside volume", "Up to the rim, the hand holes left out of account.", room.volume,
         "inside_deep * (long * wide + (long + wide) * inside_deep * tan(lean)"
         " + 4 * (inside_deep * tan(lean)) ** 2 / 3)", kind="volume"),
    size("inside_deep", "Depth inside", "From the floor up to the rim, plumb.", shape.inside_deep,
         "height - floor_up"),
    size("floor_up", "Floor above what it stands on", "The upper face of the bottom.",
         lambda low, bottom_up, bottom_thickness: low + bottom_up + bottom_thickness,
         "low + bottom_up + bottom_thickness"),
    size("top_long", "Inside length at the top", "Along the rim.",
         lambda long, inside_deep, lean: long + 2 * inside_deep * tan(lean), "long + 2 * inside_deep * tan(lean)"),
    size("top_wide", "Inside width at the top", "Along the rim.",
         lambda wide, inside_deep, lean: wide + 2 * inside_deep * tan(lean), "wide + 2 * inside_deep * tan(lean)"),
    size("outside_long", "Outside length at the top", "Over the outer faces of the ends.",
         lambda foot_long, splayed, height, low: (
             foot_long + 2 * splayed["wall"] + 2 * splayed["spread"] * (height - low) / height
         ),
         "long + 2 * (inside_deep - low) * tan(lean) + 2 * side_thickness / cos(lean)"),
    size("outside_wide", "Outside width at the top", "Over the outer faces of the long sides.",
         lambda foot_wide, splayed, height, low: (
             foot_wide + 2 * splayed["wall"] + 2 * splayed["spread"] * (height - low) / height
         ),
         "wide + 2 * (inside_deep - low) * tan(lean) + 2 * side_thickness / cos(lean)"),
    size("dihedral", "Angle between two sides", "To test the corners with, inside.",
         lambda splayed: splayed["dihedral"], "180 - 2 * asin(cos(lean) * sin(45))", kind="angle"),
    size("lean_run", "Gauge for the lean, run", "For the edges of sides and bottom.",
         lambda lean_gauge: lean_gauge["set_run"]),
    size("lean_rise", "Gauge for the lean, rise", "Square to the run.", lambda lean_gauge: lean_gauge["set_rise"]),
    size("edge_cut", "Line across the finished edge, off square", "To test the sawn ends with.", shape.edge_cut,
         kind="angle"),
    size("corner_run", "Gauge for the corners, run", "What they are past square; blank where a square does.",
         lambda corner_gauge: corner_gauge["set_run"]),
    size("corner_rise", "Gauge for the corners, rise", "Square to the run.",
         lambda corner_gauge: corner_gauge["set_rise"]),
)  # fmt: skip
BOTTOM = (
    size("bottom_long", "Length of the bottom, upper face", "Along its grain: it wedges itself between the ends.",
         shape.floor_long,
         "foot_long + 2 * floor_up * tan(lean)", part="bottom"),
    size("bottom_wide", "Width of the bottom, upper face", "Across its grain.",
         shape.floor_wide,
         "foot_wide + 2 * floor_up * tan(lean)", part="bottom"),
    size("bottom_under", "Length of the bottom, under face", "What its bevels leave.",
         lambda bottom_long, bottom_thickness, lean: bottom_long - 2 * bottom_thickness * tan(lean),
         "bottom_long - 2 * bottom_thickness * tan(lean)"),
    size("nail_line", "Nail line for the bottom", "Up the outer face from its lower arris; the nails go in level.",
         lambda floor_up, bottom_thickness, lean: (floor_up - bottom_thickness / 2) / cos(lean),
         "(floor_up - bottom_thickness / 2) / cos(lean)", "half way up the bottom's edge"),
)  # fmt: skip
HANDS = (
    size("hand_middle", "Hand hole, middle below the rim", "Down the inner face from its top arris.",
         lambda handles, hand_down, hand_wide: hand_down + hand_wide / 2 if handles == "holes" else None,
         "hand_down + hand_wide / 2"),
    size("hand_mark", "Hand hole, middle down the outer face", "From the edge as it is ripped.",
         lambda hand_middle, blank_wide, side_wide: (
             None if hand_middle is None else hand_middle + blank_wide - side_wide
         ),
         "hand_middle + blank_wide - side_wide"),
    size("hand_in", "Hand hole begins", "Along the top edge of the outer face, from its end: midway.", room.hand_in),
    size("hand_radius", "Radius of its ends", "Half the bit.",
         lambda handles, hand_wide: hand_wide / 2 if handles == "holes" else None, "hand_wide / 2"),
)  # fmt: skip
WOOD = (
    size("wood_volume", "Wood in it", "Bevels and hand holes taken off.", room.wood_volume,
         kind="volume"),
    size("blank_wide", "Sides, width to rip", "Before their edges are bevelled.", shape.blank_wide),
    size("low", "Inner arrises above the outer", "At the foot: nothing where the edges are level.", shape.low),
    size("foot_long", "Inside length at the very foot", "The inner faces carried down to what it stands on.",
         shape.foot_long, "long - 2 * floor_up * tan(lean)"),
    size("foot_wide", "Inside width at the very foot", "The inner faces carried down to what it stands on.",
         shape.foot_wide, "wide - 2 * floor_up * tan(lean)"),
)  # fmt: skip
TAKEN = thicknesses({"side": "sides", "bottom": "bottom"})
ASIDE = (
    size("second_long", "Outer top arris of the second long side", "The same as the first, until it is cut.",
         lambda long_side: long_side, "long_side", part="second long side", shown=False),
    size("second_end", "Outer top arris of the second end", "The same as the first, until it is cut.",
         lambda end_side: end_side, "end_side", part="second end", shown=False),
    size("end_wide", "Ends up the face", "The same as the long sides, until they are cut.",
         lambda side_wide: side_wide, "side_wide", part="end", shown=False),
    size("sides_alike", "Parts alike within", "Common practice: what four nailed corners still close on.",
         lambda height: ALIKE, shown=False),
)  # fmt: skip
