"""The working of clamping: clamps on one joint, and the time in them by the bottle and the cold."""

import math
from fractions import Fraction

from calc.declare import Values
from calc.sums._clamps import PRESSURES, Joint, pressed
from calc.trig import Number

FEWEST = 1
"""A short joint closes under one clamp."""
DOUBLES = 10
"""Degrees Celsius colder in which glue takes twice as long: common practice, low confidence."""
WIDER = ("put more wood, or a thicker caul, over the joint", "through")


def work(
    length: Fraction,
    width: Fraction,
    through: Fraction,
    wood: str,
    own: Fraction | None,
    clamp: Fraction | None,
    minutes: Fraction | None,
    label_at: Fraction,
    shop: Fraction,
    coldest: Fraction | None,
) -> Values:
    """What presses, and where; then how long, where the bottle says so and the shop is warm enough."""
    press = pressed(Joint(length, width, through, FEWEST, WIDER), own or PRESSURES[wood], clamp)
    colder = max(Fraction(0), label_at - shop)
    fits = minutes is not None and (coldest is None or shop >= coldest)
    waited = _slowed(minutes, colder) if minutes is not None and fits else None
    marks = [{"clamp": row["clamp"], "mark": row["mark"]} for row in press["marks"]]
    return press | {
        "marks": marks,
        "spacing": press["spacing"] if press["clamps"] > 1 else None,
        "area": length * width,
        "across": math.ceil(width / press["apart"]),
        "colder": colder,
        "wait": waited,
        "wait_said": told(waited) if waited is not None else None,
    }


def _slowed(minutes: Fraction, colder: Fraction) -> Number:
    """Exact where the cold comes in whole tens of degrees; never shorter than the bottle says."""
    tens = colder / DOUBLES
    return minutes * 2 ** int(tens) if tens.denominator == 1 else float(minutes) * 2 ** float(tens)


def told(minutes: Number) -> str:
    """A time in the clamps in words, up to the next five minutes: 1 h 35 min."""
    hours, rest = divmod(5 * math.ceil(minutes / 5 - Fraction(1, 10**9)), 60)
    return " ".join([f"{hours} h"] * bool(hours) + [f"{rest} min"] * bool(rest))


def proof(v: Values) -> dict[str, float]:
    """The clamps press as hard as they must; they stand evenly; fans of 45° meet; twice as long for ten degrees."""
    first, last = v["marks"][0]["mark"], v["marks"][-1]["mark"]
    found = {
        "the force of every clamp over the area is the pressure": float(
            v["each_force"] * v["clamps"] / (v["area"] * v["pressure"])
        )
        - 1,
        "the last clamp is as far from its end as the first": float((first + last) / v["length"]) - 1,
        "no part of the joint lies past the 45° of a clamp": max(0.0, float((v["first"] - v["through"]) / v["length"])),
    }
    if v["wait"] is None:
        return found
    slower = math.log2(float(v["wait"] / v["minutes"])) - float(v["colder"]) / DOUBLES
    return found | {"the time doubles for every ten degrees of cold": slower}
