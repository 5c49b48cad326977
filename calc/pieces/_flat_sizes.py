"""The sizes of a flat-lid box, the most wanted first, and what is worked out on the way."""

from calc.building.size import Size, Step, Table
from calc.pieces import _flat_parts as parts
from calc.pieces import _flat_shape as shape
from calc.pieces import _flat_work as work
from calc.pieces._box_asks import ROOM
from calc.pieces._box_shape import bears, bottom_across, bottom_long, rabbet, tongue
from calc.pieces._counted import COUNTED, STOCKED, WALLS_ALIKE, thicknesses
from calc.pieces._flat_yields import YIELDS
from calc.pieces._seasons import MOVED, seasons
from calc.pieces._size import sizes_by
from calc.pieces._tables import BOARDS, JOINTS, NAILS, SCREWS, order_table, parts_table
from calc.pieces._weight import WEIGHED
from calc.sums._lid import strips_of

size = sizes_by(YIELDS)
STEPS = (
    Step(name="seasons", work=seasons),
    Step(name="screwed", work=shape.screwed),
    Step(name="walls_wood", work=shape.walls_wood),
    *(Step(name=one.__name__, work=one) for one in (*parts.PARTS, *work.JOINTS, work.jointed)),
    Step(name="cut_list", work=parts.listed),
    *STOCKED,
)
WANTED = (
    size("lid_long", "Length of the lid", "Along its grain, end to end.",
         lambda outside_wide, end_overhang: outside_wide + 2 * end_overhang, "outside_wide + 2 * end_overhang",
         part="lid"),
    size("lid_wide", "Width of the lid", "Across its grain, front to back.",
         lambda outside_deep, edge_overhang: outside_deep + 2 * edge_overhang, "outside_deep + 2 * edge_overhang",
         part="lid"),
    size("lid_strips", "Widths of stock in the lid", "Glued up edge to edge.",
         lambda lid_wide, stock_width, joint: strips_of(lid_wide, stock_width, joint),
         "max(1, ceil((lid_wide - joint) / (stock_width - joint)))", kind="count"),
    size("outside_wide", "Outside width", "Over the walls.",
         lambda inside_wide, wall_thickness: inside_wide + 2 * wall_thickness, "inside_wide + 2 * wall_thickness"),
    size("side_long", "Length of the sides", "End to end, into the rabbets of front and back.",
         lambda inside_deep, rabbet: inside_deep + 2 * rabbet, "inside_deep + 2 * rabbet", part="side"),
    size("front_high", "Height of the walls", "Of all four; the lid lies on them.",
         lambda inside_high, bottom_thickness: inside_high + bottom_thickness, "inside_high + bottom_thickness",
         part="front"),
)  # fmt: skip
ROUND = (
    size("inside_wide", "Inside width", "Between the sides.", shape.inside_wide, limit=ROOM),
    size("inside_deep", "Inside depth", "Between front and back.", shape.inside_deep, limit=ROOM),
    size("inside_high", "Inside height", "From the bottom to the lid.", shape.inside_high, limit=ROOM),
    size("volume", "Inside volume", "Up to the lid, the battens not taken out.",
         lambda inside_wide, inside_deep, inside_high: inside_wide * inside_deep * inside_high,
         "inside_wide * inside_deep * inside_high", kind="volume"),
    size("outside_deep", "Outside depth", "Over the walls.", lambda side_long, tongue: side_long + 2 * tongue,
         "side_long + 2 * tongue"),
    size("outside_high", "Height with the lid", "From the table.",
         lambda front_high, lid_thickness: front_high + lid_thickness, "front_high + lid_thickness"),
    size("rabbet", "Depth of the rabbets", "Half the walls' thickness, unless given.", rabbet, part="front"),
    size("tongue", "Tongue left by the rabbets", "To be nailed through.", tongue, "wall_thickness - rabbet"),
    size("bottom_long", "Length of the bottom", "Along its grain, end to end.", bottom_long,
         "inside_wide + 2 * rabbet - allowance", part="bottom"),
    size("bottom_across", "Width of the bottom", "Across its grain, front to back, as dry as it is now.", bottom_across,
         "(inside_deep + 2 * rabbet - allowance) / (1 + max(0, swells, shrinks) / 100)",
         "so that it fills its rabbets but for the allowance at the dampest", part="bottom"),
    size("bottom_bears", "Bottom on its ledge at the driest", "At front and back, when it lies midway.",
         lambda bottom_across, inside_deep, swells, shrinks: bears(bottom_across, inside_deep, swells, shrinks),
         "(bottom_across * (1 + min(0, swells, shrinks) / 100) - inside_deep) / 2"),
)  # fmt: skip
BATTENS = (
    size("batten_long", "Length of the battens", "From front to back inside the box.", shape.batten_long,
         "inside_deep - 2 * clearance", part="batten"),
    size("battens_over", "Width over both battens", "From outer edge to outer edge, under the lid.",
         shape.battens_over, "inside_wide - 2 * side_clearance", part="pair of battens"),
    size("batten_in", "Battens in from the ends of the lid", "To their outer edges.",
         lambda lid_long, battens_over: (lid_long - battens_over) / 2, "(lid_long - battens_over) / 2"),
    size("batten_down", "Battens in from the edges of the lid", "To their ends.",
         lambda lid_wide, batten_long: (lid_wide - batten_long) / 2, "(lid_wide - batten_long) / 2"),
    size("lid_moves", "Lid moves across its grain", "From now to the dampest or the driest, whichever is more.",
         shape.lid_moves, "lid_wide * max(abs(swells), abs(shrinks)) / 100"),
    size("screw_in", "End screws, in from the ends of a batten", "A fifth of the batten, at most 25 mm.",
         shape.screw_in),
    size("slot_moves", "Lid moves at an end screw", "Either way: the slot is so much longer than its screw each way.",
         shape.slot_moves, "lid_moves * (batten_long / 2 - screw_in) / lid_wide", kind="fine"),
    size("slot_long", "Slots for the end screws", "In the battens, along them; as wide as the screw.",
         lambda screwed, slot_moves: screwed["diameter"] + 2 * slot_moves, kind="fine"),
    size("clear_drill", "Clearance drill for the batten screws", "Through the battens.",
         lambda screwed: screwed["clear"], kind="text"),
)  # fmt: skip
WEIGHT = (
    size("wood_volume", "Wood in the box", "In all its parts; holes are not taken out.", shape.wood_volume,
         kind="volume"),
    *WEIGHED,
)  # fmt: skip
ASIDE = (
    size("front_long", "Length of the front", "The same as the outside width, until it is cut.",
         lambda outside_wide: outside_wide, "outside_wide", part="front", shown=False),
    size("back_long", "Length of the back", "The same as the outside width, until it is cut.",
         lambda outside_wide: outside_wide, "outside_wide", part="back", shown=False),
    size("second_long", "Length of the second side", "The same as the first, until it is cut.",
         lambda side_long: side_long, "side_long", part="second side", shown=False),
    *(size(f"{name}_high", f"Height of the {told}", "The same as the front, until it is cut.",
           lambda front_high: front_high, "front_high", part=told, shown=False)
      for name, told in {"back": "back", "side": "side", "second": "second side"}.items()),
    WALLS_ALIKE,
)  # fmt: skip
THICK = {"wall": "walls", "bottom": "bottom", "lid": "lid", "batten": "battens"}
TABLES = (
    parts_table("Finished sizes."),
    JOINTS,
    order_table(work.order, may_lack=("batten_in",)),
    BOARDS,
    NAILS,
    SCREWS,
)
# The walls come first, so that a lid that is cut as well is settled after them.
ANSWERS: tuple[Size | Table, ...] = (
    *ASIDE, *WANTED, *TABLES, *COUNTED, *ROUND, *BATTENS, *WEIGHT, *MOVED, *thicknesses(THICK),
)  # fmt: skip
