"""Tenon: its thickness by thirds or by the chisel, its shoulders, length, width and haunch, and the mortise for it."""

from fractions import Fraction

from calc.declare import Carry, Caution, Example, Formula, Source, Sum
from calc.sums import _tenon_form as form
from calc.sums._tenon import proof, work
from calc.sums._tenon_figure import figure

THICK, THIN, WIDE = Fraction(1, 2), Fraction(1, 4), 6
"""Shares of the stock past which cheeks or tenon are weak; thicknesses in a tenon's width past which it is parted."""

SUM = Sum(
    id="tenon",
    title="Mortise and tenon",
    moment="join",
    question="How thick, how wide and how long is the tenon?",
    asks=(
        "tenon thickness",
        "mortise and tenon sizes",
        "rule of thirds for a tenon",
        "how deep a mortise",
        "how long should a tenon be",
        "haunched tenon in a grooved frame",
        "which chisel for a mortise",
        "rail length with tenons",
        "set the mortise gauge",
        "shoulders of a tenon",
    ),
    purpose=(
        "From the rail and the stile: the tenon's thickness by thirds or by your chisel, its shoulders, width, length "
        "and haunch, the mortise to chop, the gauge, and the rail's whole length."
    ),
    givens=form.GIVENS,
    answers=form.ANSWERS,
    work=work,
    formulas=(
        Formula("third", "thickness / 3", "W. Fairham: a third of the stock"),
        Formula("tenon", "third"),
        Formula("tenon", "chisel", "the mortise is as wide as the chisel"),
        Formula("shoulder", "(thickness - tenon) / 2"),
        Formula("mortise", "into * deep"),
        Formula("length", "mortise + beyond"),
        Formula("haunch_width", "width / 3", "common practice: a third of the rail"),
        Formula("tenon_width", "width - mortise_from - inner"),
        Formula("mortise_to", "mortise_from + tenon_width"),
        Formula("gauge_far", "shoulder + tenon"),
        Formula("rail", "between + 2 * length"),
        Formula("area", "2 * tenon_width * min(length, mortise)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "W. Fairham, Woodwork Joints",
            "mortise and tenon",
            "read",
            "A tenon a third of the stock; 1 to 3 in of horn left on a mortised stile.",
        ),
        Source(
            "Haunch a third of the rail, a stopped mortise two thirds of the stile, edge shoulders, chisels on sale",
            "",
            "common practice",
        ),
    ),
    limits_of=(
        "One tenon in the middle of the thickness, rail and stile of one thickness and square to each other. It does "
        "not say what the joint bears."
    ),
    cautions=(
        Caution(
            "Clamp the stile over a leg of the bench, chop with both hands behind the edge, and come from both sides "
            "when the tenon comes through.",
            source="general hand-tool practice, from memory",
        ),
        Caution(
            "Leave the stile 1 to 3 in longer past the mortise until the joint is glued: without that horn the end "
            "splits out.",
            lambda v: v["place"] == "corner",
            "W. Fairham, Woodwork Joints",
        ),
        Caution(
            "More than half of the stock in the tenon leaves the mortise thin cheeks, which split.",
            lambda v: v["tenon"] > v["thickness"] * THICK,
            "common practice",
        ),
        Caution(
            "Less than a quarter of the stock makes a thin tenon, which breaks.",
            lambda v: v["tenon"] < v["thickness"] * THIN,
            "common practice",
        ),
        Caution(
            "A tenon narrower than it is thick is little to glue, and breaks: give a wider rail, or less shoulder or "
            "groove.",
            lambda v: v["tenon_width"] < v["tenon"],
            "common practice",
        ),
        Caution(
            "A tenon more than six times as wide as thick shrinks loose and weakens the stile: part it in two with a "
            "haunch between.",
            lambda v: v["tenon_width"] > WIDE * v["tenon"],
            "common practice",
        ),
    ),
    example=Example(
        {"thickness": "16 mm", "width": "2 in", "into": "2 in", "groove": "3/8 in", "between": "10 in"},
        "The frame of the notice board above the comment-card box: 16 mm ash, rails and stiles 2 in wide, grooved "
        "3/8 in for the panel, 10 in between the stiles.",
    ),
    carry_on=(
        Carry("groove", {"depth": "groove", "frame": "thickness", "opening": "between"}, "Cut the panel for the frame"),
        Carry("diagonal", {}, "Test the frame for square"),
        Carry("clamping", {}, "Clamp it up"),
    ),
)
