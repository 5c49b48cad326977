"""Sines, roots and their like in degrees, exact where exact is possible.

By Niven's theorem (I. Niven, Irrational Numbers, 1956, corollary 3.12) the only rational sines at rational degrees are
0, 1/2 and 1, and the only rational tangents 0 and 1, each with either sign: those stay Fractions, and a root of a
square stays a Fraction. All else leaves as a float, so that an answer can say whether it is exact or rounded.
"""

import math
from fractions import Fraction

Number = Fraction | float | int

_HALF = Fraction(1, 2)
_EXACT_SINES = {
    0: Fraction(0),
    30: _HALF,
    90: Fraction(1),
    150: _HALF,
    180: Fraction(0),
    210: -_HALF,
    270: Fraction(-1),
    330: -_HALF,
}
_EXACT_ANGLES = {sine: Fraction(angle) for angle, sine in ((0, 0), (30, _HALF), (90, 1), (-30, -_HALF), (-90, -1))}


def is_exact(value: object) -> bool:
    """True for whole numbers and Fractions: what no rounding has touched."""
    return isinstance(value, int | Fraction)


def sin(degrees: Number) -> Number:
    """Sine of an angle in degrees.

    >>> sin(30)
    Fraction(1, 2)
    """
    if is_exact(degrees) and (turn := degrees % 360) in _EXACT_SINES:
        return _EXACT_SINES[int(turn)]
    return math.sin(math.radians(degrees))


def cos(degrees: Number) -> Number:
    """Cosine of an angle in degrees."""
    if is_exact(degrees) and (turn := (degrees + 90) % 360) in _EXACT_SINES:
        return _EXACT_SINES[int(turn)]
    return math.cos(math.radians(degrees))


def tan(degrees: Number) -> Number:
    """Tangent of an angle in degrees; ZeroDivisionError at a right angle."""
    if is_exact(degrees) and degrees % 45 == 0:
        return sin(2 * degrees) / (1 + cos(2 * degrees))
    return math.tan(math.radians(degrees))


def asin(ratio: Number) -> Number:
    """Angle in degrees, -90 to 90, whose sine is `ratio`; ValueError outside -1 to 1."""
    if is_exact(ratio) and ratio in _EXACT_ANGLES:
        return _EXACT_ANGLES[Fraction(ratio)]
    return math.degrees(math.asin(ratio))


def acos(ratio: Number) -> Number:
    """Angle in degrees, 0 to 180, whose cosine is `ratio`; ValueError outside -1 to 1."""
    if is_exact(ratio) and ratio in _EXACT_ANGLES:
        return 90 - _EXACT_ANGLES[Fraction(ratio)]
    return math.degrees(math.acos(ratio))


def atan(ratio: Number) -> Number:
    """Angle in degrees, -90 to 90, whose tangent is `ratio`."""
    if is_exact(ratio) and ratio in (-1, 0, 1):
        return Fraction(45 * ratio)
    return math.degrees(math.atan(ratio))


def sqrt(value: Number) -> Number:
    """Square root, exact where numerator and denominator are squares; ValueError below nothing.

    >>> sqrt(Fraction(9, 16))
    Fraction(3, 4)
    """
    if not is_exact(value) or value < 0:
        return math.sqrt(value)
    whole = Fraction(value)
    top, bottom = math.isqrt(whole.numerator), math.isqrt(whole.denominator)
    exact = top * top == whole.numerator and bottom * bottom == whole.denominator
    return Fraction(top, bottom) if exact else math.sqrt(whole)
