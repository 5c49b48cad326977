"""The sizes of the lid of a sloping-lid box, and of what it carries."""

from calc.pieces import _sloping_hinges as hinges
from calc.pieces import _sloping_lid as lid
from calc.pieces import _sloping_shape as shape
from calc.pieces._sloping_sizes import size
from calc.sums._lid import strips_of

WANTED = (
    size(
        "angle", "Slope of the lid", "From level; the tops of the sides are sawn to it.", shape.angle,
        "atan((back_height - front_height) / depth)", part="side", kind="angle",
    ),
    size("set_run", "Bevel gauge, run", "The nearest pair of marks on your rule.", lambda gauge: gauge["set_run"]),
    size("set_rise", "Bevel gauge, rise", "Square to the run.", lambda gauge: gauge["set_rise"]),
    size(
        "lid_long", "Lid down the slope, upper face", "The size to cut, before the strip is sawn off.",
        lambda lid_under, lid_bevel: lid_under + lid_bevel, "lid_under + lid_bevel", part="lid",
    ),
    size(
        "lid_wide", "Lid side to side", "Along its grain.",
        lambda outside, side_overhang: outside + 2 * side_overhang, "outside + 2 * side_overhang", part="lid",
    ),
    size(
        "lid_strips", "Widths of stock in the lid", "Glued up edge to edge.",
        lambda lid_long, stock_width, joint: strips_of(lid_long, stock_width, joint),
        "max(1, ceil((lid_long - joint) / (stock_width - joint)))", kind="count",
    ),
    size(
        "strip", "Fixed strip, upper face", "Wide enough for the hinge leaf and a line of nails.",
        lambda hinged: hinged["strip"], part="strip",
    ),
    size(
        "moving", "Moving lid down the slope", "The same on both faces.",
        lambda lid_long, strip, kerf: lid_long - strip - kerf, "lid_long - strip - kerf", part="moving lid",
    ),
)  # fmt: skip
FACES = (
    size(
        "lid_under", "Lid down the slope, under face", "From the back to the lid's front end.", shape.lid_under,
        "(depth + proud + front_overhang) / cos(angle)", part="lid",
    ),
    size(
        "lid_bevel", "Taken by the back bevel", "The upper face is so much longer than the under face.",
        lambda lid_thickness, tangent: lid_thickness * tangent, "lid_thickness * tan(angle)",
        "the back end is bevelled to stand plumb against the back",
    ),
)  # fmt: skip
CARRIED = (
    size(
        "strip_under", "Fixed strip, under face", "What the back bevel leaves of it.",
        lambda strip, hinged: strip - hinged["bevel"], "strip - lid_bevel",
    ),
    size(
        "nail_line", "Nail line on the strip", "From the back, on the upper face.", lambda hinged: hinged["nail_line"],
    ),
    size(
        "gain", "Gain depth of the hinges", "How deep each leaf is let in at the saw cut.",
        lambda hinged: hinged["gain"], "knuckle / 2", kind="fine",
    ),
    size(
        "batten_long", "Length of the battens", "Down the slope, under the moving lid.", lid.batten_long,
        "sqrt((swing - clearance) ** 2 - (lid_thickness + batten_thickness) ** 2) - kerf / 2 - clearance",
        "their lower front corners stay nearer the pin by the clearance", part="batten",
    ),
    size(
        "swing", "Hinge pin to the front's inner arris", "What the battens turn past.", lid.swing,
        "sqrt(((depth - rabbet) / cos(angle) - strip_under - kerf / 2) ** 2 + lid_thickness ** 2)",
        "what the battens turn past as the lid opens",
    ),
    size(
        "batten_in", "Battens in from the ends of the lid", "Past the overhang, the side and its clearance.",
        lambda side_overhang, side_thickness, clearance: side_overhang + side_thickness + clearance,
        "side_overhang + side_thickness + clearance",
    ),
    size(
        "hinge_size", "Length of a hinge", "Along its pin: a fifth of the inside width, 40 mm at most, unless given.",
        hinges.hinge_size, "min(40, inside_width / 5)",
    ),
    size(
        "hinge_in", "Hinges in from the ends of the lid", "The hinge's own length, and clear of the sides.",
        hinges.hinge_in, "max(hinge_size, batten_in)",
    ),
    size(
        "slot_length", "Length of the slot", "Over its round ends.", lid.slot_length, part="moving lid",
    ),
    size(
        "slot_width", "Width of the slot", "The drill's own diameter.", lambda slotted: slotted["slot_width"],
        part="moving lid",
    ),
    size("drill", "Drill for the slot", "Of the sizes sold.", lambda slotted: slotted["drill"], kind="text"),
    size(
        "slot_down", "Slot's middle, down from the sawn edge", "On the moving lid.", lid.slot_down,
        "(leaf - kerf / 2 + (depth - rabbet) / cos(angle) - strip_under - kerf) / 2",
        "midway from the hinge leaf to the front", part="moving lid",
    ),
    size(
        "slot_begins", "Slot begins, in from the lid's end", "Midway on the lid.",
        lambda lid_wide, slot_length: (lid_wide - slot_length) / 2, "(lid_wide - slot_length) / 2", "midway",
        part="moving lid",
    ),
    size(
        "slot_room", "Between the battens", "Where the slot may be.", lid.slot_room,
        "inside_width - 2 * (batten_width + clearance)",
    ),
    size("slot_spare", "Wood between slot and hinge leaf or front", "The nearer of the two.", lid.slot_spare),
    size(
        "size_from", "Where the size of what goes in comes from", "A source, or from memory.",
        lambda slotted: slotted["size_from"], kind="text",
    ),
)  # fmt: skip
ASIDE = (
    size(
        "strip_least", "Least strip for leaf and nails", "Measured on the upper face.",
        lambda hinged: hinged["least"], shown=False,
    ),
)  # fmt: skip
