"""Groove: how wide to cut a panel so that it swells without bursting its frame, and shrinks without leaving it."""

from calc.declare import AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.sums import _groove_form as form
from calc.sums._groove import proof, work
from calc.sums._groove_figure import figure
from calc.sums._movement import DAMP, DISAGREE
from calc.tables import CHECK

BARE = 3
"""Millimetres of panel in a groove under which a knock may lift it out: common practice."""

SUM = Sum(
    id="groove",
    title="Panel in a groove",
    moment="join",
    question="How wide do I cut a panel for its grooves?",
    asks=(
        "panel size for a frame and panel door",
        "gap to leave in a panel groove",
        "floating panel in a frame",
        "how deep a groove for a panel",
        "drawer bottom in a groove",
        "solid wood panel swelling in its frame",
        "how wide to cut a panel in winter",
        "bottom of a box in grooves",
        "width of a groove in 20 mm stock",
    ),
    purpose=(
        "From the wood, the frame's opening, the depth of its grooves and the climates the panel will meet: its width "
        "to cut, the gap to leave now, and how much still holds it at its narrowest."
    ),
    givens=form.GIVENS,
    any_of=AnyOf(1, ("moisture_now", "humidity_now")),
    answers=form.ANSWERS,
    work=work,
    formulas=(
        Formula(
            "panel",
            "(opening + 2 * depth - spare) / (1 + max(0, swells, shrinks) / 100)",
            "so that it fills its grooves but for the spare when it is widest",
        ),
        Formula("panel_long", "along + 2 * depth - spare", "along the grain it hardly moves"),
        Formula("gap", "(opening + 2 * depth - panel) / 2"),
        Formula("widest", "opening + 2 * depth - spare"),
        Formula("narrowest", "panel * (1 + min(0, swells, shrinks) / 100)"),
        Formula("gap_damp", "(opening + 2 * depth - panel * (1 + swells / 100)) / 2"),
        Formula("hold", "(narrowest - opening) / 2"),
        Formula("hold_far", "narrowest - opening - depth"),
        Formula("groove", "frame / 3"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "US Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010) and FPL-GTR-282 (2021)",
            "as told by the sums of moisture and wood movement",
            "read",
            "Moisture from climates, equation 4-5; change in size, equations 13-2 and 13-3.",
        ),
        Source("W. Fairham, Woodwork Joints", "tenon: a third of the stock", "read", "Taken for the groove as well."),
        Source("Climates of a room, room left at the dampest", "", "common practice"),
    ),
    limits_of=(
        "A panel of one wood, free in its grooves, glued nowhere. Single boards move a quarter more or less than their "
        "kind, so deeper grooves are safer than finer sums."
    ),
    cautions=(
        Caution(
            "Glue no part of the panel's edges: held fast it splits, or opens the frame. Finish its edges before the "
            "frame is closed, or a bare line shows when it shrinks.",
            source="common practice",
        ),
        Caution(
            "When the panel creeps to one side it leaves the other groove: pin it at the middle of both ends, or cut "
            "the grooves deeper.",
            lambda v: v["hold_far"] <= 0,
            "common practice",
        ),
        Caution(
            "At its narrowest so little of the panel is held that a knock may lift it out: cut the grooves deeper.",
            lambda v: v["hold"] < BARE,
            "common practice",
        ),
        Caution(
            "Green or damp boards warp as they dry: let them settle before you cut to a fit.",
            lambda v: v["moisture_now"] > DAMP,
        ),
        Caution(
            "Two figures of the table disagree about this wood: the one that moves further is taken.",
            lambda v: DISAGREE in v["figure_from"],
        ),
        Caution(
            "The figure for this wood is from memory and not from a source: check it before you trust a fit to it.",
            lambda v: CHECK in v["figure_from"],
        ),
    ),
    example=Example(
        {
            "species": "white ash",
            "opening": "10 in",
            "depth": "3/8 in",
            "moisture_now": "9",
            "along": "14 in",
            "frame": "16 mm",
        },
        "The notice board above the comment-card box is an ash panel in an ash frame: 10 in across and 14 in high "
        "inside, ploughed 3/8 in deep, the wood at 9 %.",
    ),
    carry_on=(
        Carry("movement", {"species": "species", "cut": "cut", "width": "panel"}, "See how the panel itself moves"),
        Carry("tenon", {"thickness": "frame", "groove": "depth"}, "Cut the frame's tenons to the same third"),
        Carry("glue-up", {}, "Glue up the panel"),
    ),
)
