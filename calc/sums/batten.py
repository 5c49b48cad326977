"""Batten: what keeps a lid flat across its grain and lets it move, short enough to swing, nailed from within."""

from calc.declare import Carry, Caution, Example, Formula, Source, Sum
from calc.sums._batten import NO_NAIL, proof, work
from calc.sums._batten_figure import figure
from calc.sums._batten_form import ANSWERS, GIVENS
from calc.tables import CHECK

SUM = Sum(
    id="batten",
    title="Batten across a lid",
    moment="fit",
    question="How long and how stout a batten, and how is it nailed?",
    asks=(
        "how long should a batten be",
        "batten across a lid",
        "keep a lid flat",
        "ledge under a lid",
        "oval holes for wood movement",
        "slotted screw holes",
        "nails that do not come through the lid",
        "batten hits the front of the box",
        "let a lid move on its battens",
    ),
    purpose="From the lid, its movement and the box it shuts on: the batten's length and section, a nail whose point "
    "stays inside, and oval holes that let the lid move.",
    givens=GIVENS,
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula("swing", "sqrt((front + kerf / 2) ** 2 + thickness ** 2)", "the pin is over the middle of the kerf"),
        Formula(
            "reaches",
            "sqrt((swing - clearance) ** 2 - (thickness + batten_thickness) ** 2) - kerf / 2",
            "its lower corner stays nearer the pin than the front's arris",
        ),
        Formula("long", "width - near - far"),
        Formula("spacing", "(long - 2 * end) / (count - 1)"),
        Formula("oval", "shank + times * moves", "the shank, and room for the lid to go its ways"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("A corner turns about the hinge pin; a lid moves in proportion from where it is held", "", "identity"),
        Source(
            "Batten as thick as the lid, twice as wide; three nails, one fast; the rest in oval holes",
            "",
            "common practice",
        ),
        Source("Nails, by the sum of that name, with its tables", "", "computed"),
    ),
    limits_of="A batten square across the grain of a flat lid. The lid's length along its grain hardly moves. How far "
    "a lid really goes differs from board to board by a quarter or more.",
    cautions=(
        Caution(
            "No glue: a batten glued across the grain splits the lid, or bows it. Washers or round heads let it slide.",
            None,
            "common practice",
        ),
        Caution(
            "Without its movement no oval holes are answered: ask the sum called movement for it.",
            lambda v: v["movement"] is None,
        ),
        Caution(
            "No nail of this kind is so short that it holds and stays inside: take a thicker lid, a thinner batten, or "
            "screws.",
            lambda v: v["nail"] == NO_NAIL["nail"],
        ),
        Caution(
            "Less than two thirds of this nail is in the lid, and it holds less: a thinner batten under a thicker lid "
            "does better, or screws.",
            lambda v: v["into"] is not None and 3 * v["into"] < 2 * v["nail_length"],
            "US Navy training course NAVEDTRA 14119, chapter 3",
        ),
        Caution(
            "The thickness of this nail is from memory and not from a source: measure yours, for its oval holes.",
            lambda v: v["thickness_from"] is not None and CHECK in v["thickness_from"],
        ),
        Caution(
            "How thick this nail is stands in no table: measure yours, for its oval holes.",
            lambda v: v["shank"] is None and v["nail_length"] is not None,
        ),
        Caution(
            "Less than ten diameters to the end: bore for the nails there, or the batten splits.",
            lambda v: v["shank"] is not None and v["end"] < 10 * v["shank"],
            "common practice",
        ),
        Caution("Wear eye protection when you nail, and hold small work in a vice.", None, "from memory"),
    ),
    example=Example(
        {
            "width": "167 mm",
            "thickness": "16 mm",
            "movement": "2 mm",
            "near": "3 mm",
            "front": "135 mm",
            "batten_width": "30 mm",
            "kind": "brad",
        },
        "Two battens keep the lid of the comment-card box flat; the damp of the reading room moves it by 2 mm.",
    ),
    carry_on=(
        Carry("nail", {"held": "batten_thickness", "second": "thickness"}, "More about the nail"),
        Carry("screw", {"held": "batten_thickness", "second": "thickness"}, "Screw them on instead"),
        Carry("slot", {}, "A slot clear of the battens"),
        Carry("lid-opening", {"length": "width", "thickness": "thickness"}, "How far the lid opens"),
    ),
)
