"""Sloping-lid box: a box hung on a wall, its lid sloping to the front; every part from a few bench measurements."""

from calc.building.piece import Piece
from calc.building.size import Match
from calc.declare import AnyOf, Carry, Caution, Example, Source
from calc.pieces._cautions import ALWAYS, DUST, NAVY, NO_NAIL_HOLDS, REMEMBERED_NAIL, UNKNOWN_NAIL, glued_up
from calc.pieces._joints import SCREWED
from calc.pieces._sloping_asks import GIVENS
from calc.pieces._sloping_figure import figure
from calc.pieces._sloping_proof import proof
from calc.pieces._sloping_sizes import STEPS
from calc.pieces._sloping_solids import MEETINGS, solids
from calc.pieces._sloping_tells import ANSWERS
from calc.pieces._weight import REMEMBERED
from calc.tables import CHECK

ROUND_A_SCREW = 10
"""Millimetres of wood from the middle of a wall screw's hole to the end of the back, at least: common practice."""
FLAT = "so that the lid sits on both sides within the thickness of a card"
SUM = Piece(
    id="sloping-lid-box",
    title="Sloping-lid box",
    question="What do I cut for a wall box with a sloping lid?",
    asks=(
        "box with a sloping lid",
        "comment card box",
        "letter box for the wall",
        "suggestion box",
        "slant top box",
        "cutting list for a wall box",
        "every part of a sloping lid box",
        "box that hangs on a wall",
    ),
    purpose="From a few bench measurements, every part of a nailed wall box whose lid slopes to the front: sizes, "
    "grain, angles, the bevel gauge's marks, nails, hinge strip, slot, the order of work, and what to buy.",
    givens=GIVENS,
    any_of=AnyOf(2, ("back_height", "front_height", "angle")),
    answers=ANSWERS,
    steps=STEPS,
    matches=(
        Match(names=("back_height", "second_back"), within=lambda sides_alike: sides_alike, why=FLAT),
        Match(names=("front_height", "second_front"), within=lambda sides_alike: sides_alike, why=FLAT),
        Match(
            names=("depth", "second_deep"),
            within=lambda allowance: allowance,
            why="so that the bottom, sawn square, drops in between front and back",
        ),
    ),
    proof=proof,
    figure=figure,
    solids=solids,
    meetings=MEETINGS,
    sources=(
        Source("Plane geometry", "right triangles; parts laid out by coordinates", "identity"),
        NAVY,
        Source(
            "W. Noyes, Handwork in Wood (1910)",
            "butt hinges; estimates",
            "read",
            "Gain half the knuckle; a quarter more for waste.",
        ),
        DUST,
        Source("The weight sum", "density of the wood; its sources stand there", "computed"),
        Source(
            "Overhangs, crest and tail, clearances, nails apart, order of work, no glue across the grain",
            "",
            "common practice",
        ),
    ),
    cautions=(
        Caution(
            "This does not say what the box may carry or what a wall will hold: fix it as local practice and "
            "whoever answers for the wall require, and look for cables and pipes first."
        ),
        Caution(
            f"A wall screw stands less than {ROUND_A_SCREW} mm from the end of the back, which splits there: bore for "
            "it inside the box instead, or let the back stand out farther.",
            lambda v: any(0 < v[name] / 2 < ROUND_A_SCREW for name in ("crest", "tail")),
            "common practice",
        ),
        Caution("A lid falls: see that it stays open by itself, or fit a chain or stop."),
        *ALWAYS,
        glued_up("Sides or front", ("Side", "Front")),
        Caution(
            "Less than 5 mm of the front is left to nail through at its rabbets.",
            lambda v: v["proud"] < 5,
            "common practice",
        ),
        Caution(
            "The slot comes within 10 mm of the hinge leaf or of the front.",
            lambda v: v["slot_spare"] < 10,
            "common practice",
        ),
        Caution(
            "This strip is narrower than leaf and nails together want: nail it clear of the hinges, and pre-bore.",
            lambda v: v["strip"] < v["strip_least"],
            "common practice",
        ),
        Caution("The slot is longer than the space between the battens.", lambda v: v["slot_length"] > v["slot_room"]),
        REMEMBERED,
        Caution(
            "The size of what goes in is from memory: measure one before you cut the slot.",
            lambda v: CHECK in v["size_from"],
        ),
        REMEMBERED_NAIL,
        UNKNOWN_NAIL,
        NO_NAIL_HOLDS,
        Caution(
            "No screw of this number stays inside the lid under its hinges: choose thinner leaves, or rivet them.",
            lambda v: any(row["length"] is None and row["by"] == SCREWED for row in v["joints"]),
        ),
    ),
    limits_of="One box with square corners, 1° to 60° of slope, the sides between back and front, the bottom between "
    "all four, the lid in one slope on two battens. It says nothing of strength or of what the wall will bear.",
    example=Example(
        {
            "stock_width": "180 mm",
            "stock_thickness": "16 mm",
            "inside_width": "200 mm",
            "depth": "150 mm",
            "back_height": "220 mm",
            "front_height": "170 mm",
            "price": "9.50",
            "species": "white ash",
        },
        "A comment-card box for the village reading room, of 16 mm ash, to hang beside the door: a folded card goes in "
        "through the lid.",
    ),
    carry_on=(
        Carry("bevel", {"angle": "angle"}, "Set the bevel gauge, or see how near the marks come"),
        Carry("hinge-strip", {"angle": "angle", "length": "lid_long", "thickness": "lid_thickness"}, "Another hinge"),
        Carry("nail", {"held": "back_thickness", "second": "depth"}, "Another nail for the back"),
    ),
)
