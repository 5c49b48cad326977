"""Flatten: what a cupped or twisted board leaves when both faces are flat, and what ripping it first saves."""

from calc.declare import Carry, Caution, Example, Formula, Source, Sum, Values
from calc.sums._flatten import work
from calc.sums._flatten_figure import figure, lowest
from calc.sums._flatten_form import ANSWERS, GIVENS

SLIM = 0.6
"""Share of the thickness left under which a board is better used otherwise: common practice."""


def proof(v: Values) -> dict[str, float]:
    """The end's highest and lowest place are as far apart as is taken off; cup, width and radius close in a circle."""
    cup, twist, thick = float(v["cup_each"]), float(v["twist_each"]), float(v["thickness"])
    spread = cup + twist / 4 - lowest(cup, twist)
    found = {"the end stands as far out of flat as is taken off": (spread - float(v["loss"])) / thick}
    if v["radius"] is not None:
        radius, half = float(v["radius"]), float(v["width"]) / 2
        found["the hollow face lies on its circle"] = ((radius - float(v["cup"])) ** 2 + half**2) / radius**2 - 1
    return found


SUM = Sum(
    id="flatten",
    title="Flatten a board",
    moment="stock",
    question="How thick is a warped board when it is flat?",
    asks=(
        "how thick will a cupped board be when flat",
        "flatten a twisted board",
        "how much is lost to flatten it",
        "board in winding",
        "winding sticks",
        "rip a cupped board into strips",
        "cup in a wide board",
        "thickness left after planing",
        "warped board",
        "rip it before planing",
    ),
    purpose=(
        "From the cup and twist of a board: the thickness left when both faces are flat, the radius of the cup, and "
        "what ripping it or cutting it shorter first saves."
    ),
    givens=GIVENS,
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula("radius", "width ** 2 / (8 * cup) + cup / 2", "of the hollow face, from its chord and its depth"),
        Formula("half_angle", "asin(width / (2 * radius))"),
        Formula(
            "cup_each",
            "2 * (radius + thickness) * sin(half_angle / (2 * strips)) ** 2",
            "about the whole cup over the strips squared",
        ),
        Formula("corner", "twist * width / reach", "what winding sticks as long as the board is wide would show"),
        Formula("twist_each", "corner / (strips * lengths)", "a twist goes by width times length"),
        Formula("governs", "max(8 * cup_each, twist_each)"),
        Formula(
            "loss",
            "(governs + twist_each) ** 2 / (8 * governs)",
            "a cup alone takes no more than itself",
        ),
        Formula("twist_alone", "twist_each"),
        Formula("loss", "twist_alone / 2"),
        Formula("left", "max(0, thickness - loss - 2 * clean)"),
        Formula("strip_width", "(width - (strips - 1) * lost) / strips", "one rip fewer than strips"),
        Formula("length_each", "length / lengths"),
        Formula("width_left", "width - (strips - 1) * lost"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Euclid, Elements", "book III, proposition 35", "identity", "Chord, depth and radius of a circle."),
        Source(
            "The saddle between two ends that turn evenly", "", "identity", "Its height goes by width times length."
        ),
        Source("Straightedge and winding sticks; what a rip costs", "", "common practice"),
    ),
    cautions=(
        Caution(
            "A board that is let go by sawing moves again: leave it a few days, and measure before the last planing."
        ),
        Caution(
            "Nothing is left of this board when it is flat: rip it, or cut it shorter, first.",
            lambda v: v["left"] == 0,
        ),
        Caution(
            "More than a third of the board goes into shavings: rip it or cut it shorter first, or use it where it is "
            "out of sight (common practice).",
            lambda v: 0 < v["left"] < SLIM * v["thickness"],
        ),
        Caution(
            "Clamp short or narrow pieces against a stop, and keep fingers off the ends, before you plane them.",
            lambda v: v["strip_width"] < 50 or v["length_each"] < 150,
        ),
    ),
    carry_on=(
        Carry(
            "glue-up",
            {"strip_width": "strip_width", "lost": "to_true", "panel_length": "length_each", "thickness": "left"},
            "Glue the trued strips up again",
        ),
        Carry("rough-size", {"thickness": "wanted"}, "What to saw out for that thickness"),
        Carry("board-measure", {}, "What the flat boards come to"),
    ),
    limits_of=(
        "An even cup, of at most a quarter of the width, and an even twist, of at most half of it. A board bowed or "
        "crooked along its length loses more: cut it shorter first."
    ),
    example=Example(
        {
            "thickness": "22 mm",
            "width": "220 mm",
            "length": "800 mm",
            "cup": "6 mm",
            "twist": "3 mm",
            "wanted": "16 mm",
        },
        "A rough ash board of 22 mm for the comment-card box is cupped and in winding; it is wanted 16 mm thick.",
    ),
)
