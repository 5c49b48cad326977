"""The working of arc: a part of a circle, up to half of one, from any two of its sizes; its proof."""

import math
from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.sums._in_both import in_both
from calc.sums._round_things import crown, traced


def work(span: Any, rise: Any, radius: Any, steps: int, things: Any) -> Values:
    """The third size from the two that are given, then all that lays the curve out."""
    span, rise, radius = _sizes(span, rise, radius)
    angle = 4 * trig.atan(2 * rise / span)
    return {
        "span": span,
        "rise": rise,
        "radius": radius,
        "diameter": 2 * radius,
        "angle": angle,
        "arc_length": math.pi * radius * angle / 180,
        "centre": radius - rise,
        "half_chord": trig.sqrt(span * span / 4 + rise * rise),
        "lath_angle": 180 - angle / 2,
        "marks": [_mark(span, rise, radius, Fraction(at, steps)) for at in range(steps + 1)],
        **traced(things, span, rise),
    }


def _sizes(span: Any, rise: Any, radius: Any) -> tuple[Any, Any, Any]:
    if radius is None:
        if 2 * rise > span:
            raise _more_than_half("rise", f"a rise of at most half the span, {in_both(span / 2)}")
        return span, rise, (span * span / 4 + rise * rise) / (2 * rise)
    if rise is None:
        if span > 2 * radius:
            say = "a circle of this radius is not as wide as the span"
            raise Refusal(say, f"give a radius of at least half the span, {in_both(span / 2)}", "radius")
        return span, crown(span / 2, radius), radius
    if rise > radius:
        raise _more_than_half("rise", f"a rise of at most the radius, {in_both(radius)}")
    return 2 * trig.sqrt(rise * (2 * radius - rise)), rise, radius


def _more_than_half(field: str, instead: str) -> Refusal:
    return Refusal("this is more than half a circle", f"give {instead}", field)


def _mark(span: Any, rise: Any, radius: Any, share: Fraction) -> Values:
    """One point of the curve: how far from the middle, and how high above the line of the span."""
    along = share * span / 2
    return {"along": along, "height": 0 * rise if share == 1 else rise - crown(along, radius)}


def proof(v: Values) -> dict[str, float]:
    """Chords that cross make equal products; the points lie on one circle; the two halves have the same chord."""
    span, rise, radius = float(v["span"]), float(v["rise"]), float(v["radius"])
    spots = [(float(one["along"]), float(one["height"] + v["centre"])) for one in v["marks"]]
    eighth = math.radians(v["angle"]) / 4
    return {
        "half the span squared is the rise times what is left of the diameter": (
            span * span / 4 / (rise * (2 * radius - rise)) - 1
        ),
        "every point is a radius from the centre": max(abs(math.hypot(*spot) / radius - 1) for spot in spots),
        "half the arc has the chord that its angle gives": 2 * radius * math.sin(eighth) / float(v["half_chord"]) - 1,
        "the arc is the radius times the turn from end to end": (
            2 * radius * math.atan2(span / 2, radius - rise) / v["arc_length"] - 1
        ),
    }
