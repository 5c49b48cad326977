"""Splayed tray: four leaning sides, compound cuts, a bottom let in as a wedge, hand holes in the ends."""

import math

from calc.building.piece import Piece
from calc.building.size import Match
from calc.declare import Carry, Caution, Example, Source, Values
from calc.drawing.solid import Solid, volume
from calc.pieces._cautions import ALWAYS, DUST, NAVY, NO_NAIL_HOLDS, REMEMBERED_NAIL, UNKNOWN_NAIL, glued_up
from calc.pieces._tray_asks import GIVENS
from calc.pieces._tray_figure import figure
from calc.pieces._tray_sizes import STEPS
from calc.pieces._tray_solids import MEETINGS, solids
from calc.pieces._tray_tells import ANSWERS
from calc.pieces._weight import REMEMBERED


def proof(v: Values) -> dict[str, float]:
    """Planes in space, and the corners where three of them meet: edges, wood and room come out of those alone."""
    parts: dict[str, Solid] = {one.part: one for one in solids(v)}
    wood = sum(volume(one) for one in solids(v))
    edge = {name: _outer_top(one, 1 if name != "End" else 0) for name, one in parts.items()}
    rim, turn = float(v["height"] - v["floor_up"]), math.radians(float(v["lean"]))
    bottom = parts["Bottom"]
    floor = [spot for face in bottom.faces for spot in face if abs(spot[2] - float(v["floor_up"])) < 1e-6]
    square = -math.cos(math.radians(float(v["dihedral"])))
    return {
        "a long side's outer top arris is as long as it is marked": edge["Long side"] / float(v["long_side"]) - 1,
        "an end's outer top arris is as long as it is marked": edge["End"] / float(v["end_side"]) - 1,
        "the wood between the planes is the wood answered": wood / float(v["wood_volume"]) - 1,
        "the floor is as long as was asked": 2 * max(y for _, y, _ in floor) / float(v["long"]) - 1,
        "the floor is as wide as was asked": 2 * max(x for x, _, _ in floor) / float(v["wide"]) - 1,
        "the normals of two sides make the angle between them": square - math.sin(turn) ** 2,
        "level upon level, the room is as answered": _room(v, rim) / float(v["volume"]) - 1,
    }


def _outer_top(solid: Solid, axis: int) -> float:
    """How long a side is along the arris that stands farthest out."""
    spots = [spot for face in solid.faces for spot in face]
    far = max(abs(spot[1 - axis]) for spot in spots)
    along = [spot[axis] for spot in spots if abs(spot[1 - axis]) > far - 1e-6]
    return max(along) - min(along)


def _room(v: Values, rim: float) -> float:
    """The room inside by Gauss's two levels, which are exact for areas that go with the square."""
    levels = [rim * (1 + way / math.sqrt(3)) / 2 for way in (-1, 1)]
    gain = [(float(v[f"top_{way}"]) - float(v[way])) / rim for way in ("long", "wide")]
    areas = [(float(v["long"]) + level * gain[0]) * (float(v["wide"]) + level * gain[1]) for level in levels]
    return rim * sum(areas) / 2


SUM = Piece(
    id="splayed-tray",
    title="Splayed tray",
    question="What do I cut for a tray with leaning sides?",
    asks=(
        "tray with sloping sides",
        "every part of a splayed tray",
        "tray with hand holes",
        "knife box with leaning sides and a bottom",
        "cutting list for a tray",
        "tray with compound angles",
        "serving tray with sides that lean out",
        "how big is the bottom of a splayed tray",
    ),
    purpose="From the inside at the bottom, the height and the lean, every part of a nailed tray with leaning sides: "
    "compound cuts, bevels, the bottom let in, hand holes, the order of work, and what to buy.",
    givens=GIVENS,
    answers=ANSWERS,
    steps=STEPS,
    matches=(
        Match(names=("long_side", "second_long"), within=lambda sides_alike: sides_alike,
              why="so that the corners close and the tray is square"),
        Match(names=("end_side", "second_end"), within=lambda sides_alike: sides_alike,
              why="so that the corners close and the tray is square"),
        Match(names=("side_wide", "end_wide"), within=lambda sides_alike: sides_alike,
              why="so that the rim runs level round the corners"),
    ),
    proof=proof,
    figure=figure,
    solids=solids,
    meetings=MEETINGS,
    sources=(
        Source("Plane geometry", "planes in space; corners where three of them meet", "identity"),
        Source(
            "International Correspondence Schools, The Building Trades Pocketbook",
            "Hopper bevels, fig. 25, by the sum of splayed sides",
            "read",
            "A drawn construction of face, mitre and butt bevels.",
        ),
        NAVY,
        DUST,
        Source(
            "The bottom planed to the lean and let in from above: it wedges itself tight and wants no slanting groove",
            "",
            "common practice",
        ),
        Source("Hand holes, raised bottom, butted corners, nails apart, order of work", "", "common practice"),
    ),
    cautions=(
        Caution(
            "A slanting cut pulls the saw aside: clamp the board, start on the waste side, keep hands behind the edge. "
            "The bevelled arris is thin and sharp: ease it.",
            source="general hand-tool practice, from memory",
        ),
        *ALWAYS,
        Caution("Test every setting on an offcut: a corner wants face, edge and bevel right together."),
        Caution(
            "A wide bottom of solid wood swells and may push the corners open: take dry, quarter-cut wood, or plywood.",
            lambda v: v["bottom_wide"] > 200,
            "common practice",
        ),
        Caution(
            "Parts this small cannot be held safely by hand: saw the angles on a longer board first, or clamp them.",
            lambda v: min(v["end_side"], v["side_wide"]) < 75,
            "common practice",
        ),
        glued_up("Sides or bottom"),
        REMEMBERED_NAIL,
        UNKNOWN_NAIL,
        NO_NAIL_HOLDS,
        REMEMBERED,
    ),
    limits_of="Four sides that lean out alike, 3° to 45° from upright, of one thickness, butted or mitred; a bottom "
    "of one board, its grain lengthways. It says nothing of what the handles may carry.",
    example=Example(
        {
            "stock_width": "150 mm",
            "stock_thickness": "12 mm",
            "long": "260 mm",
            "wide": "170 mm",
            "height": "90 mm",
            "lean": "15",
            "species": "white ash",
            "price": "9.50",
        },
        "A tray for the village's exchange of seed packets, of 12 mm ash: two rows of packets stand on its floor, and "
        "it is carried out to the table by its ends.",
    ),
    carry_on=(
        Carry("bevel", {"angle": "face_cut"}, "Set the bevel gauge for the faces"),
        Carry("splay", {"lean": "lean", "size": "foot_wide", "other": "foot_long", "height": "height",
                        "thickness": "side_thickness"}, "The same sides by themselves"),
        Carry("movement", {"species": "species", "width": "bottom_wide"}, "How much the bottom will move"),
    ),
)  # fmt: skip
