"""Nail line: how many nails along a joint, where, and how near to ends and edges before the wood splits."""

from calc.declare import AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.sums._nail_line import SQUAT, proof, work
from calc.sums._nail_line_figure import figure
from calc.sums._nail_line_form import ANSWERS, GIVENS
from calc.tables import CHECK

SUM = Sum(
    id="nail-line",
    title="Line of nails",
    moment="join",
    question="How many nails along the joint, and where?",
    asks=(
        "how many nails along an edge",
        "how far apart should nails be",
        "how close to the end can I nail",
        "how far from the edge to nail",
        "nail spacing in diameters",
        "mark out a row of nails",
        "will the board split",
        "where to put the nails in a box",
        "nails near the end of a board",
    ),
    purpose=(
        "From the length of a joint and the nail: how near to ends and side it may stand, how many nails, and each as "
        "a running mark from one end, so that rounding never adds up."
    ),
    givens=GIVENS,
    any_of=AnyOf(1, ("nail", "own")),
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula("end_least", "end_by * thick"),
        Formula("beside_least", "beside_by * thick"),
        Formula("apart_least", "apart_by * thick"),
        Formula("most", "floor((line - 2 * kept) / apart_least) + 1"),
        Formula("by_wish", "ceil((line - 2 * kept) / wanted) + 1"),
        Formula("apart", "(line - 2 * kept) / (nails - 1)", "one space fewer than nails"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "LVL Handbook Europe (2025)",
            "table 5.1, which restates Eurocode 5 (EN 1995-1-1), table 8.2",
            "read",
            "Each distance is the greatest for any direction of the load.",
        ),
        Source(
            "National Design Specification (1997)",
            "section 12.4.1, as quoted in a building-design handbook",
            "read",
            "Gives no number: distances “sufficient to prevent splitting”.",
        ),
        Source(
            "Eurocode 5, section 8.3.1.1",
            "",
            "memory",
            "Bore above 500 kg/m³ and for nails over 6 mm; the thickness under which a board splits; nails of 5 mm "
            "and more near the side of a heavier wood.",
        ),
        Source(
            "Commentary to the National Design Specification",
            "",
            "memory",
            "Low confidence. Unbored: 2.5 diameters from the edge, 10 to 15 from the end, 15 in the row.",
        ),
        Source("Nails 3 in apart in boxes and cases; running marks from one end", "", "common practice"),
    ),
    cautions=(
        Caution(
            "No distance is always safe. Try a nail in an offcut of the same board; bore, blunt the point, or stagger "
            "the row, so that no two nails stand in one line of the grain. Wear eye protection."
        ),
        Caution(
            "Likely to split: the first and last nail are nearer to the ends of the line than the least here. Bore, "
            "take a thinner nail, or move them in.",
            lambda v: v["marks"][0]["mark"] < v["end_least"],
        ),
        Caution(
            "One nail alone stands in the middle of the line, not where the first and last were to stand.",
            lambda v: v["nails"] == 1 and v["from_end"] is not None and 2 * v["from_end"] != v["line"],
        ),
        Caution(
            "Likely to split: the row is nearer to the side of the board than the least here. Bore, take a thinner "
            "nail, or move it in.",
            lambda v: v["beside"] < v["beside_least"],
        ),
        Caution(
            "Likely to split: the nails are closer together than the least here. Use fewer, or stagger them.",
            lambda v: v["apart"] is not None and v["apart"] < v["apart_least"],
        ),
        Caution(
            "Likely to split: the board is thinner than seven diameters of the nail, and no hole is bored "
            "(Eurocode 5 from memory, check).",
            lambda v: v["hole"] == "none" and v["thickness"] is not None and v["thickness"] < SQUAT * v["thick"],
        ),
        Caution(
            "Wood this dense, or a nail over 6 mm, wants a hole for every nail (Eurocode 5 from memory, check): "
            "the table of unbored distances does not reach it.",
            lambda v: v["hole"] == "none" and (v["wood"] == "dense" or v["thick"] > 6),
        ),
        Caution(
            "The spacing wanted is closer than the wood allows: there are fewer nails, further apart.",
            lambda v: v["count"] is None and v["most"] < v["by_wish"],
        ),
        Caution(
            "A figure here is from memory and not from a source: check the nail itself.",
            lambda v: CHECK in v["thick_from"] or CHECK in v["rules_from"],
        ),
    ),
    carry_on=(
        Carry("nail", {"measured": "thick"}, "How long it should be, and what hole"),
        Carry("nail-hold", {"own": "thick"}, "What pulls one of these out"),
        Carry("spacing", {"opening": "line"}, "Space other things along the same line"),
    ),
    limits_of=(
        "One straight row of round nails up to 8 mm thick, in sound wood. The distances are those of building "
        "carpentry; for a small box they are on the safe side. It does not say what load the row carries."
    ),
    example=Example(
        {
            "line": "260 mm",
            "nail": "6d common nail",
            "hole": "bored",
            "wood": "dense",
            "load": "no",
            "row_in": "9 mm",
            "thickness": "16 mm",
        },
        "The back of the comment-card box stands 1 mm proud of its 16 mm sides, 260 mm high: it is nailed to the "
        "middle of their edges through bored holes.",
    ),
)
