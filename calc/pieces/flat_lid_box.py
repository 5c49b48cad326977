"""Flat-lid box: a plain box with a lid that lifts off, kept flat and in its place by two battens under it."""

from calc.building.piece import Piece
from calc.building.size import Match
from calc.declare import Carry, Caution, Example, Source, Values
from calc.discover import find
from calc.pieces._box_cautions import CAUTIONS, SOURCES, wide_bottom
from calc.pieces._flat_asks import GIVENS
from calc.pieces._flat_figure import figure
from calc.pieces._flat_sizes import ANSWERS, STEPS
from calc.pieces._flat_solids import MEETINGS, solids
from calc.pieces._joints import SCREWED


def proof(v: Values) -> dict[str, float]:
    """Walked across the box by coordinates, never by the formulas; the wood by what is taken out of the whole block."""
    wide, deep, wall = float(v["lid_long"]), float(v["lid_wide"]), v["wall_thickness"]
    between = v["battens_over"] - 2 * v["batten_width"]
    across = 2 * (v["end_overhang"] + wall + v["side_clearance"] + v["batten_width"]) + between
    along = 2 * (v["edge_overhang"] + v["tongue"] + v["rabbet"] + v["clearance"]) + v["batten_long"]
    fits = v["side_long"] - v["allowance"]
    return {
        "overhangs, walls, clearances, battens and the space between make the lid": float(across) / wide - 1,
        "overhangs, walls, clearances and a batten make its width": float(along) / deep - 1,
        "bottom, room and lid stand as high as the box": float(
            v["bottom_thickness"] + v["inside_high"] + v["lid_thickness"] - v["outside_high"]
        )
        / float(v["outside_high"]),
        "the wood is the block less the room, less the gaps about the bottom": _hollow(v),
        "at its dampest the bottom fills its rabbets but for the allowance": float(_dampest(v) - fits) / deep,
    }


def _hollow(v: Values) -> float:
    block = v["outside_wide"] * v["outside_deep"] * v["front_high"] - v["volume"]
    seat = (v["inside_wide"] + 2 * v["rabbet"]) * v["side_long"] - v["bottom_long"] * v["bottom_across"]
    lid = v["lid_long"] * v["lid_wide"] * v["lid_thickness"]
    battens = 2 * v["batten_long"] * v["batten_width"] * v["batten_thickness"]
    return float(block - seat * v["bottom_thickness"] + lid + battens) / float(v["wood_volume"]) - 1


def _dampest(v: Values) -> float:
    """The bottom itself, moved by the sum of wood movement to whichever climate makes it widest."""
    wood = {"species": v["species"], "cut": v["cut"], "own": v["shrinkage"], "moisture_now": v["moisture"]}
    airs = (v["humidity_damp"], v["humidity_dry"])
    wet = [find("moisture").of(temperature=v["temperature"], humidity=air)["emc"] for air in airs]
    moved = [find("movement").of(**wood, width=v["bottom_across"], moisture_then=one)["width_then"] for one in wet]
    return max(float(v["bottom_across"]), *map(float, moved))


HELD = 1.5
"""Thicknesses of a batten's screw that go into the lid, at least: common practice."""


def _holds_little(v: Values) -> bool:
    """Whether the screws chosen for the battens go less far than that into the lid."""
    screws = [row for row in v["joints"] if row["by"] == SCREWED and row["length"] is not None]
    return any(row["length"] - row["held"] < HELD * row["diameter"] for row in screws)


LEVEL = "so that the lid lies on all four within the thickness of a card"
SQUARE = "so that the box stands square"
SUM = Piece(
    id="flat-lid-box",
    title="Flat-lid box",
    question="What do I cut for a plain box with a lift-off lid?",
    asks=(
        "box with a flat lid",
        "box with a lift-off lid",
        "box whose lid lifts off",
        "plain wooden box with a lid",
        "cutting list for a box with a loose lid",
        "box for draughts pieces",
        "rabbeted box nailed together",
        "every part of a flat lid box",
    ),
    purpose="From the room it must hold, every part of a nailed box whose flat lid lifts off: walls with rabbeted "
    "corners, a bottom let in from below, a lid on two battens that may move; nails, screws, order of work, and what "
    "to buy.",
    givens=GIVENS,
    answers=ANSWERS,
    steps=STEPS,
    matches=(
        Match(names=("front_high", "back_high", "side_high", "second_high"), within=lambda alike: alike, why=LEVEL),
        Match(names=("front_long", "back_long"), within=lambda alike: alike, why=SQUARE),
        Match(names=("side_long", "second_long"), within=lambda alike: alike, why=SQUARE),
    ),
    proof=proof,
    figure=figure,
    solids=solids,
    meetings=MEETINGS,
    sources=(
        *SOURCES,
        Source("Round-head screws: one fast in the middle, the end ones in slots", "", "common practice"),
    ),
    cautions=(
        *CAUTIONS,
        wide_bottom("along the front and at the middle of the sides only"),
        Caution(
            "At its driest the bottom slips off its ledge: make it wider, or of wood that moves less.",
            lambda v: v["bottom_bears"] <= 0,
        ),
        Caution(
            "No screw sold reaches through a batten and stays inside the lid: give a thicker lid, or other battens.",
            lambda v: any(row["length"] is None and row["by"] == SCREWED for row in v["joints"]),
        ),
        Caution(
            "The screws go less than one and a half times their thickness into the lid and pull out: give a thicker "
            "lid, thinner battens or a thinner screw.",
            _holds_little,
            "common practice",
        ),
        Caution("No glue under a batten: held fast across its grain the lid splits or bows.", source="common practice"),
        Caution(
            "The overhang is less than a finger can lift by: cut two hollows under the lid's ends, or give more.",
            lambda v: min(v["edge_overhang"], v["end_overhang"]) < 3,
            "common practice",
        ),
        Caution(
            "The battens reach down half the room inside or more: take thinner ones.",
            lambda v: 2 * v["batten_thickness"] > v["inside_high"],
        ),
    ),
    limits_of="One box with square corners, front and back over the sides, the bottom in one piece, a flat lid with "
    "its grain side to side. It says nothing of strength.",
    example=Example(
        {
            "width": "220 mm",
            "depth": "140 mm",
            "height": "60 mm",
            "stock_width": "180 mm",
            "stock_thickness": "12 mm",
            "species": "white ash",
            "nails": "brad",
            "moisture": "9",
            "price": "9.50",
        },
        "A box for the reading room's draughts pieces, of 12 mm ash, to stand on the shelf beside the board.",
    ),
    carry_on=(
        Carry("movement", {"species": "species", "cut": "cut", "width": "lid_wide"}, "See how the lid moves"),
        Carry("inside-out", {}, "Find the room that what goes in wants"),
        Carry("finish", {}, "Finish it"),
    ),
)
