"""The sizes of a wall shelf, of what it bears and of what it is cut from."""

from calc.building.size import Step
from calc.pieces import _shelf_load as bears
from calc.pieces import _shelf_parts as parts
from calc.pieces import _shelf_shape as shape
from calc.pieces._counted import STOCKED, thicknesses
from calc.pieces._shelf_yields import YIELDS
from calc.pieces._size import sizes_by

size = sizes_by(YIELDS)
STEPS = (
    *(Step(name=work.__name__, work=work) for work in (bears.laden, bears.nearer, bears.sturdier, bears.sagged)),
    *(Step(name=work.__name__, work=work) for work in (bears.screwed, bears.hung)),
    *(Step(name=work.__name__, work=work) for work in (*parts.PARTS, *parts.JOINTS, parts.jointed)),
    Step(name="cut_list", work=parts.listed),
    *STOCKED,
)
"""Worked out on the way: other sums asked once each, the parts and the joints that several tables speak of."""

WANTED = (
    size("shelf_long", "Length of the shelf", "End to end in its housings, along its grain.",
         lambda inside_width, housing_deep: inside_width + 2 * housing_deep, "inside_width + 2 * housing_deep",
         part="shelf"),
    size("verdict", "The shelf under its load", "The sag in the long run against the limit.",
         bears.verdict, kind="text"),
    size("end_high", "Height of the ends", "Foot to top, along their grain.",
         lambda drop, shelf_thickness, rise: drop + shelf_thickness + rise, "drop + shelf_thickness + rise",
         part="end"),
    size("outside", "Outside width", "Over both ends.",
         lambda inside_width, end_thickness: inside_width + 2 * end_thickness, "inside_width + 2 * end_thickness"),
)  # fmt: skip
BEARS = (
    size("sag_later", "Sag in the long run", "By the sum of shelf sag, resting on its two ends only.",
         lambda sagged: sagged["sag_later"], kind="fine"),
    size("allowed", "Sag allowed", "The span over the limit.", lambda inside_width, ratio: inside_width / ratio,
         "inside_width / ratio", kind="fine"),
    size("span_most", "Longest span within the limit", "Of this board, its load keeping to its length.",
         lambda nearer: nearer["span_most"]),
    size("shelf_least", "Least thickness within the limit", "Of this span, under this load.", bears.shelf_least),
    size("pull_each", "Pull on each wall screw", "Out of the wall, by the sum of hanging; times to spare not counted.",
         lambda hung: hung["pull_each"], kind="force"),
    size("shear_each", "Weight on each wall screw", "Down along the wall.", lambda hung: hung["shear_each"],
         kind="force"),
)  # fmt: skip
ENDS = (
    size("drop", "Ends below the shelf", "From the foot up to the housing.", shape.drop, part="end"),
    size("housing_wide", "Width of the housings", "The shelf's own thickness.",
         lambda shelf_thickness: shelf_thickness, "shelf_thickness", part="end"),
    size("housing_deep", "Depth of the housings", "A third of the end's thickness, unless given.",
         shape.housing_deep, part="end"),
    size("behind", "Left behind the housings", "Of the end's thickness, to nail through.", shape.behind,
         "end_thickness - housing_deep"),
    size("curve_low", "Lower curve begins", "Up the front edge from the foot.", shape.curve_low,
         "max(0, min(radius, drop - land))"),
    size("foot_deep", "Foot of the ends", "From the wall to where the lower curve ends.", shape.foot_deep,
         "depth - radius + sqrt(radius ** 2 - curve_low ** 2)"),
    size("curve_up", "Upper curve begins", "Down the front edge from the top.", shape.curve_up,
         "max(0, min(radius, rise - land))"),
    size("top_deep", "Top of the ends", "From the wall to where the upper curve ends.", shape.top_deep,
         "depth - radius + sqrt(radius ** 2 - curve_up ** 2)"),
)  # fmt: skip
RAIL = (
    size("shelf_deep", "Depth of the shelf", "Across its grain, flush with the ends.", lambda depth: depth, "depth",
         part="shelf"),
    size("rail_long", "Length of the rail", "Between the ends.", lambda inside_width: inside_width, "inside_width",
         part="rail"),
    size("rail_up", "Rail above the foot", "Its lower edge.", shape.rail_up, "drop - rail_wide"),
    size("screw_up", "Wall screws above the foot", "Along the middle of the rail.",
         lambda rail_up, rail_wide: rail_up + rail_wide / 2, "rail_up + rail_wide / 2"),
    size("screws", "Wall screws", "One to every spacing or part of one, and one more.", shape.screws,
         "ceil((inside_width - 2 * screw_in) / screw_apart) + 1", kind="count"),
    size("screw_gap", "Wall screws apart", "From middle to middle.",
         lambda inside_width, screw_in, screws: (inside_width - 2 * screw_in) / (screws - 1),
         "(inside_width - 2 * screw_in) / (screws - 1)"),
    size("clear_drill", "Clearance drill for the wall screws", "Through the rail.",
         lambda screwed: screwed["clear_drill"], kind="text"),
    size("head", "Countersink for their heads", "About twice the plain part.", lambda screwed: screwed["head"],
         kind="fine"),
)  # fmt: skip
WOOD = (
    size("end_area", "Face of an end", "Both corners rounded.", shape.end_area,
         "end_high * depth - radius * (curve_low + curve_up)"
         " + (curve_low * sqrt(radius ** 2 - curve_low ** 2) + curve_up * sqrt(radius ** 2 - curve_up ** 2)) / 2"
         " + radius ** 2 * pi * (asin(curve_low / radius) + asin(curve_up / radius)) / 360",
         "each corner loses a strip less a triangle and a sector", kind="area"),
    size("wood_volume", "Wood in it", "Curves and housings taken off; without screw holes.",
         lambda end_area, end_thickness, housing_deep, housing_wide, depth, shelf_long, shelf_deep, shelf_thickness,
         rail_long, rail_wide, rail_thickness: (
             2 * shape.end_of_wood(end_area, end_thickness, housing_deep, housing_wide, depth)
             + shelf_long * shelf_deep * shelf_thickness + rail_long * rail_wide * rail_thickness
         ),
         "2 * (end_area * end_thickness - housing_deep * housing_wide * depth)"
         " + shelf_long * shelf_deep * shelf_thickness + rail_long * rail_wide * rail_thickness",
         kind="volume"),
)  # fmt: skip
FROM = size("figure_from", "The stiffness is from", "A source, or from memory.",
            lambda nearer: nearer["figure_from"], kind="text")  # fmt: skip
TAKEN = thicknesses({"shelf": "shelf", "end": "ends", "rail": "rail"})
ASIDE = (
    size("second_deep", "Depth of the second end", "The same as on the first end, until it is cut.",
         lambda depth: depth, "depth", part="second end", shown=False),
    size("second_drop", "Second end below the shelf", "The same as on the first end, until it is cut.",
         lambda drop: drop, "drop", part="second end", shown=False),
    size("ends_alike", "Ends alike within", "Common practice: less than the eye sees across a shelf.",
         lambda end_thickness: shape.ALIKE, shown=False),
)  # fmt: skip
