"""The lines of working of a sloping-lid box."""

from calc.declare import Formula

FORMULAS = (
    Formula("angle", "atan((back_height - front_height) / depth)"),
    Formula("back_height", "front_height + depth * tan(angle)"),
    Formula("front_height", "back_height - depth * tan(angle)"),
    Formula("proud", "front_thickness - rabbet"),
    Formula("front_inner", "front_height + rabbet * tan(angle)", "its inner face stands behind the sides' front edges"),
    Formula("front_outer", "front_height - proud * tan(angle)", "its outer face stands before them"),
    Formula("lid_under", "(depth + proud + front_overhang) / cos(angle)"),
    Formula("lid_bevel", "lid_thickness * tan(angle)", "the back end is bevelled to stand plumb against the back"),
    Formula("lid_long", "lid_under + lid_bevel"),
    Formula("outside", "inside_width + 2 * side_thickness"),
    Formula("lid_wide", "outside + 2 * side_overhang"),
    Formula("lid_strips", "max(1, ceil((lid_long - joint) / (stock_width - joint)))"),
    Formula("back_high", "tail + back_height + lid_thickness / cos(angle) + crest", "the lid measured plumb"),
    Formula("bottom_deep", "depth - rabbet - allowance"),
    Formula("bottom_wide", "inside_width - allowance"),
    Formula("strip_under", "strip - lid_bevel"),
    Formula("moving", "lid_long - strip - kerf"),
    Formula("gain", "knuckle / 2"),
    Formula("batten_in", "side_overhang + side_thickness + clearance"),
    Formula(
        "swing",
        "sqrt(((depth - rabbet) / cos(angle) - strip_under - kerf / 2) ** 2 + lid_thickness ** 2)",
        "what the battens turn past as the lid opens",
    ),
    Formula(
        "batten_long",
        "sqrt((swing - clearance) ** 2 - (lid_thickness + batten_thickness) ** 2) - kerf / 2 - clearance",
        "their lower front corners stay nearer the pin by the clearance",
    ),
    Formula("slot_begins", "(lid_wide - slot_length) / 2", "midway"),
    Formula("slot_room", "inside_width - 2 * (batten_width + clearance)"),
    Formula(
        "slot_down",
        "(leaf - kerf / 2 + (depth - rabbet) / cos(angle) - strip_under - kerf) / 2",
        "midway from the hinge leaf to the front",
    ),
    Formula(
        "volume",
        "inside_width * (depth - rabbet) * ((back_height + front_inner) / 2 - bottom_thickness)",
        "up to the lid",
    ),
)
