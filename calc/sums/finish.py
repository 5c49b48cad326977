"""Finish: how much oil, varnish or paint a thing takes, in tins, and the rags it leaves."""

from calc.declare import Carry, Caution, Example, Formula, Source, Sum, Values
from calc.drawing.figure import Figure
from calc.sums import _boards_drawing
from calc.sums._finish import proof, work
from calc.sums._finish_form import ANSWERS, GIVENS


def figure(v: Values) -> Figure:
    """The parts on the face, to one scale, with their area in all."""
    drawing = _boards_drawing.figure(v)
    lowest = min(y for _, y in drawing.points)
    below = -66 if len(v["rows"]) > _boards_drawing.MOST else -48
    told = {"all": "all six faces", "both": "both broad faces", "one": "one broad face"}[v["faces"]]
    drawing.note((0, lowest), f"{told}, {v['coats']} coat{'s' if v['coats'] > 1 else ''}", "start", 0, below, "coats")
    return drawing


SUM = Sum(
    id="finish",
    title="Finish",
    moment="finish",
    question="How much finish does it take?",
    asks=(
        "how much oil does it take",
        "how much finish to buy",
        "how many tins of varnish",
        "paint for a box",
        "coverage of a tin",
        "will one tin do two coats",
        "litres of varnish",
        "surface area to finish",
        "oily rags",
        "what does the finish cost",
    ),
    purpose="From the parts, the coats and the spread printed on the tin: the area, the finish it takes, the tins to "
    "buy and what is left; and what to do with the rags.",
    givens=GIVENS,
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula("one", "area / coverage", "litres from square metres"),
        Formula("covered", "area * coats"),
        Formula("liquid", "one * (coats + first / 100) * (1 + waste / 100)"),
        Formula("tins", "ceil(liquid / tin)"),
        Formula("left", "tins * tin - liquid"),
        Formula("each", "liquid / batch"),
        Formula("goes", "floor(tin * batch / liquid)"),
        Formula("cost", "tins * price"),
        Formula("share", "price * liquid / tin / batch"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("The spread printed on your own tin", "", "read", "No spread is assumed."),
        Source("A tenth left in brush, rag and pot; two coats", "", "common practice"),
        Source("University fabrication laboratory, safety page on oil-based finishes", "", "read", "Rags heat up."),
        Source("An insurer's text on the safe keeping of oily rags", "", "read", "What to do with them."),
    ),
    limits_of="Flat faces of square-edged parts; carving, ends and open grain drink more. What the tin prints holds "
    "for its own brush and its own wood: try one part and measure what it took.",
    cautions=(
        Caution(
            "Rags wet with a drying oil such as linseed or tung heat up as they cure: wadded, they can catch fire by "
            "themselves within a few hours.",
            None,
            "University fabrication laboratory, page on oil-based finishes",
        ),
        Caution(
            "Soak such rags in water and put them loosely in an approved metal container, or wash them by hand and dry "
            "them in the open air: never in an ordinary bin.",
            None,
            "Insurer's safety text on oily rags",
        ),
        Caution("Follow the tin's own words on fresh air, gloves, flames and the keeping of what is left over."),
        Caution(
            "Finished on one side only, a board takes up damp on the other and may cup.",
            lambda v: v["faces"] == "one",
            "common practice",
        ),
        Caution("The price of a tin wants its size as well.", lambda v: v["price"] is not None and v["tin"] is None),
    ),
    example=Example(
        {
            "boards": "2 x 16 mm x 180 mm x 260 mm; 1 x 16 mm x 252 mm x 330 mm; 1 x 16 mm x 220 mm x 252 mm",
            "coverage": "14 m²/l",
            "batch": "6",
            "tin": "250 ml",
            "price": "11.50",
        },
        "Sides, back and lid of six comment-card boxes get two coats of oil before they go to their reading rooms.",
    ),
    carry_on=(
        Carry("price", {"finish": "share"}, "Put it into the price"),
        Carry("weight", {}, "What the parts weigh"),
    ),
)
