"""Run in the browser's Python before its snapshot is taken: what is made at the first question has then been made.

A sum of no use to anybody stands in for the real ones, which are not in the snapshot.
"""

from json import dumps
from typing import Any

from calc import trig
from calc.bench import MARKS, Bench
from calc.declare import Answer, AnyOf, Example, Formula, Source, Sum, Values
from calc.drawing.figure import Figure
from calc.engine import reckon
from calc.kinds import Angle, Length, Limit
from calc.units import factor

SIZE = Limit("0 in", "20 m", above=True)


def work(rise: Any, run: Any, angle: Any) -> Values:
    """Both legs and the angle between them."""
    run = run or rise / trig.tan(angle)
    return {"run": run, "angle": angle or trig.atan(rise / run), "long": trig.sqrt(rise * rise + run * run)}


def figure(v: Values) -> Figure:
    """The triangle."""
    drawing = Figure("Warm", "A right triangle.")
    corners = [(0, 0), (v["run"], 0), (v["run"], v["rise"])]
    drawing.outline(corners)
    drawing.grain(corners)
    drawing.dimension((0, 0), (v["run"], 0), "run", v["run"], away=-22)
    drawing.angle((0, 0), 0, v["angle"], "angle", v["angle"], reach=64)
    return drawing


def warm() -> None:
    """Declare the sum, and answer it on several benches."""
    one = Sum(
        id="warm",
        title="Warm",
        moment="sketch",
        question="Is it awake?",
        asks=("is it awake",),
        purpose="Nothing.",
        givens=(
            Length(name="rise", label="Rise", help="How high.", limit=SIZE),
            Length(name="run", label="Run", help="How far.", limit=SIZE),
            Angle(name="angle", label="Angle", help="How steep.", limit=Limit("0", "90", above=True, below=True)),
        ),
        any_of=AnyOf(2, ("rise", "run", "angle")),
        answers=(Answer(name="long", label="Long", kind="length"), Answer(name="angle", label="Angle", kind="angle")),
        work=work,
        formulas=(Formula("angle", "atan(rise / run)"), Formula("long", "sqrt(rise ** 2 + run ** 2)")),
        proof=lambda v: {},
        figure=figure,
        sources=(Source("common practice", "", "common practice"),),
        example=Example({"rise": "3 in", "run": "1 ft"}, "None."),
        limits_of="None.",
    )
    for mark in MARKS:
        for texts in ({"rise": "3 1/2 in", "run": "1 ft"}, {"rise": "80 mm", "angle": "14.5"}):
            dumps(reckon(one, texts, Bench(mark=mark)).to_dict(), ensure_ascii=False)


factor("inch", "mm")
warm()
