"""The working of proportion: partners for one size, or the nearest proportion of two; its proof and its drawing."""

from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.sums._ratios import RATIOS, Ratio, apart, named, nearest, whole

SINGLE = ("longer", "shorter", "how", "step_longer", "step_shorter", "partners")
PAIR = ("nearest", "over", "off", "pair_times", "true_longer", "true_shorter", "in_whole", "whole_over", "against")
Size = Fraction


def work(size: Size, other: Size | None, ratio: str) -> Values:
    """One size alone has partners; a pair has a nearest proportion, and sizes that would be true to it."""
    found = _single(size, named(ratio)) if other is None else _pair(min(size, other), max(size, other))
    return {**dict.fromkeys((*SINGLE, *PAIR)), **found}


def _single(size: Size, ratio: Ratio) -> Values:
    few, many = ratio.parts or (None, None)
    return {
        "times": ratio.times,
        "few": few,
        "many": many,
        "longer": size * ratio.times,
        "shorter": size / ratio.times,
        "how": ratio.how,
        "step_longer": few and size / few,
        "step_shorter": many and size / many,
        "partners": [{"ratio": r.label, "longer": size * r.times, "shorter": size / r.times} for r in RATIOS],
    }


def _pair(shorter: Size, longer: Size) -> Values:
    pair = longer / shorter
    ratio, plain = nearest(pair), whole(pair)
    few, many = ratio.parts or (None, None)
    return {
        "nearest": ratio.label,
        "times": ratio.times,
        "few": few,
        "many": many,
        "over": longer - shorter * ratio.times,
        "off": 100 * (pair / ratio.times - 1),
        "pair_times": pair,
        "true_longer": shorter * ratio.times,
        "true_shorter": longer / ratio.times,
        "in_whole": plain.label,
        "whole_over": longer - shorter * plain.times,
        "against": [_against(one, shorter, longer) for one in RATIOS],
    }


def _against(one: Ratio, shorter: Size, longer: Size) -> Values:
    """What a proportion would make of the pair, and how far off the pair is."""
    told = {"ratio": one.label, "longer": shorter * one.times, "shorter": longer / one.times}
    return {**told, "off": 100 * (longer / shorter / one.times - 1)}


def proof(v: Values) -> dict[str, float]:
    """A size is the mean of its partners; what makes root two and the golden section what they are; no nearer ratio."""
    if v["other"] is None:
        return {
            "the size squared is the longer partner times the shorter": float(
                v["longer"] * v["shorter"] / v["size"] ** 2 - 1
            ),
            **_own(v["ratio"], float(v["size"]), float(v["longer"])),
        }
    least = min(apart(one.times, v["pair_times"]) for one in RATIOS)
    return {
        "the true sizes make a rectangle as large as the pair's": float(
            v["true_longer"] * v["true_shorter"] / (v["size"] * v["other"]) - 1
        ),
        "no proportion of the list is nearer": float(apart(v["times"], v["pair_times"]) - least),
    }


def _own(ratio: str, size: float, longer: float) -> dict[str, float]:
    """What is true of that proportion alone."""
    if ratio == "golden":
        return {"cut a square off and the same shape is left": longer * (longer - size) / size**2 - 1}
    if ratio == "root two":
        return {"cut it across the middle and the same shape is left": longer / 2 * longer / size**2 - 1}
    few, many = map(int, ratio.split(":"))
    return {"the sides hold whole parts": few * longer / (many * size) - 1}


def figure(v: Values) -> Figure:
    """The rectangle of the chosen proportion with its parts, or the pair with what would be true dashed on it."""
    if v["other"] is not None:
        return _pair_drawn(v)
    size, longer = float(v["size"]), float(v["longer"])
    drawing = Figure("Proportion", "A rectangle, your size upright at its left, its longer partner along the bottom.")
    _board(drawing, longer, size)
    _built(drawing, v, size, longer)
    drawing.dimension((0, 0), (longer, 0), "longer", v["longer"], away=-22)
    drawing.dimension((0, 0), (0, size), "size", v["size"])
    return drawing


def _board(drawing: Figure, wide: float, high: float) -> None:
    shape = [(0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high)]
    drawing.outline(shape)
    drawing.grain(shape)


def _built(drawing: Figure, v: Values, size: float, longer: float) -> None:
    """Parts as squares; or the square, and the swing of the compasses that makes the longer side."""
    if v["few"] is not None:
        step = size / v["few"]
        for at in range(1, v["many"]):
            drawing.line((at * step, 0), (at * step, size), "thin")
        for at in range(1, v["few"]):
            drawing.line((0, at * step), (longer, at * step), "thin")
        return
    drawing.line((size, 0), (size, size), "thin")
    foot = 0.0 if v["ratio"] == "root two" else size / 2
    drawing.line((foot, 0), (size, size), "thin")
    turn: Any = 45 if v["ratio"] == "root two" else 63.4349488229
    drawing.arc((foot, 0), longer - foot, 0, turn, "accent")


def _pair_drawn(v: Values) -> Figure:
    high, wide = float(min(v["size"], v["other"])), float(max(v["size"], v["other"]))
    tall, long = ("size", "other") if v["size"] <= v["other"] else ("other", "size")
    drawing = Figure("Proportion of a pair", "A rectangle of both sizes, and dashed on it the nearest proportion.")
    _board(drawing, wide, high)
    true = float(v["true_longer"])
    drawing.outline([(0, 0), (true, 0), (true, high), (0, high)], "ghost")
    drawing.dimension((0, 0), (wide, 0), long, v[long], away=-22)
    drawing.dimension((0, 0), (0, high), tall, v[tall])
    drawing.dimension((0, high), (true, high), "true_longer", v["true_longer"], label=f"{v['nearest']},")
    return drawing
