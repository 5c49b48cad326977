"""The working of ellipse: pins, string, trammel, points and the way round; its proof and its drawing."""

import math
from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.drawing.figure import Figure
from calc.errors import Refusal

SHARES = (*(Fraction(one, 8) for one in range(8)), Fraction(15, 16), Fraction(1))
"""Where points are plotted, in parts of half the long axis: one more near the end, where the curve turns fast."""
HAIR = 1e-17


def work(long: Any, short: Any, foci: Any) -> Values:
    """Both axes first, from whichever two are given; the rest follows from them."""
    axis, across, apart = _axes(long, short, foci)
    return {
        "long": axis,
        "short": across,
        "foci": apart,
        "pin": apart / 2,
        "loop": axis + apart,
        "string": axis,
        "arm_long": axis / 2,
        "arm_short": across / 2,
        "sliders": (axis - across) / 2,
        "end_radius": across * across / (2 * axis),
        "side_radius": axis * axis / (2 * across),
        "perimeter": perimeter(float(axis), float(across)),
        "area": math.pi * float(axis) * float(across) / 4,
        "points": tuple({"along": axis / 2 * one, "off": across / 2 * trig.sqrt(1 - one * one)} for one in SHARES),
    }


def _axes(long: Any, short: Any, foci: Any) -> tuple[Any, Any, Any]:
    if long is None:
        return trig.sqrt(short * short + foci * foci), short, foci
    if short is None:
        if foci >= long:
            raise Refusal("the pins cannot stand as far apart as the ellipse is long", "set them nearer", "foci")
        return long, trig.sqrt(long * long - foci * foci), foci
    if short > long:
        raise Refusal("the short axis is longer than the long one", "give the greater size as the long axis", "short")
    return long, short, trig.sqrt(long * long - short * short)


def mean(one: float, other: float) -> float:
    """The arithmetic-geometric mean of two sizes, to the last bit."""
    while abs(one - other) > 4e-16 * one:
        one, other = (one + other) / 2, math.sqrt(one * other)
    return one


def perimeter(long: float, short: float) -> float:
    """The way round an ellipse by the complete elliptic integral of the second kind, in the axes' own unit.

    Gauss's way, by the arithmetic-geometric mean, which doubles its right figures at every step. From memory: the
    NIST Digital Library of Mathematical Functions, section 19.8.

    >>> round(perimeter(2, 2) / 3.141592653589793, 12)
    2.0
    """
    a, b = long / 2, short / 2
    square, part, weight = a * a, a * a - b * b, 0.5
    while weight * part > HAIR * square:
        square -= weight * part
        part, weight = (a - b) ** 2 / 4, weight * 2
        a, b = (a + b) / 2, math.sqrt(a * b)
    return 2 * math.pi * square / mean(a, b)


def proof(v: Values) -> dict[str, float]:
    """Every plotted point is a string's length from both pins, and on the trammel; the way round obeys Legendre."""
    a, b, pin = float(v["arm_long"]), float(v["arm_short"]), float(v["pin"])
    spots = [(float(row["along"]), float(row["off"])) for row in v["points"]]
    sums = [math.hypot(x - pin, y) + math.hypot(x + pin, y) for x, y in spots]
    arms = [math.hypot(x - float(v["sliders"]) * x / a, y) for x, y in spots]
    return {
        "both pins together are a string's length from every point": max(abs(one / (2 * a) - 1) for one in sums),
        "the slider on the long axis is half the short axis from every point": max(abs(one / b - 1) for one in arms),
        "Legendre's relation holds of this ellipse and its complement": _legendre(v),
    }


def _legendre(v: Values) -> float:
    """How far E K' + E' K - K K' misses half of pi, where the complement has this ellipse's eccentricity for axes."""
    shape, round_off = float(v["short"] / v["long"]), float(v["foci"] / v["long"])
    e = float(v["perimeter"]) / (2 * float(v["long"]))
    if not round_off:
        return e / (math.pi / 2) - 1
    k, other = math.pi / 2 / mean(1, shape), math.pi / 2 / mean(1, round_off)
    return (e * other + perimeter(2, 2 * round_off) / 4 * k - k * other) / (math.pi / 2) - 1


def spots(long: float, short: float, start: float = 0, end: float = 360) -> list[tuple[float, float]]:
    """Points of the curve about its middle, every five degrees of the circle it was stretched from."""
    steps = max(2, round((end - start) / 5))
    turns = [math.radians(start + (end - start) * one / steps) for one in range(steps + 1)]
    return [(long / 2 * math.cos(turn), short / 2 * math.sin(turn)) for turn in turns]


def figure(v: Values) -> Figure:
    """The oval with its axes, its two pins, and the string drawn tight to one plotted point."""
    long, short, pin = float(v["long"]), float(v["short"]), float(v["pin"])
    drawing, rim = (
        Figure("Ellipse", "An oval with both its axes, two pins, and the string drawn tight."),
        spots(long, short),
    )
    drawing.outline(rim)
    drawing.grain(rim)
    drawing.line((-long / 2, 0), (long / 2, 0), "thin")
    drawing.line((0, -short / 2), (0, short / 2), "thin")
    pencil = spots(long, short, 50, 60)[0]
    drawing.curve([(-pin, 0), pencil, (pin, 0)], "accent")
    for x in (-pin, pin):
        drawing.arc((x, 0), long / 90, 0, 360, "accent")
    low = -22 if short > 0.2 * long else -46
    drawing.dimension((-long / 2, -short / 2), (long / 2, -short / 2), "long", v["long"], away=low)
    drawing.dimension((long / 2, -short / 2), (long / 2, short / 2), "short", v["short"], away=-22)
    if pin:
        drawing.dimension((-pin, 0), (pin, 0), "foci", v["foci"], away=-14)
    return drawing
