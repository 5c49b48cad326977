"""How true a number is: what one mark of misreading does to it, in each size that was read off a rule.

One whole mark, not half of one: the mark beside the right one is the slip that is made. Each slip is tried as it
stands, a mark more and a mark less, so that an answer that jumps, such as a count, shows it. Together, the worst case
adds all slips up; the root of the sum of squares is what slips that know nothing of each other come to (JCGM 100:2008,
GUM, 5.1.2, worked by differences as its note in 5.1.3 allows; cited from memory).
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from calc import show
from calc.bench import MARKS, Bench
from calc.cells import printed
from calc.declare import Answer
from calc.probing.probe import Input, Probe
from calc.trig import Number, is_exact
from calc.typed import reader
from calc.units import MM_PER_INCH

DEGREE = Fraction(1)
"""One mark of a protractor: a degree. Common practice, no source."""
NEAR = Fraction(1, 1024)


@dataclass(frozen=True)
class Slip:
    """One mark of misreading in one input.

    mark: how much that is, in millimetres or degrees. by: the most that it changes the answer, None where a mark
    either way is outside the limits. slope: the change in the answer for each unit of the input; exact where the
    relation is straight, to the last Fraction, else by differences over a thousandth on either side.
    """

    name: str
    label: str
    mark: Fraction
    by: Number | None
    slope: Number | None
    exact: bool


@dataclass(frozen=True)
class HowTrue:
    """Every slip, the largest first; `worst` with all of them the wrong way, `likely` as their root of squares."""

    answer: Answer
    value: Any
    bench: Bench
    slips: tuple[Slip, ...]

    @property
    def worst(self) -> float:
        """All slips at once, each the wrong way."""
        return math.fsum(float(slip.by) for slip in self.slips if slip.by is not None)

    @property
    def likely(self) -> float:
        """The root of the sum of the squares of all slips."""
        return math.hypot(*(float(slip.by) for slip in self.slips if slip.by is not None))

    @property
    def say(self) -> str:
        """Both in a sentence."""
        if not self.slips:
            return "Nothing here was read off a rule."
        worst, likely = self.amount(self.worst), self.amount(self.likely)
        return f"A mark of misreading in each: at worst {worst} out, most likely within {likely}."

    def amount(self, amount: Number) -> str:
        """A difference in the answer, finer than its rule shows."""
        if self.answer.kind in ("length", "fine"):
            return str(show.fine(amount, self.bench))
        if self.answer.kind in ("angle", "number", "count"):
            return f"{show.plain(amount, 3)}{'°' if self.answer.kind == 'angle' else ''}"
        return printed(self.answer, amount, self.bench).text


def how_true(probe: Probe, marks: Mapping[str, str] | None = None) -> HowTrue:
    """What misreading does to an answer; `marks` names another mark for an input: "1/32", "half mm", "0.1 mm".

    Only what was typed counts, not the defaults, and only lengths and angles.
    """
    read = {name: one for name, one in probe.inputs.items() if one.typed and one.given.kind in ("length", "angle")}
    slips = [_slip(probe, name, one, mark_of(one, (marks or {}).get(name, ""))) for name, one in read.items()]
    largest = sorted(slips, key=lambda slip: -float(slip.by or 0))
    return HowTrue(probe.answer, probe.value, probe.bench, tuple(largest))


def mark_of(one: Input, said: str = "") -> Fraction:
    """One mark of what an input was read from: as said, else its bench's, else a plain rule in the unit it is in."""
    if one.given.kind == "angle":
        return DEGREE
    if said and said not in MARKS:
        return reader.length(said, one.bench.unit).mm
    system, step = MARKS[said or one.bench.mark]
    typed = "in" if one.unit in ("in", "ft", "yd") else "mm"
    if not said and typed != system:
        system, step = MARKS["1/16" if typed == "in" else "mm"]
    return step * (MM_PER_INCH if system == "in" else 1)


def _slip(probe: Probe, name: str, one: Input, mark: Fraction) -> Slip:
    moved = [_at(probe, name, one.value + way * mark) for way in (1, -1)]
    changes = [abs(found - probe.value) for found in moved if found is not None]
    slope, exact = _slope(probe, name, one, mark)
    return Slip(name, one.given.label, mark, max(changes, default=None), slope, exact)


def _at(probe: Probe, name: str, value: Any) -> Any:
    """The answer there; None outside the input's own limit."""
    return None if probe.inputs[name].given.outside(value) else probe.at(name, value)


def _slope(probe: Probe, name: str, one: Input, mark: Fraction) -> tuple[Number | None, bool]:
    """The slope, and whether it is exact: whether points a mark, half a mark and no mark off lie on one line."""
    found = [(step, _at(probe, name, one.value + step)) for step in (mark, mark / 2, -mark / 2, -mark)]
    slopes = [(there - probe.value) / step for step, there in found if there is not None]
    if len(slopes) > 1 and all(is_exact(slope) and slope == slopes[0] for slope in slopes):
        return slopes[0], True
    ends = [(step, there) for step in (NEAR, 0, -NEAR) if (there := _at(probe, name, one.value + step)) is not None]
    if len(ends) < 2:
        return None, False
    (high, above), (low, below) = ends[0], ends[-1]
    return (above - below) / (high - low), False
