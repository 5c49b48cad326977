"""The working of dovetails: tails and pins across the boards as running marks from one edge; proof and drawing."""

from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.drawing.figure import Figure
from calc.errors import Refusal

SLOPES = {"soft": Fraction(6), "hard": Fraction(8)}


def work(
    width: Fraction,
    tails: int,
    thickness: Fraction,
    other: Fraction | None,
    wood: str,
    slope: Fraction | None,
    pin: Fraction,
    half: Fraction | None,
    lap: Fraction,
) -> Values:
    """What the pins leave is shared among the tails; the slope narrows each on its way to the base line."""
    steep, edge, deep = slope or SLOPES[wood], pin if half is None else half, thickness - lap
    if deep <= 0:
        raise Refusal("the lap takes the whole thickness of the pin board", "leave less wood in front", "lap")
    wide, flare = (width - (tails - 1) * pin - 2 * edge) / tails, deep / steep
    if wide <= 2 * flare:
        say = "the pins take the whole width" if wide <= 0 else "tails this narrow come to a point on their slope"
        raise Refusal(say, "give fewer tails or narrower pins", "tails")
    return {
        "tail": wide,
        "tail_narrow": wide - 2 * flare,
        "pin_wide": pin + 2 * flare if tails > 1 else None,
        "half": edge,
        "half_wide": edge + flare,
        "slope": steep,
        "angle": trig.atan(1 / steep),
        "flare": flare,
        "tail_line": deep,
        "pin_line": thickness if other is None else other,
        "other": thickness if other is None else other,
        "ratio": wide / pin,
        "tail_marks": _tails(tails, wide, pin, edge, flare),
        "pin_marks": _pins(tails, wide, pin, edge, flare, width),
    }


def _tails(count: int, wide: Any, pin: Any, edge: Any, flare: Any) -> tuple[Values, ...]:
    """Both edges of every tail, at the end of the board and on its base line, from one edge of the board."""
    starts = [edge + one * (wide + pin) for one in range(count)]
    return tuple(
        {
            "tail": one,
            "end_from": at,
            "end_to": at + wide,
            "base_from": at + flare,
            "base_to": at + wide - flare,
        }
        for one, at in enumerate(starts, 1)
    )


def _pins(count: int, wide: Any, pin: Any, edge: Any, flare: Any, width: Any) -> tuple[Values, ...]:
    """Both edges of every pin, the half pins too, on the outer and the inner face of the pin board."""
    starts = [edge + wide + one * (wide + pin) for one in range(count - 1)]
    return (
        {"pin": "half", "out_from": Fraction(0), "out_to": edge, "in_from": Fraction(0), "in_to": edge + flare},
        *(
            {"pin": str(one), "out_from": at, "out_to": at + pin, "in_from": at - flare, "in_to": at + pin + flare}
            for one, at in enumerate(starts, 1)
        ),
        {"pin": "half", "out_from": width - edge, "out_to": width, "in_from": width - edge - flare, "in_to": width},
    )


def proof(v: Values) -> dict[str, float]:
    """The marks of both boards meet; tails and pins cover the joint; every slope is the angle's."""
    tails, pins, width = v["tail_marks"], v["pin_marks"], float(v["width"])
    meet = [one["end_from"] - other["out_to"] for one, other in zip(tails, pins, strict=False)]
    back = [one["base_to"] - other["in_from"] for one, other in zip(tails, pins[1:], strict=True)]
    areas = [one["end_to"] - one["end_from"] + one["base_to"] - one["base_from"] for one in tails]
    areas += [one["out_to"] - one["out_from"] + one["in_to"] - one["in_from"] for one in pins]
    return {
        "each tail begins where a pin ends, on the outside": float(max(map(abs, meet))) / width,
        "and ends where the next begins, on the base line": float(max(map(abs, back))) / width,
        "tails and pins cover the whole joint": float(sum(areas)) / 2 / width - 1,
        "the slope of a side is the sine of its angle by the cosine": float(
            v["flare"] * trig.cos(v["angle"]) - v["tail_line"] * trig.sin(v["angle"])
        )
        / float(v["tail_line"]),
    }


def figure(v: Values) -> Figure:
    """The tail board from its face, tails upward, the base line across it."""
    width, deep, flare, edge = (float(v[name]) for name in ("width", "tail_line", "flare", "half"))
    body = max(1.6 * deep, 0.2 * width)
    drawing = Figure("Tail board", "A board from its face with its dovetails at the top, wider at the end.")
    rim = [
        (float(row[name]), y)
        for row in v["tail_marks"]
        for name, y in (("base_from", 0.0), ("end_from", deep), ("end_to", deep), ("base_to", 0.0))
    ]
    drawing.outline([(0, -body), (0, 0), *rim, (width, 0), (width, -body)])
    drawing.grain([(0, -body), (0, 0), (width, 0), (width, -body)], 90)
    drawing.line((0, 0), (width, 0), "thin")
    drawing.dimension((0, -body), (width, -body), "width", v["width"], away=-22)
    drawing.dimension((width, 0), (width, deep), "thickness", v["tail_line"], away=-20)
    first, tip = v["tail_marks"][0], (edge, deep)
    drawing.dimension(tip, (float(first["end_to"]), deep), "tails", v["tail"], away=44)
    drawing.dimension((0, deep), tip, "half", v["half"], away=16)
    if v["tails"] > 1:
        start = float(v["tail_marks"][-2]["end_to"])
        drawing.dimension((start, deep), (start + float(v["pin"]), deep), "pin", v["pin"], away=16)
    for foot in (edge, edge + flare * (deep + 0.8 * body) / deep):
        drawing.line(tip, (foot, -0.8 * body), "thin")
    drawing.angle(tip, 270, 270 + float(v["angle"]), "slope", v["angle"], reach=58, beside=True)
    return drawing
