"""The working of diagonal: the true diagonal, what two measured ones say of the corners, and 3-4-5; its proof."""

import math
from fractions import Fraction
from typing import Any

from calc import trig
from calc.bench import MARKS
from calc.declare import Values
from calc.errors import Refusal
from calc.units import MM_PER_INCH

MEASURED = ("bring_in", "pull", "even", "lean", "corner", "difference", "misfit")
ENDS = ("near left and far right", "near right and far left")
LONGEST_LIST = 6
"""Triangles listed, the largest first."""
MISREAD = 1.5
"""Millimetres by which sides and diagonals may disagree before something was measured wrong: common practice."""
ALIKE = "neither, it is square"
UNSURE = "neither yet: both diagonals are alike, but they do not fit these sides"
Size = Fraction


def work(length: Size, width: Size, first: Size | None, second: Size | None, mark: str) -> Values:
    """The diagonal of a true rectangle, and, where both are measured, which corners to bring in and how far."""
    three, rows = _triangles(min(length, width), max(length, width), mark)
    return {
        **dict.fromkeys(MEASURED),
        "diagonal": trig.sqrt(length * length + width * width),
        **_measured(length, width, first, second),
        "three": three and 3 * three,
        "four": three and 4 * three,
        "five": three and 5 * three,
        "triangles": rows or None,
    }


def _measured(length: Size, width: Size, first: Size | None, second: Size | None) -> Values:
    if first is None and second is None:
        return {}
    if first is None or second is None:
        say = "the other diagonal is measured, and one alone cannot be compared"
        raise Refusal(say, "measure this one too, or clear both", "first" if first is None else "second")
    for name, size in (("first", first), ("second", second)):
        _hold(name, size, length, width)
    lean = (first * first - second * second) / (4 * length)
    even = trig.sqrt((first * first + second * second) / 2)
    misfit = even - trig.sqrt(length * length + width * width)
    sure = abs(float(misfit)) <= MISREAD
    return {
        "bring_in": ENDS[first < second] if first != second else ALIKE if sure else UNSURE,
        "pull": max(first, second) - even,
        "even": even,
        "lean": lean,
        "corner": trig.acos(lean / width) if sure else None,
        "difference": first - second,
        "misfit": misfit,
    }


def _hold(name: str, size: Size, length: Size, width: Size) -> None:
    """A Refusal where a diagonal and both sides close no triangle; two that do always leave a lean under the width."""
    if not abs(length - width) < size < length + width:
        word = "short" if size < length + width else "long"
        raise Refusal(f"this is too {word} for a frame of these sides", "measure it again, and the sides", name)


def _triangles(shorter: Size, longer: Size, mark: str) -> tuple[Size | None, list[Values]]:
    """The largest unit whose 3 and 4 fit the sides, and the largest few multiples that do.

    Whole inches or whole centimetres, as the rule has; in a small frame quarters of an inch or millimetres.
    """
    room = min(shorter / 3, longer / 4)
    inches = MARKS[mark][0] == "in"
    units = (MM_PER_INCH, MM_PER_INCH / 4) if inches else (Fraction(10), Fraction(1))
    unit = next((one for one in units if one <= room), None)
    if unit is None:
        return None, []
    most = math.floor(room / unit)
    steps = range(most, max(0, most - LONGEST_LIST), -1)
    return most * unit, [{"short": 3 * n * unit, "long": 4 * n * unit, "across": 5 * n * unit} for n in steps]


def corners(v: Values) -> list[tuple[float, float]]:
    """Near left, near right, far right, far left, as the frame stands."""
    lean, width, length = float(v["lean"] or 0), float(v["width"]), float(v["length"])
    high = math.sqrt(width * width - lean * lean)
    return [(0.0, 0.0), (length, 0.0), (length + lean, high), (lean, high)]


def proof(v: Values) -> dict[str, float]:
    """The diagonal seen from its sides; the frame laid out by its corners has the diagonals that were measured."""
    length, width = float(v["length"]), float(v["width"])
    turn = math.atan2(width, length)
    found = {
        "both sides laid along the diagonal make it up": (length * math.cos(turn) + width * math.sin(turn))
        / float(v["diagonal"])
        - 1
    }
    for row in v["triangles"] or ():
        found["three, four and five make a right angle"] = float(
            row["short"] ** 2 + row["long"] ** 2 - row["across"] ** 2
        )
    return found | (_proof_measured(v, length) if v["first"] is not None else {})


def _proof_measured(v: Values, length: float) -> dict[str, float]:
    near, right, far, left = corners(v)
    first, second, even = (float(v[name]) for name in ("first", "second", "even"))
    apart = math.dist(near, far) ** 2 - math.dist(right, left) ** 2
    found = {
        "the corners laid out differ across as was measured": (apart - first**2 + second**2) / even**2,
        "squared up the longer has lost the pull": float(max(v["first"], v["second"]) - v["pull"]) / even - 1,
    }
    if v["corner"] is not None:
        off = float(v["lean"] - v["width"] * trig.cos(v["corner"])) / float(v["width"])
        found["far edge and corner agree"] = off
    return found


def drift(v: Values) -> Any:
    """How far the measured diagonals disagree with the measured sides."""
    return abs(v["misfit"] or 0)
