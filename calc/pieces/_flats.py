"""A curve cut up into flats that leave just the wood the curve would."""

import math

FLATS = 16


def flats(whole: float) -> list[tuple[float, float]]:
    """The corners of an arc's flats, from its end back: how far each is turned, in radians, and its part of the radius.

    First and last lie on the circle, those between a little outside, so that the area is the circle's.
    """
    flat = whole / FLATS
    out = (math.sqrt(1 + (FLATS - 2) * FLATS * flat / math.sin(flat)) - 1) / (FLATS - 2)
    turns = [whole * (1 - n / FLATS) for n in range(FLATS + 1)]
    return list(zip(turns, [1.0, *[out] * (FLATS - 1), 1.0], strict=True))
