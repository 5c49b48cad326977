"""Sines and roots in degrees: exact where sympy says they are rational, and close to the last digits elsewhere."""

import math
from collections.abc import Callable
from fractions import Fraction

import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st

from calc import trig

DEGREES = [*range(-360, 721, 15), *range(-90, 91, 9)]
turns = st.fractions(-360, 360, max_denominator=10**4)
slopes = st.fractions(-(10**6), 10**6, max_denominator=10**6)


@pytest.mark.parametrize("degrees", DEGREES)
@pytest.mark.parametrize(("name", "work"), [("sin", trig.sin), ("cos", trig.cos), ("tan", trig.tan)])
def test_what_sympy_calls_rational_is_exact(name: str, work: Callable[[int], trig.Number], degrees: int) -> None:
    """Exactly sympy's value where that is rational, a float within 1e-12 of it elsewhere."""
    true = sympy.simplify(getattr(sympy, name)(sympy.pi * degrees / 180))
    if true is sympy.zoo:
        with pytest.raises(ZeroDivisionError):
            work(degrees)
    elif true.is_rational:
        assert trig.is_exact(work(degrees))
        assert work(degrees) == Fraction(int(true.p), int(true.q))
    else:
        assert isinstance(work(degrees), float)
        assert work(degrees) == pytest.approx(float(true), rel=1e-12)


@given(turns)
def test_the_inverse_brings_an_angle_back(degrees: Fraction) -> None:
    """Arc tangent of the tangent, sine over cosine, and the sum of squares."""
    sine, cosine = trig.sin(degrees), trig.cos(degrees)
    assert sine**2 + cosine**2 == pytest.approx(1, abs=1e-12)
    if abs(cosine) > 1e-6:
        assert trig.atan(trig.tan(degrees)) == pytest.approx((float(degrees) + 90) % 180 - 90, abs=1e-8)


@given(slopes)
def test_an_arc_tangent_is_exact_only_where_it_can_be(slope: Fraction) -> None:
    """0, 45 and −45 degrees (Niven 1956, corollary 3.12); all others as the math module has them."""
    found = trig.atan(slope)
    assert trig.is_exact(found) == (slope in (-1, 0, 1))
    assert found == pytest.approx(math.degrees(math.atan(slope)), abs=1e-12)


@pytest.mark.parametrize(("sine", "angle"), [(0, 0), (Fraction(1, 2), 30), (1, 90), (Fraction(-1, 2), -30), (-1, -90)])
def test_the_rational_sines_have_exact_angles(sine: Fraction, angle: int) -> None:
    """Arc sine and arc cosine of 0, 1/2 and 1, with either sign."""
    assert (trig.asin(sine), trig.acos(sine)) == (angle, 90 - angle)
    assert trig.is_exact(trig.asin(sine))
    assert trig.is_exact(trig.acos(sine))


@given(st.floats(-1, 1))
def test_arc_sine_and_cosine_keep_every_digit(ratio: float) -> None:
    """As exact as the math module, near 1 as well, where 90 less the other would lose digits."""
    assert trig.asin(ratio) == math.degrees(math.asin(ratio))
    assert trig.acos(ratio) == math.degrees(math.acos(ratio))


@given(st.fractions(0, 10**6, max_denominator=10**6))
def test_the_root_of_a_square_is_exact(value: Fraction) -> None:
    """And a root that is not rational comes as a float whose square is near."""
    assert trig.sqrt(value * value) == value
    assert trig.is_exact(trig.sqrt(value * value))
    assert trig.sqrt(value) ** 2 == pytest.approx(float(value), rel=1e-12, abs=1e-300)


@pytest.mark.parametrize("value", [2, 3, 5, Fraction(1, 2), Fraction(8, 9)])
def test_an_irrational_root_does_not_pass_for_exact(value: Fraction) -> None:
    """√2 and its like are floats."""
    assert isinstance(trig.sqrt(value), float)


@pytest.mark.parametrize("work", [lambda: trig.sqrt(Fraction(-1)), lambda: trig.asin(2), lambda: trig.acos(-1.5)])
def test_what_has_no_answer_raises(work: Callable[[], trig.Number]) -> None:
    """A root below nothing, a sine above one."""
    with pytest.raises(ValueError, match=r"domain|range"):
        work()
