"""The sizes of a sliding-lid box, the most wanted first, and what is worked out on the way."""

from calc.building.size import Size, Step, Table
from calc.pieces import _box_shape as common
from calc.pieces import _sliding_parts as parts
from calc.pieces import _sliding_shape as shape
from calc.pieces import _sliding_work as work
from calc.pieces._box_asks import ROOM
from calc.pieces._counted import COUNTED, STOCKED, WALLS_ALIKE, thicknesses
from calc.pieces._seasons import MOVED, seasons
from calc.pieces._size import sizes_by
from calc.pieces._sliding_yields import YIELDS
from calc.pieces._tables import BOARDS, JOINTS, NAILS, order_table, parts_table
from calc.pieces._weight import WEIGHED
from calc.sums._lid import strips_of

size = sizes_by(YIELDS)
STEPS = (
    Step(name="seasons", work=seasons),
    *(Step(name=one.__name__, work=one) for one in (shape.sides_wood, shape.ends_wood, shape.lid_wood)),
    *(Step(name=one.__name__, work=one) for one in (*parts.PARTS, *work.JOINTS, work.jointed)),
    Step(name="cut_list", work=parts.listed),
    *STOCKED,
)
LID = (
    size("lid_wide", "Width of the lid", "Across its grain, side to side, as dry as it is now.", shape.lid_wide,
         "(inside_wide + 2 * groove_deep - spare) / (1 + max(0, swells, shrinks) / 100)",
         "so that it fills its grooves but for the spare at the dampest", part="lid"),
    size("lid_long", "Length of the lid", "Along its grain, back to front: from the back's groove to past the front.",
         lambda side_long, wall_thickness, groove_deep, end_clearance, overhang:
         side_long - wall_thickness + groove_deep - end_clearance + overhang,
         "side_long - wall_thickness + groove_deep - end_clearance + overhang",
         "by the side as it came out", part="lid"),
    size("lid_tongue", "Thickness of the lid's edges", "The tongue that runs in the grooves.", shape.lid_tongue,
         "groove - play", part="lid"),
    size("lid_rabbet", "Width of the lid's rabbets", "From its edges in, on the upper face.",
         lambda groove_deep, clearance: groove_deep + clearance, "groove_deep + clearance", part="lid"),
    size("lid_step", "Depth of the lid's rabbets", "From its upper face down.",
         lambda lid_thickness, lid_tongue: lid_thickness - lid_tongue, "lid_thickness - lid_tongue"),
    size("lip", "Wood above the grooves", "Down from the top: the plough's fence.", shape.lip,
         "lid_thickness - groove + sunk", part="side"),
    size("front_high", "Height of the front", "To the groove's lower edge, so that the lid passes over it.",
         lambda side_high, lip, groove: side_high - lip - groove, "side_high - lip - groove", part="front"),
    size("side_high", "Height of sides and back", "From the table.",
         lambda inside_high, bottom_thickness, lid_thickness, sunk:
         inside_high + bottom_thickness + lid_thickness + sunk,
         "inside_high + bottom_thickness + lid_thickness + sunk", part="side"),
    size("outside_long", "Outside length", "Of the sides.",
         lambda inside_long, wall_thickness: inside_long + 2 * wall_thickness, "inside_long + 2 * wall_thickness"),
    size("outside_wide", "Outside width", "Over the sides.", lambda front_long, tongue: front_long + 2 * tongue,
         "front_long + 2 * tongue"),
)  # fmt: skip
FITS = (
    size("lid_gap", "Gap in each groove now", "Beside the lid, when it lies midway.",
         lambda inside_wide, groove_deep, lid_wide: (inside_wide + 2 * groove_deep - lid_wide) / 2,
         "(inside_wide + 2 * groove_deep - lid_wide) / 2"),
    size("hold", "Held by each groove at its driest", "The lid midway.", shape.hold,
         "(lid_wide * (1 + min(0, swells, shrinks) / 100) - inside_wide) / 2"),
    size("lid_field", "Raised field of the lid", "Between its rabbets.", shape.lid_field, "lid_wide - 2 * lid_rabbet"),
    size("lid_strips", "Widths of stock in the lid", "Glued up edge to edge.",
         lambda lid_wide, stock_width, joint: strips_of(lid_wide, stock_width, joint),
         "max(1, ceil((lid_wide - joint) / (stock_width - joint)))", kind="count"),
    size("notch_deep", "Depth of the thumb notch", "At its stop cut.", lambda lid_thickness: lid_thickness / 4,
         "lid_thickness / 4", part="lid"),
    size("behind", "Wood behind the grooves", "In the walls.", shape.behind, "wall_thickness - groove_deep"),
)  # fmt: skip
ROUND = (
    size("inside_long", "Inside length", "Between front and back.", shape.inside_long, limit=ROOM),
    size("inside_wide", "Inside width", "Between the sides.", shape.inside_wide, limit=ROOM),
    size("inside_high", "Inside height", "From the bottom to the lid.", shape.inside_high, limit=ROOM),
    size("volume", "Inside volume", "Up to the lid.",
         lambda inside_long, inside_wide, inside_high: inside_long * inside_wide * inside_high,
         "inside_long * inside_wide * inside_high", kind="volume"),
    size("rabbet", "Depth of the rabbets", "Half the walls' thickness, unless given.", common.rabbet, part="side"),
    size("groove_deep", "Depth of the grooves", "As deep as the rabbets, unless given.", lambda rabbet: rabbet,
         part="side"),
    size("tongue", "Tongue left by the rabbets", "To be nailed through.", common.tongue, "wall_thickness - rabbet"),
    size("bottom_long", "Length of the bottom", "Along its grain, back to front.",
         lambda inside_long, rabbet, allowance: common.bottom_long(inside_long, rabbet, allowance),
         "inside_long + 2 * rabbet - allowance", part="bottom"),
    size("bottom_across", "Width of the bottom", "Across its grain, side to side, as dry as it is now.",
         lambda inside_wide, rabbet, allowance, swells, shrinks:
         common.bottom_across(inside_wide, rabbet, allowance, swells, shrinks),
         "(inside_wide + 2 * rabbet - allowance) / (1 + max(0, swells, shrinks) / 100)",
         "so that it fills its rabbets but for the allowance at the dampest", part="bottom"),
    size("wood_volume", "Wood in the box", "In all its parts; the thumb notch is not taken out.", shape.wood_volume,
         kind="volume"),
    *WEIGHED,
)  # fmt: skip
ASIDE = (
    size("side_long", "Length of the sides", "The same as the outside length, until it is cut.",
         lambda outside_long: outside_long, "outside_long", part="side", shown=False),
    size("second_long", "Length of the second side", "The same as the first, until it is cut.",
         lambda side_long: side_long, "side_long", part="second side", shown=False),
    size("front_long", "Length of the front", "Into the rabbets of both sides.",
         lambda inside_wide, rabbet: inside_wide + 2 * rabbet, "inside_wide + 2 * rabbet", part="front", shown=False),
    size("back_long", "Length of the back", "The same as the front, until it is cut.",
         lambda front_long: front_long, "front_long", part="back", shown=False),
    *(size(f"{name}_high", f"Height of the {told}", "The same as the first side, until it is cut.",
           lambda side_high: side_high, "side_high", part=told, shown=False)
      for name, told in {"second": "second side", "back": "back"}.items()),
    *(size(f"{name}_lip", f"Wood above the groove of the {told}", "The same as on the first side, until it is cut.",
           lambda lip: lip, "lip", part=told, shown=False)
      for name, told in {"second": "second side", "back": "back"}.items()),
    WALLS_ALIKE,
)  # fmt: skip
THICK = {"wall": "walls", "bottom": "bottom", "lid": "lid"}
TABLES = (parts_table("Finished sizes."), JOINTS, order_table(work.order), BOARDS, NAILS)
# The walls come first, so that a lid that is cut as well is settled after them.
ANSWERS: tuple[Size | Table, ...] = (*ASIDE, *LID, *TABLES, *COUNTED, *FITS, *ROUND, *MOVED, *thicknesses(THICK))
