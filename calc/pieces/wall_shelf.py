"""Wall shelf: one board housed in two shaped ends, a rail under it to screw to the wall; its sag checked."""

from calc.building.piece import Piece
from calc.building.size import Match
from calc.declare import Carry, Caution, Example, Source
from calc.pieces._cautions import ALWAYS, DUST, NAVY, REMEMBERED_NAIL, UNKNOWN_NAIL, glued_up, none_holds
from calc.pieces._shelf_asks import GIVENS
from calc.pieces._shelf_figure import figure
from calc.pieces._shelf_proof import proof
from calc.pieces._shelf_shape import ALIKE
from calc.pieces._shelf_sizes import STEPS
from calc.pieces._shelf_solids import MEETINGS, solids
from calc.pieces._shelf_tells import ANSWERS
from calc.pieces._weight import REMEMBERED
from calc.tables import CHECK

SUM = Piece(
    id="wall-shelf",
    title="Wall shelf",
    question="What do I cut for a shelf on the wall?",
    asks=(
        "shelf with two brackets",
        "wall shelf with shaped ends",
        "shelf for books on the wall",
        "cutting list for a shelf",
        "bracket shelf with a curve",
        "small shelf with a back rail",
        "shelf housed in its ends",
        "make a bookshelf for the wall",
    ),
    purpose="From a few bench measurements, every part of a shelf housed in two rounded ends, with a rail to screw to "
    "the wall: sizes, grain, curves, whether it will sag, nails, screws, the order of work, and what to buy.",
    givens=GIVENS,
    answers=ANSWERS,
    steps=STEPS,
    matches=(
        Match(
            names=("depth", "second_deep"),
            within=lambda ends_alike: ends_alike,
            why="so that the shelf lies flush with both ends at the front",
        ),
        Match(
            names=("drop", "second_drop"),
            within=lambda ends_alike: ends_alike,
            why="so that the shelf is level while both feet are",
        ),
    ),
    proof=proof,
    figure=figure,
    solids=solids,
    meetings=MEETINGS,
    sources=(
        Source("Plane geometry", "circles that touch an edge; parts laid out by coordinates", "identity"),
        Source(
            "US Forest Products Laboratory, Wood Handbook, FPL-GTR-282 (2021)",
            "equation 9-2 and table 9-1, by the sum of shelf sag",
            "read",
            "A board evenly loaded, resting on its two ends.",
        ),
        Source("A sag of 1/32 in to the foot, 1 in 384", "", "common practice"),
        Source(
            "The shelf housed in its ends and not only nailed: wood bears the load, nails only keep it in; the rail "
            "under it keeps the ends square and takes the screws",
            "",
            "common practice",
        ),
        NAVY,
        DUST,
        Source(f"Ends alike within {float(ALIKE)} mm, drop, rise, screws apart, order of work", "", "common practice"),
    ),
    cautions=(
        Caution(
            "This counts the screws and says what each must bear. It does not say what the wall will hold: fix it as "
            "local practice and whoever answers for the wall require, and look for cables and pipes first."
        ),
        Caution(
            "For a load over people's heads, or any that could hurt if it fell, follow local codes and ask someone "
            "licensed."
        ),
        *ALWAYS,
        Caution(
            "It sags more than the limit in the long run: bring the ends nearer than the longest span answered here, "
            "or make the shelf as thick as the least thickness answered here.",
            lambda v: v["sag_later"] > v["allowed"],
            "common practice: 1/32 in to the foot",
        ),
        glued_up("Shelf or ends"),
        Caution(
            "Less than 5 mm of the ends is left to nail through at the housings.",
            lambda v: v["behind"] < 5,
            "common practice",
        ),
        Caution(
            "So short and thick a board bends further than this, by shear (from memory: below 14 thicknesses).",
            lambda v: v["inside_width"] < 14 * v["shelf_thickness"],
        ),
        Caution(
            "A figure for this wood is from memory and not from a source: check it before you trust a shelf to it.",
            lambda v: CHECK in v["figure_from"],
        ),
        REMEMBERED_NAIL,
        UNKNOWN_NAIL,
        none_holds("or use screws there"),
        REMEMBERED,
    ),
    limits_of="One straight board between two ends alike, flush with their front edges, evenly loaded. The sag is that "
    "of clear wood resting on its two ends; the rail behind, which helps, is not counted. It says nothing of what the "
    "wall will bear.",
    example=Example(
        {
            "stock_width": "200 mm",
            "stock_thickness": "19 mm",
            "inside_width": "600 mm",
            "depth": "180 mm",
            "species": "white ash",
            "load": "18 kg",
            "price": "9.50",
        },
        "A shelf for the village reading room's returned books, of 19 mm ash, 600 mm between its ends; the curves are "
        "drawn round a saucer.",
    ),
    carry_on=(
        Carry("hang", {"mass": "weight", "contents": "load", "projection": "depth", "lever": "screw_up",
                       "top": "screws"}, "What the fixings must be rated for"),
        Carry("sag", {"species": "species", "span": "inside_width", "width": "shelf_deep",
                      "thickness": "shelf_thickness", "load": "load"}, "Another load on the shelf"),
    ),
)  # fmt: skip
