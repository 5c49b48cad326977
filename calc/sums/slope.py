"""Slope: rise, run, length along the slope and angle; any two give the others."""

from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Answer, AnyOf, Carry, Example, Formula, Source, Sum, Values
from calc.drawing.figure import Figure
from calc.errors import Refusal
from calc.kinds import Angle, Length, Limit

SIZE = Limit("0 in", "20 m", above=True)


def work(rise: Any, run: Any, length: Any, angle: Any) -> Values:
    """Rise and run first, from whichever two are given; the rest follows from them."""
    found = rise, run
    if rise is None or run is None:
        found = _from_length(rise, run, length, angle) if length is not None else _from_angle(rise, run, angle)
    up, along = found
    return {
        "rise": up,
        "run": along,
        "length": length if length is not None else trig.sqrt(up * up + along * along),
        "angle": angle if angle is not None else trig.atan(up / along),
        "one_in": along / up,
        "percent": 100 * up / along,
        "per_foot": up / along * Fraction(3048, 10),
    }


def _from_angle(rise: Any, run: Any, angle: Any) -> tuple[Any, Any]:
    return (run * trig.tan(angle), run) if rise is None else (rise, rise / trig.tan(angle))


def _from_length(rise: Any, run: Any, length: Any, angle: Any) -> tuple[Any, Any]:
    if angle is not None:
        return length * trig.sin(angle), length * trig.cos(angle)
    leg = run if rise is None else rise
    if leg >= length:
        raise Refusal(
            "the length along the slope must be longer than its rise and its run", "give a longer length", "length"
        )
    other = trig.sqrt(length * length - leg * leg)
    return (other, run) if rise is None else (rise, other)


def proof(v: Values) -> dict[str, float]:
    """The right triangle closes, and the angle's complement sees the other leg."""
    return {
        "rise² + run² is length²": float(v["rise"] ** 2 + v["run"] ** 2 - v["length"] ** 2) / float(v["length"] ** 2),
        "run is length times the sine of the complement": float(v["run"] - v["length"] * trig.sin(90 - v["angle"]))
        / float(v["length"]),
        "1 in n times the percentage is 100": float(v["one_in"] * v["percent"] - 100) / 100,
    }


def figure(v: Values) -> Figure:
    """The wedge of the slope."""
    rise, run = v["rise"], v["run"]
    drawing = Figure(
        "Slope", "A right triangle: the run along the bottom, the rise at the right, the slope between them."
    )
    corners = [(0, 0), (run, 0), (run, rise)]
    drawing.outline(corners)
    drawing.grain(corners)
    drawing.dimension((0, 0), (run, 0), "run", run, away=-22)
    drawing.dimension((run, 0), (run, rise), "rise", rise, away=-22)
    drawing.dimension((0, 0), (run, rise), "length", v["length"])
    drawing.angle((0, 0), 0, v["angle"], "angle", v["angle"], reach=64)
    return drawing


SUM = Sum(
    id="slope",
    title="Slope",
    moment="sketch",
    question="How steep is it, and how long along the slope?",
    asks=(
        "how steep is it",
        "angle from rise and run",
        "length of a sloping edge",
        "slope in degrees",
        "pitch of a lid",
        "rise over run",
        "1 in how many",
        "percent slope",
        "how long is the lid along the slope",
        "rafter length",
    ),
    purpose="From any two of rise, run, length along the slope and angle, the others, and the slope as 1 in n.",
    givens=(
        Length(
            name="rise",
            label="Rise",
            help="How much higher one end is than the other, measured square to the run.",
            limit=SIZE,
        ),
        Length(name="run", label="Run", help="How far apart the ends are, measured level.", limit=SIZE),
        Length(name="length", label="Length along the slope", help="The sloping edge itself, end to end.", limit=SIZE),
        Angle(
            name="angle",
            label="Angle from level",
            help="The slope in degrees from level, or as 1 in 7.",
            limit=Limit("0", "90", above=True, below=True),
        ),
    ),
    any_of=AnyOf(2, ("rise", "run", "length", "angle")),
    answers=(
        Answer(name="angle", label="Angle from level", kind="angle"),
        Answer(name="length", label="Length along the slope", kind="length"),
        Answer(name="rise", label="Rise", kind="length"),
        Answer(name="run", label="Run", kind="length"),
        Answer(name="one_in", label="Slope as 1 in", kind="number", help="The run that rises by one."),
        Answer(name="percent", label="Slope in percent", kind="percent"),
        Answer(name="per_foot", label="Rise in one foot of run", kind="length"),
    ),
    work=work,
    formulas=(
        Formula("angle", "atan(rise / run)"),
        Formula("angle", "asin(rise / length)"),
        Formula("angle", "acos(run / length)"),
        Formula("rise", "run * tan(angle)"),
        Formula("rise", "length * sin(angle)"),
        Formula("run", "rise / tan(angle)"),
        Formula("run", "length * cos(angle)"),
        Formula("length", "sqrt(rise ** 2 + run ** 2)"),
        Formula("one_in", "run / rise"),
        Formula("percent", "100 * rise / run"),
        Formula("per_foot", "rise / run * foot", "one foot of run"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Euclid, Elements", "book I, proposition 47", "identity", "The right triangle."),
        Source(
            "I. S. Griffith, Carpentry (1916)", "appendix, table of natural functions; rafters per foot of run", "read"
        ),
    ),
    limits_of="Any rise and run above nothing; the angle is more than 0° and less than 90°.",
    example=Example(
        {"rise": "3 in", "run": "1 ft"},
        "The lid of the comment-card box is to fall 3 in over a foot, so that cards slide down to the front.",
    ),
    carry_on=(Carry("bevel", {"angle": "angle"}, "Set a bevel gauge to this slope"),),
)
