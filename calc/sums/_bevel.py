"""The working of bevel: the pair by a full search over the marks, its proof and its drawing."""

from fractions import Fraction
from typing import Any

from calc import rule, trig
from calc.declare import Values
from calc.drawing.figure import Figure
from calc.errors import Refusal
from calc.sums._either import by_angle
from calc.trig import Number

COARSE = ("coarse_run", "coarse_rise", "coarse_error", "coarse_drift")
PLAIN_TO_SEE = 0.25
"""Millimetres of drift from which a joint shows the light: common practice."""

STEEP = 55
"""Degrees from which the drawing's rise is told on the free side."""


def work(angle: Any, rise: Any, run: Any, mark: str, longest: Any, cut: Any, radius: Any) -> Values:
    """The pair by a full search over the marks; the angle, where it is asked, from its rise and run."""
    tangent = trig.tan(angle) if by_angle("angle", angle, rise, run) else rise / run
    wanted = trig.atan(tangent) if angle is None else angle
    legs = rule.nearest_pair(Fraction(tangent), int(longest / rule.step(mark)))
    if not all(legs):
        say = f"this is nearer to {'square' if tangent > 1 else 'straight'} than to any two marks of the rule"
        raise Refusal(say, "choose a finer mark or a longer leg", "longest")
    found = trig.atan(Fraction(legs[1], legs[0]))
    error: Number = Fraction(0) if Fraction(legs[1], legs[0]) == tangent else found - wanted
    return {
        "angle": wanted,
        "set_run": legs[0] * rule.step(mark),
        "set_rise": legs[1] * rule.step(mark),
        "set_angle": found,
        "error": error,
        "drift": cut * trig.tan(error),
        "complement": 90 - wanted,
        "chord": 2 * radius * trig.sin(wanted / 2),
        **_coarse(
            Fraction(tangent), wanted, mark, longest, cut, (legs[0] * rule.step(mark), legs[1] * rule.step(mark))
        ),
    }


def _coarse(tangent: Fraction, wanted: Number, mark: str, longest: Any, cut: Any, fine: tuple[Any, Any]) -> Values:
    """The pair on the coarsest marks whose drift no one sees, and its miss; nothing when that is the fine pair."""
    for size in rule.coarser(mark):
        run, rise = (leg * size for leg in rule.nearest_pair(tangent, int(longest / size)))
        if not (run and rise):
            continue
        error: Number = Fraction(0) if rise / run == tangent else trig.atan(rise / run) - wanted
        drift = cut * trig.tan(error)
        if abs(drift) <= PLAIN_TO_SEE:
            told = (run, rise, error, drift) if (run, rise) != fine else (None,) * 4
            return dict(zip(COARSE, told, strict=True))
    return dict.fromkeys(COARSE)


def proof(v: Values) -> dict[str, float]:
    """The line through the pair misses the wanted line by the error; the chord obeys the rule of cosines."""
    run, rise = float(v["set_run"]), float(v["set_rise"])
    beside = rise * trig.cos(v["angle"]) - run * trig.sin(v["angle"])
    long = (run * run + rise * rise) ** 0.5
    chord = 2 * v["radius"] ** 2 * (1 - trig.cos(v["angle"]))
    return {
        "the end of the pair stands off the wanted line by its length times the sine of the error": (
            (beside - long * trig.sin(v["error"])) / long
        ),
        "chord² is twice radius² times one less the cosine": float((v["chord"] ** 2 - chord) / v["radius"] ** 2),
        "the sines of angle and complement, squared, make one": float(
            trig.sin(v["angle"]) ** 2 + trig.sin(v["complement"]) ** 2 - 1
        ),
    }


def figure(v: Values) -> Figure:
    """The pair of marks laid out square, the blade of the gauge along the slope, the chord stepped off beside it."""
    run, rise, angle, radius = v["set_run"], v["set_rise"], v["angle"], v["radius"]
    drawing = Figure(
        "Bevel gauge set by two marks",
        "A right triangle: the run along the bottom, the rise square to it, and the angle between run and slope.",
    )
    corners = [(0, 0), (run, 0), (run, rise)]
    drawing.outline(corners)
    drawing.grain(corners)
    chord = 0.2 < radius / max(run, rise) < 2
    lower = -46 if chord and radius < run else -22
    drawing.dimension((0, 0), (run, 0), "set_run", run, away=lower)
    if angle > STEEP:
        drawing.dimension((0, 0), (0, rise), "set_rise", rise)
    else:
        drawing.dimension((run, 0), (run, rise), "set_rise", rise, away=-22)
    drawing.line((0, 0), (run, rise), "accent")
    drawing.angle((0, 0), 0, v["set_angle"], "angle", angle, reach=64)
    if chord:
        _chord(drawing, angle, radius, away=-68 - lower)
    return drawing


def _chord(drawing: Figure, angle: Number, radius: Fraction, away: float) -> None:
    drawing.arc((0, 0), radius, 0, angle, "thin")
    drawing.line((radius, 0), (radius * trig.cos(angle), radius * trig.sin(angle)), "hidden")
    drawing.dimension((0, 0), (radius, 0), "radius", radius, away=away)
