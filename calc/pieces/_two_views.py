"""Two views of a piece on one sheet: the upper at its scale, the lower at a whole part of it, so that both fit."""

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

Spot = tuple[float, float]
Place = Callable[[Any, Any], Spot]
USABLE = 230.0
"""Pixels across that dimensions leave for the wood."""


@dataclass(frozen=True)
class Sheet:
    """Where the lower view stands: `at` puts a point of it on the paper, `part` is how many times smaller it is."""

    at: Place
    part: int
    pixel: float

    @property
    def said(self) -> str:
        """Its scale, in words."""
        return "at the same scale" if self.part == 1 else f"at 1/{self.part} of that scale"


def sheet(spots: Sequence[Spot], lower: tuple[Any, Any], tall: float, between: float) -> Sheet:
    """The lower view, so many millimetres wide and high, centred under the spots of the upper.

    It is made smaller by a whole number until it is no wider than a third more than the upper. `tall` and `between`
    are pixels: of the paper, and of what stands between the views.
    """
    (xs, ys), (wide, high) = zip(*spots, strict=True), (float(lower[0]), float(lower[1]))
    across, up = max(xs) - min(xs), max(ys) - min(ys)
    part = max(1, math.ceil(wide / (1.35 * across)))
    pixel = max(max(across, wide / part) / USABLE, (up + high / part) / (tall - 2 * between))
    left, low = (min(xs) + max(xs) - wide / part) / 2, min(ys) - between * pixel - high / part
    return Sheet(lambda x, y: (left + float(x) / part, low + float(y) / part), part, pixel)


def box(at: Place, left: Any, low: Any, right: Any, high: Any) -> list[Spot]:
    """The corners of a rectangle."""
    return [at(left, low), at(right, low), at(right, high), at(left, high)]


def plain(x: Any, y: Any) -> Spot:
    """A point of the upper view."""
    return float(x), float(y)
