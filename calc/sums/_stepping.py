"""The working of stepping: the true step, the mark it is set to, and what n such steps leave over; its proof."""

import math
from fractions import Fraction
from typing import Any

from calc import rule, trig
from calc.declare import Values
from calc.errors import Refusal
from calc.show import marks


def work(line: Any, diameter: Any, radius: Any, count: int, mark: str) -> Values:
    """Along a line the step is its share; round a circle it is the chord of its share of the turn."""
    across = diameter if radius is None else 2 * radius
    step = line / count if across is None else across * trig.sin(Fraction(180, count))
    told = _line(line, step, count, mark) if across is None else _circle(across, step, count, mark)
    return {
        "setting": step,
        "diameter": across,
        "radius": None if across is None else across / 2,
        "hair": step - told["set_to"],
        **told,
    }


def _line(line: Any, step: Any, count: int, mark: str) -> Values:
    set_to = _nearest(step, mark, None)
    return {
        "set_to": set_to,
        "gathered": count * set_to - line,
        "last_gap": line - (count - 1) * set_to,
        "turn": None,
        "set_turn": None,
        "along": None,
    }


def _circle(across: Any, step: Any, count: int, mark: str) -> Values:
    """Each chord set on the rule turns a little more or less than it should; so much is gathered along the edge."""
    set_to = _nearest(step, mark, across)
    turn = 2 * trig.asin(set_to / across)
    left = 360 - (count - 1) * turn
    return {
        "set_to": set_to,
        "gathered": math.pi * across * (count * turn - 360) / 360,
        "last_gap": across * trig.sin(left / 2) if left >= -180 else None,
        "turn": Fraction(360, count),
        "set_turn": turn,
        "along": math.pi * across / count,
    }


def _nearest(step: Any, mark: str, most: Any) -> Fraction:
    """The mark nearest to the step, one no longer than `most`; a Refusal where that is no mark at all.

    A step of half a mark is as near to the first mark as to none, and only the first can be stepped.
    """
    one = rule.step(mark)
    nearest = one if 2 * step == one else marks(step, one)
    found = nearest - one if most is not None and nearest > most else nearest
    if not found:
        raise Refusal("a step is too short for any mark of the rule", "choose fewer steps or a finer mark", "count")
    return found


def proof(v: Values) -> dict[str, float]:
    """Steps of the dividers and the last gap fill the line, or close round the circle."""
    if v["line"] is not None:
        left = v["set_to"] * (v["count"] - 1) + v["last_gap"] - v["line"]
        return {
            "steps and the last gap fill the line": float(left / v["line"]),
            "n true steps are the line": float(v["setting"] * v["count"] / v["line"] - 1),
            "the last gap is short by what was gathered": float(
                (v["set_to"] - v["last_gap"] - v["gathered"]) / v["line"]
            ),
        }
    return _closes(v, v["count"], float(v["radius"]))


def _closes(v: Values, count: int, radius: float) -> dict[str, float]:
    """The true chord, turned n times about the centre, comes home; so do the set ones with what they gathered."""
    turn = 2 * math.atan2(float(v["setting"]), math.sqrt(max(0.0, 4 * radius**2 - float(v["setting"]) ** 2)))
    turned = math.radians(v["set_turn"]) * count - float(v["gathered"]) / radius
    return {
        "n true chords come home": _off(count * turn),
        "n set chords come home, less what was gathered": _off(turned),
        "a set chord spans its turn": 2 * radius * math.sin(math.radians(v["set_turn"]) / 2) / float(v["set_to"]) - 1,
        "n parts of the edge are the whole edge": count * v["along"] / (2 * math.pi * radius) - 1,
    }


def _off(turn: float) -> float:
    """How far a point on a circle of one lies from where it began, after a turn in radians."""
    return math.hypot(math.cos(turn) - 1, math.sin(turn))
