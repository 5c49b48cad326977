"""The sizes of a sloping-lid box and of what it is cut from; those of the lid stand in `_sloping_lid_sizes`."""

from calc.building.size import Step
from calc.pieces import _sloping_hinges as hinges
from calc.pieces import _sloping_lid as lid
from calc.pieces import _sloping_parts as parts
from calc.pieces import _sloping_shape as shape
from calc.pieces import _sloping_wood as wood
from calc.pieces import _sloping_work as joints
from calc.pieces._counted import STOCKED, thicknesses
from calc.pieces._size import sizes_by
from calc.pieces._sloping_yields import YIELDS
from calc.pieces._weight import WEIGHED

size = sizes_by(YIELDS)
STEPS = (
    *(Step(name=work.__name__, work=work) for work in (shape.tangent, shape.secant)),
    *(Step(name=work.__name__, work=work) for work in (joints.under_strip, joints.strip_nail)),
    *(Step(name=work.__name__, work=work) for work in (lid.gauge, lid.hinged, lid.down, lid.slotted, lid.leaf_end)),
    Step(name="butts", work=hinges.butts),
    *(Step(name=work.__name__, work=work) for work in (*parts.PARTS, *joints.JOINTS, joints.jointed)),
    Step(name="cut_list", work=parts.listed),
    *STOCKED,
    *(Step(name=work.__name__, work=work) for work in wood.WOODS),
)
"""Worked out on the way: other sums asked once each, the parts and the joints that several tables speak of."""

WEIGHT = (
    size(
        "wood_volume", "Wood in the box", "In all its parts; slot and holes are not taken out.", wood.wood_volume,
        kind="volume",
    ),
    *WEIGHED,
)  # fmt: skip
BOX = (
    size(
        "volume", "Inside volume", "Between sides, front and back, up to the lid.", shape.volume,
        "inside_width * (depth - rabbet) * ((back_height + front_inner) / 2 - bottom_thickness)", "up to the lid",
        kind="volume",
    ),
    size(
        "back_height", "Height of the back edge", "Of the sides, where they meet the back.", shape.back_height,
        "front_height + depth * tan(angle)", part="side",
    ),
    size(
        "front_height", "Height of the front edge", "Of the sides, where they meet the front.", shape.front_height,
        "back_height - depth * tan(angle)", part="side",
    ),
    size(
        "front_inner", "Front, height at its inner face", "The size to cut, before the bevel.", shape.front_inner,
        "front_height + rabbet * tan(angle)", "its inner face stands behind the sides' front edges", part="front",
    ),
    size(
        "front_outer", "Front, height at its outer face", "What is left there after the bevel.", shape.front_outer,
        "front_height - proud * tan(angle)", "its outer face stands before them", part="front",
    ),
    size(
        "proud", "Front stands proud of the sides", "What its rabbets leave of its thickness.", shape.proud,
        "front_thickness - rabbet",
    ),
)  # fmt: skip
ROUND = (
    size(
        "outside", "Outside width", "Of front and back.",
        lambda inside_width, side_thickness: inside_width + 2 * side_thickness, "inside_width + 2 * side_thickness",
    ),
    size(
        "back_high", "Back from crest to tail", "Along its grain.", shape.back_high,
        "tail + back_height + lid_thickness / cos(angle) + crest", "the lid measured plumb", part="back",
    ),
    size(
        "bottom_deep", "Width of the bottom", "Across its grain, back to front.", shape.bottom_deep,
        "depth - rabbet - allowance", part="bottom",
    ),
    size(
        "bottom_wide", "Length of the bottom", "Along its grain, side to side.", shape.bottom_wide,
        "inside_width - allowance", part="bottom",
    ),
)  # fmt: skip
THICK = {"side": "sides", "front": "front", "lid": "lid", "back": "back", "bottom": "bottom", "batten": "battens"}
TAKEN = (
    size(
        "rabbet", "Depth of the front's rabbet", "Half the front's thickness, unless given.", shape.rabbet,
        part="front",
    ),
    *thicknesses(THICK),
)  # fmt: skip
ASIDE = (
    size(
        "front_long", "Length of the front", "The same as the outside width, until it is cut.",
        lambda outside: outside, "outside", part="front", shown=False,
    ),
    size(
        "back_wide", "Back, edge to edge", "The same as the outside width, until it is cut.",
        lambda outside: outside, "outside", part="back", shown=False,
    ),
    size(
        "second_back", "Back edge of the second side", "The same as on the first side, until it is cut.",
        lambda back_height: back_height, "back_height", part="second side", shown=False,
    ),
    size(
        "second_front", "Front edge of the second side", "The same as on the first side, until it is cut.",
        lambda front_height: front_height, "front_height", part="second side", shown=False,
    ),
    size(
        "second_deep", "Depth of the second side", "The same as on the first side, until it is cut.",
        lambda depth: depth, "depth", part="second side", shown=False,
    ),
    size(
        "sides_alike", "Sides alike at either edge within", "Then the lid sits on both within the thickness of a card.",
        shape.sides_alike, "0.3 / cos(angle) / 2", "one corner feels what two edges are off", shown=False,
    ),
)  # fmt: skip
