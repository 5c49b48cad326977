"""Sliding-lid box: a box whose lid runs in grooves over a lower front, with room to swell and enough to hold it."""

from calc.building.piece import Piece
from calc.building.size import Match
from calc.declare import Carry, Caution, Example, Source, Values
from calc.discover import find
from calc.pieces._box_cautions import CAUTIONS, SOURCES, wide_bottom
from calc.pieces._sliding_asks import GIVENS
from calc.pieces._sliding_figure import figure
from calc.pieces._sliding_sizes import ANSWERS, STEPS
from calc.pieces._sliding_solids import MEETINGS, solids


def proof(v: Values) -> dict[str, float]:
    """Walked through the box by coordinates, never by the formulas; the lid moved by the sum of wood movement."""
    long, wide, high = float(v["outside_long"]), float(v["outside_wide"]), float(v["side_high"])
    floor = v["bottom_thickness"] + v["inside_high"]
    tip = v["wall_thickness"] - v["groove_deep"] + v["end_clearance"] + v["lid_long"]
    return {
        "floor, groove and lip stand as high as the sides": float(floor + v["groove"] + v["lip"]) / high - 1,
        "the lid lies as far below their top as it should": float(high - floor - v["lid_thickness"] - v["sunk"]) / high,
        "the front stands as high as the groove's floor": float(v["front_high"] - floor) / high,
        "tongue, play and what is cut off it make lid and play": float(
            v["lid_tongue"] + v["lid_step"] - v["lid_thickness"]
        )
        / high,
        "from its groove the lid reaches past the front by its overhang": float(tip - v["outside_long"] - v["overhang"])
        / long,
        "walls and room make the width": float(2 * v["wall_thickness"] + v["inside_wide"]) / wide - 1,
        "at its dampest the lid leaves the spare": _spare(v) / wide,
        "both sides held, the room and both gaps reach across": float(
            v["lid_wide"] + 2 * v["lid_gap"] - v["inside_wide"] - 2 * v["groove_deep"]
        )
        / wide,
    }


def _spare(v: Values) -> float:
    """What the lid leaves of its grooves in whichever climate makes it widest, less the spare."""
    wood = {"species": v["species"], "cut": v["cut"], "own": v["shrinkage"], "moisture_now": v["moisture"]}
    airs = (v["humidity_damp"], v["humidity_dry"])
    wet = [find("moisture").of(temperature=v["temperature"], humidity=air)["emc"] for air in airs]
    moved = [find("movement").of(**wood, width=v["lid_wide"], moisture_then=one)["width_then"] for one in wet]
    most = max(float(v["lid_wide"]), *map(float, moved))
    return float(v["inside_wide"] + 2 * v["groove_deep"] - v["spare"]) - most


LEVEL = "so that the lid runs level, within the thickness of a card"
PARED = f"{LEVEL}: pare the lower edge of a groove that is too high"
SQUARE = "so that the box stands square and the lid runs its whole way"
SUM = Piece(
    id="sliding-lid-box",
    title="Sliding-lid box",
    question="What do I cut for a box with a sliding lid?",
    asks=(
        "box with a sliding lid",
        "pencil box",
        "candle box",
        "lid that slides in grooves",
        "groove for a sliding lid",
        "cutting list for a pencil box",
        "sliding lid that does not jam in summer",
        "every part of a sliding lid box",
    ),
    purpose="From the room it must hold, every part of a nailed box whose lid slides in grooves: rabbeted sides, a "
    "lower front, the grooves and the lid's edges made to them, room for the wood to move; order of work, and what to "
    "buy.",
    givens=GIVENS,
    answers=ANSWERS,
    steps=STEPS,
    matches=(
        Match(names=("side_high", "second_high", "back_high"), within=lambda alike: alike, why=LEVEL),
        Match(names=("lip", "second_lip", "back_lip"), within=lambda alike: alike, why=PARED),
        Match(names=("side_long", "second_long"), within=lambda alike: alike, why=SQUARE),
        Match(names=("front_long", "back_long"), within=lambda alike: alike, why=SQUARE),
    ),
    proof=proof,
    figure=figure,
    solids=solids,
    meetings=MEETINGS,
    sources=(*SOURCES, Source("Play of a tongue, room left at the dampest, thumb notch", "", "common practice")),
    cautions=(
        *CAUTIONS,
        wide_bottom("along one side and at the middle of front and back only"),
        Caution(
            "At its driest so little of the lid is held that it may drop out of one groove: cut the grooves deeper.",
            lambda v: v["hold"] < 2,
            "common practice",
        ),
        Caution(
            "The grooves are deeper than the rabbets and show at the back ends of the sides: stop them, or plug them.",
            lambda v: v["groove_deep"] > v["rabbet"],
        ),
        Caution(
            "Less than 3 mm of wood is left behind the grooves or above them: it breaks when the lid is forced.",
            lambda v: min(v["behind"], v["lip"]) < 3,
            "common practice",
        ),
        Caution(
            "The thumb notch is wider than the lid's raised field: make it narrower.",
            lambda v: v["notch_wide"] > v["lid_field"],
        ),
        Caution("No glue and no varnish in the grooves: wax lets the lid run.", source="common practice"),
    ),
    limits_of="One box with square corners, sides over front and back, the bottom in one piece, a flat lid whose grain "
    "runs the way it slides. It says nothing of strength.",
    example=Example(
        {
            "length": "200 mm",
            "width": "64 mm",
            "height": "34 mm",
            "stock_width": "90 mm",
            "stock_thickness": "12 mm",
            "species": "american basswood",
            "nails": "brad",
            "moisture": "9",
            "price": "7.20",
        },
        "A pencil box for the reading room's desk, of 12 mm American lime, which the table calls basswood.",
    ),
    carry_on=(
        Carry("movement", {"species": "species", "cut": "cut", "width": "lid_wide"}, "See how the lid moves"),
        Carry("groove", {"species": "species", "opening": "inside_wide", "depth": "groove_deep"}, "Try other grooves"),
        Carry("finish", {}, "Finish it"),
    ),
)
