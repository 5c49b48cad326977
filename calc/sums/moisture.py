"""Moisture: what wood comes to in a climate, and the climate that a moisture content speaks of."""

import cmath

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum, Values
from calc.kinds import Limit
from calc.sums._emc import DAMPEST, DRIEST, work
from calc.sums._moisture_figure import figure
from calc.typed.measures import Percent, Temperature

HAIR = 1e-30
DAMP = 20
"""Percent of moisture above which wood is no longer reckoned safe from mould and rot: common practice."""


def proof(v: Values) -> dict[str, float]:
    """The sorption theory behind the equation: moisture is the slope of the logarithm of one sum over states.

    A. J. Hailwood and S. Horrobin (1946), cited from memory. The slope is taken by a step into the imaginary.
    """
    x = complex(v["x"], HAIR * v["x"])
    states = cmath.log((1 + v["k1"] * x + v["k1"] * v["k2"] * x * x) / (1 - x))
    return {
        "moisture is 1800 / W times the slope of the sum over states": 1800 / v["w"] * states.imag / HAIR
        - float(v["emc"])
    }


SUM = Sum(
    id="moisture",
    title="Moisture",
    moment="stock",
    question="How dry does wood become in this room?",
    asks=(
        "how dry does wood become",
        "equilibrium moisture content",
        "moisture content from humidity",
        "what humidity for 8 percent moisture",
        "is my workshop too damp",
        "how dry should the boards be",
        "emc",
        "wood moisture in a heated room",
        "temperature and humidity",
    ),
    purpose=(
        "From the temperature and humidity of the air, the moisture content that wood comes to and stays at; or from "
        "a moisture content, the humidity that keeps it."
    ),
    givens=(
        Temperature(
            name="temperature",
            label="Temperature of the air",
            help="Where the wood is kept, over weeks; a bare number is in degrees Celsius.",
            limit=Limit("30 °F", "200 °F", why="the handbook's table does not go there"),
        ),
        Percent(
            name="humidity",
            label="Relative humidity",
            help="Read from a hygrometer, as an average over weeks.",
            limit=Limit(str(DRIEST), str(DAMPEST), why="the handbook's table does not go there"),
        ),
        Percent(
            name="emc",
            label="Moisture content of the wood",
            help="Water in the wood, in percent of its ovendry mass, as a meter reads it.",
            limit=Limit("0.3", "27"),
        ),
    ),
    any_of=AnyOf(1, ("humidity", "emc")),
    answers=(
        Answer(name="emc", label="Moisture content of the wood", kind="percent", places=1),
        Answer(
            name="humidity",
            label="Relative humidity",
            kind="percent",
            places=1,
            help="Found by halving until no number is nearer.",
        ),
        Answer(
            name="near",
            label="At this temperature",
            kind="rows",
            columns=(
                Answer(name="humidity", label="Humidity", kind="percent", places=0),
                Answer(name="emc", label="Moisture content", kind="percent", places=1),
            ),
        ),
        Answer(name="w", label="Constant W", kind="number", places=2),
        Answer(name="k", label="Constant K", kind="number", places=5),
        Answer(name="k1", label="Constant K1", kind="number", places=4),
        Answer(name="k2", label="Constant K2", kind="number", places=4),
        Answer(name="x", label="Humidity as K h", kind="number", places=5),
    ),
    work=work,
    formulas=(
        Formula("w", "349 + 1.29 * temperature + 0.0135 * temperature ** 2", "temperature in degrees Celsius"),
        Formula("k", "0.805 + 0.000736 * temperature - 0.00273 * temperature ** 2 / 1000"),
        Formula("k1", "6.27 - 0.00938 * temperature - 0.000303 * temperature ** 2"),
        Formula("k2", "1.91 + 0.0407 * temperature - 0.000293 * temperature ** 2"),
        Formula("x", "k * humidity / 100"),
        Formula(
            "emc",
            "1800 / w * (x / (1 - x) + (k1 * x + 2 * k1 * k2 * x ** 2) / (1 + k1 * x + k1 * k2 * x ** 2))",
            "Wood Handbook, equation 4-5",
        ),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "US Forest Products Laboratory, Wood Handbook, FPL-GTR-282 (2021)",
            "page 4-3, equation 4-5, as digitised by others",
            "read",
            "The equation and its constants in SI units; W. T. Simpson, FPL-RN-0268 (1998), gives the same.",
        ),
        Source(
            "US Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010)",
            "table 4-2",
            "read",
            "The range, and the cells this sum is held to.",
        ),
        Source("A. J. Hailwood and S. Horrobin (1946)", "", "memory", "The theory behind the equation: the proof."),
        Source("Above 20 % wood may mould or rot", "", "common practice"),
    ),
    cautions=(
        Caution(
            "Wood takes weeks to come to this, thick or finished wood months; wood that has been wetter stops a "
            "little above it. Measure the board itself before you cut to a fit."
        ),
        Caution(
            "Above 20 % wood may mould, stain and rot (common practice): dry the place, or raise the wood off it.",
            lambda v: v["emc"] > DAMP,
        ),
        Caution(
            "Air this hot is a kiln's, not a workshop's: keep out of it, and follow the kiln maker's own rules.",
            lambda v: v["temperature"] > 50,
        ),
    ),
    carry_on=(Carry("movement", {"moisture_then": "emc"}, "How far a board moves on its way there"),),
    limits_of=(
        "Air of 30 to 200 °F (−1.1 to 93.3 °C) and 5 to 95 % humidity, as the table. The equation stands for wood "
        "of any species that is neither oiled nor treated; single boards differ by a percent or so."
    ),
    example=Example(
        {"temperature": "18 °C", "humidity": "60"},
        "The reading room where the comment-card box will hang is kept at 18 °C, and its hygrometer stands at 60 %.",
    ),
)
