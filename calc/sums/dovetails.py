"""Dovetails: tails and pins as running marks for both boards, and the slope in degrees."""

from fractions import Fraction

from calc.declare import Carry, Caution, Example, Formula, Source, Sum
from calc.sums import _dovetails_form as form
from calc.sums._dovetails import figure, proof, work

STEEPEST, FLATTEST = 6, 8
WIDEST = Fraction("44.45")
"""Millimetres, 1 3/4 in: the ordinary limit for the width of a tail by W. Noyes (1910)."""
FINEST = Fraction("1.5875")
"""Millimetres, 1/16 in: the narrowest pin of I. S. Griffith."""

SUM = Sum(
    id="dovetails",
    title="Dovetails",
    moment="mark-out",
    question="Where do I mark the tails and pins, and at what slope?",
    asks=(
        "lay out dovetails",
        "dovetail angle for hardwood",
        "1 in 6 or 1 in 8 dovetail in degrees",
        "how many dovetails across a drawer",
        "spacing of tails and pins",
        "dovetail marking out",
        "half pin width",
        "pin size for a dovetailed box",
        "lapped dovetails on a drawer front",
    ),
    purpose=(
        "From the boards, the number of tails and the narrowest pin: every mark on both boards from one edge, the "
        "slope in degrees, and both gauge settings."
    ),
    givens=form.GIVENS,
    answers=form.ANSWERS,
    work=work,
    formulas=(
        Formula("tail", "(width - (tails - 1) * pin - 2 * half) / tails", "what the pins leave, shared"),
        Formula("tail_line", "thickness - lap"),
        Formula("flare", "tail_line / slope"),
        Formula("tail_narrow", "tail - 2 * flare"),
        Formula("angle", "atan(1 / slope)"),
        Formula("pin_wide", "pin + 2 * flare"),
        Formula("half_wide", "half + flare"),
        Formula("pin_line", "other"),
        Formula("ratio", "tail / pin"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("W. Fairham, Woodwork Joints", "dovetails", "read", "1 in 8, and never steeper than 1 in 6."),
        Source(
            "W. Noyes, Handwork in Wood (1910)",
            "dovetails",
            "read",
            "Strongest with tails and pins alike; for looks up to four times as wide; 1 3/4 in the ordinary limit. He "
            "slopes them 5/8 in 3 in, which is steeper than Fairham allows.",
        ),
        Source("I. S. Griffith, Essentials of Woodworking", "dovetails", "read", "Fine pins scarcely over 1/16 in."),
        Source("1 in 6 in soft wood, 1 in 8 in hard; half pins no narrower than the rest", "", "common practice"),
    ),
    limits_of="Tails all alike and evenly spaced, 1 in 3 to 1 in 20, through or lapped, in boards square at the end.",
    cautions=(
        Caution(
            "Clamp the board, chop from both faces with both hands behind the chisel's edge, and never towards the "
            "hand that holds the work.",
            source="general hand-tool practice, from memory",
        ),
        Caution(
            "Steeper than 1 in 6 the corners of the tails are short in the grain and break off.",
            lambda v: v["slope"] < STEEPEST,
            "W. Fairham, Woodwork Joints",
        ),
        Caution(
            "Flatter than 1 in 8 the tails hold little more than a comb joint would.",
            lambda v: v["slope"] > FLATTEST,
            "common practice",
        ),
        Caution(
            "Tails this wide pass the ordinary limit of 1 3/4 in: the board may cup between the pins; add a tail.",
            lambda v: v["tail"] > WIDEST,
            "W. Noyes, Handwork in Wood (1910)",
        ),
        Caution(
            "Tails over four times as wide as the pins are wider than even looks allow: the pins are the weak part.",
            lambda v: v["ratio"] > 4,
            "W. Noyes, Handwork in Wood (1910)",
        ),
        Caution(
            "Pins narrower than 1/16 in are finer than any book gives: no chisel goes between.",
            lambda v: v["pin"] < FINEST,
            "I. S. Griffith, Essentials of Woodworking",
        ),
        Caution(
            "Half pins narrower than the others split off at the edges of the board.",
            lambda v: v["half"] < v["pin"],
            "common practice",
        ),
    ),
    example=Example(
        {"width": "4 1/2 in", "tails": "4", "thickness": "16 mm", "wood": "hard"},
        "The drawer for blank cards under the comment-card box is 4 1/2 in deep; its 16 mm ash sides are dovetailed "
        "through the back.",
    ),
    carry_on=(
        Carry("bevel", {"angle": "angle"}, "Set the bevel gauge to the slope"),
        Carry("slope", {"angle": "angle"}, "See the slope as rise and run"),
    ),
)
