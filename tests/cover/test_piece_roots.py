"""Where a function comes to nothing: exactly where it is straight, as scipy finds it where it is curved."""

import math
from collections.abc import Callable
from fractions import Fraction
from typing import Any

import pytest
import sympy
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq

from calc.building.elimination import settle_together, solve
from calc.building.trials import Reached
from calc.roots import reach

SMALL = st.fractions(-20, 20, max_denominator=64)


def reached(miss: Callable[[Any], Any], now: Any, low: Any, high: Any) -> Reached:
    """What is found, which must lie within the limits."""
    found = reach(miss, Fraction(now), Fraction(low), Fraction(high))
    assert found is not None
    assert low <= found.value <= high
    return found


@given(slope=SMALL, shift=SMALL, now=st.fractions(0, 50, max_denominator=64))
def test_a_straight_line_is_exact_or_stops_at_the_limit(slope: Fraction, shift: Fraction, now: Fraction) -> None:
    """To the last Fraction; beyond the limit, the limit itself, with what is left there."""
    assume(slope)
    found = reached(lambda size: slope * size - shift, now, 0, 50)
    meant = shift / slope
    assert found.value == min(max(meant, 0), 50)
    assert found.left == slope * found.value - shift
    assert found.exact == (0 <= meant <= 50)


CURVES = {
    "a board on a slope": (lambda x: 230 * math.hypot(200, 200 - x) / 200 - 250, 0, 199),
    "an angle from its legs": (lambda x: math.degrees(math.atan2(x, 300)) - 17, 0, 900),
    "a diagonal": (lambda x: math.hypot(x, 120) - 340, 0, 2000),
    "a cube": (lambda x: x**3 - 20, 0, 9),
    "a tangent near its pole": (lambda x: math.tan(math.radians(x)) - 40, 0, 89.999),
    "one over": (lambda x: 1 / (x + 1) - 0.013, 0, 500),
}


@pytest.mark.parametrize("name", CURVES)
@pytest.mark.parametrize("part", [0.0, 0.3, 0.9, 1.0])
def test_a_curve_is_closed_in_on(name: str, part: float) -> None:
    """From wherever it starts, to what Brent's method finds (scipy.optimize.brentq)."""
    curve, low, high = CURVES[name]
    found = reached(lambda x: curve(float(x)), low + part * (high - low), low, high)
    assert float(found.value) == pytest.approx(brentq(curve, low, high, xtol=1e-13), abs=2e-8)
    assert not found.exact


def test_a_curve_with_a_short_root_is_exact() -> None:
    """The leg of a 3-4-5 triangle in squares; one over a length; both in Fractions."""
    assert reached(lambda x: x * x - 1600, 7, 0, 90).value == 40
    assert reached(lambda x: 1 / x - Fraction(5, 48), 1, Fraction(1, 100), 90).exact


def test_a_leap_is_no_root() -> None:
    """A count passes 3.5 without being it; the nearest side of the leap is found instead."""
    found = reached(lambda x: math.ceil(x) - Fraction(7, 2), 1, 0, 9)
    assert not found.there
    assert abs(found.left) == Fraction(1, 2)


def test_a_dip_that_does_not_reach_is_found_at_its_lowest() -> None:
    """x² + 1 comes nearest to nothing at 0."""
    found = reached(lambda x: x * x + 1, 3, -4, 9)
    assert not found.there
    assert float(found.value) == pytest.approx(0, abs=1e-4)


def test_the_search_stops_at_a_hole_and_looks_up_to_its_edge() -> None:
    """Beyond 1.5 nothing can be said, and the root at 1.499 is still found."""
    found = reached(lambda x: x * x - Fraction(1499, 1000) ** 2 if x < Fraction(3, 2) else None, 0, 0, 3)
    assert float(found.value) == pytest.approx(1.499, abs=1e-8)


def test_where_nothing_can_be_said_nothing_is_found() -> None:
    """No trial, no answer."""
    assert reach(lambda x: None, Fraction(1), Fraction(0), Fraction(2)) is None


@given(st.lists(st.lists(SMALL, min_size=4, max_size=4), min_size=3, max_size=3))
def test_elimination_is_sympys(rows: list[list[Fraction]]) -> None:
    """Three equations, exactly; none where the determinant is nothing."""
    matrix = sympy.Matrix([[sympy.Rational(one.numerator, one.denominator) for one in row] for row in rows])
    found = solve([row[:3] for row in rows], [row[3] for row in rows])
    if not matrix[:, :3].det():
        assert found is None
    else:
        assert found is None or [sympy.Rational(str(one)) for one in found] == list(matrix[:, :3].LUsolve(matrix[:, 3]))


def test_curves_together_are_sympys() -> None:
    """A circle of 5 and a line: 3 and 4, from nearby, in a few steps."""
    settled = settle_together(lambda at: [at[0] ** 2 + at[1] ** 2 - 25, at[1] - at[0] - 1], (Fraction(2), Fraction(5)))
    x, y = sympy.symbols("x y")
    wanted = sympy.nsolve((x**2 + y**2 - 25, y - x - 1), (x, y), (2, 5))
    assert settled is not None
    assert [float(one) for one in settled[0]] == pytest.approx([float(one) for one in wanted], abs=1e-9)
    assert not settled[1]


def test_what_has_no_meeting_place_is_not_settled() -> None:
    """Two lines side by side."""
    assert settle_together(lambda at: [at[0] + at[1], at[0] + at[1] - 1], (Fraction(0), Fraction(0))) is None
