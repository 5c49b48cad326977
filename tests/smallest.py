"""A sum as small as a sum can be, to try the engine on: a given that is wanted, one with a default, one left out."""

from fractions import Fraction

from calc import Refusal
from calc.declare import Answer, Caution, Example, Formula, Source, Sum, Values
from calc.drawing.figure import Figure
from calc.kinds import Length, Limit


def double(size: Fraction, gap: Fraction, more: Fraction | None) -> Values:
    """Twice a size, less a gap."""
    if gap > size:
        raise Refusal("the gap is wider than the size", "give a smaller gap", "gap")
    return {"twice": 2 * size - gap, "rest": more and more - size}


SUM = Sum(
    id="double",
    title="Double",
    moment="sketch",
    question="How much is twice as much?",
    asks=("double",),
    purpose="Twice a size.",
    givens=(
        Length(name="size", label="Size", help="Any size.", limit=Limit("1 in", "1 m")),
        Length(name="gap", label="Gap", help="What is left open.", default="1/8 in", limit=Limit("0 in", "1 in")),
        Length(name="more", label="More", help="What there is.", optional=True, limit=Limit("0 in", "1 m")),
    ),
    answers=(
        Answer(name="twice", label="Twice", kind="length"),
        Answer(name="rest", label="The rest, if any", kind="length"),
    ),
    work=double,
    formulas=(Formula("twice", "2 * size - gap"), Formula("rest", "more - size")),
    proof=lambda v: {"the half": float(v["twice"] + v["gap"] - 2 * v["size"])},
    figure=lambda v: Figure("Double", "A size."),
    sources=(Source("Arithmetic", basis="identity"),),
    limits_of="Any size.",
    example=Example({"size": "3 in"}, "A story."),
    cautions=(Caution("Mind the gap.", when=lambda v: v["gap"] > 5), Caution("Measure twice.")),
)
