"""Proportions drawn with compasses by sympy, and the nearest of a pair against every one there is."""

import math
from fractions import Fraction

import mpmath
import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc.kinds import Choice

SIZES = st.integers(20, 4000)
TRUE = {
    "1 : 1": 1,
    "5 : 6": 6 / 5,
    "4 : 5": 5 / 4,
    "3 : 4": 4 / 3,
    "1 : √2": 2**0.5,
    "2 : 3": 3 / 2,
    "5 : 8": 8 / 5,
    "golden": float(mpmath.phi),
    "3 : 5": 5 / 3,
    "1 : 2": 2,
}
"""How many times the shorter side the longer is: mpmath knows the golden section."""


def pair(one: int, other: int) -> calc.Result:
    """The answer about two sizes in millimetres."""
    return calc.answer("proportion", size=f"{one} mm", other=f"{other} mm")


def test_the_golden_section_is_drawn_with_compasses() -> None:
    """sympy swings the far corner of a square about the middle of its base: where it lands is our longer side."""
    square = sympy.Polygon((0, 0), (10, 0), (10, 10), (0, 10))
    swing = sympy.Circle(sympy.Point(5, 0), sympy.Point(5, 0).distance(square.vertices[2]))
    lands = max(float(spot.x) for spot in swing.intersection(sympy.Line((0, 0), (1, 0))))
    answer = calc.answer("proportion", size="10 in", ratio="golden")
    assert float(answer["longer"]) / 25.4 == pytest.approx(lands, rel=1e-14)
    assert float(answer["shorter"]) / 25.4 == pytest.approx(lands - 10, rel=1e-14)


def test_root_two_is_the_diagonal_of_a_square() -> None:
    """As sympy measures it from corner to corner."""
    diagonal = sympy.Point(0, 0).distance(sympy.Point(10, 10))
    answer = calc.answer("proportion", size="10 in", ratio="root two")
    assert float(answer["longer"]) / 25.4 == pytest.approx(float(sympy.N(diagonal, 20)), rel=1e-14)


@pytest.mark.parametrize("label", TRUE)
def test_each_proportion_is_itself(label: str) -> None:
    """Chosen, listed or found of a pair made by it, each has its own number."""
    row = next(row for row in calc.answer("proportion", size="1 m")["partners"] if row["ratio"] == label)
    assert float(row["longer"]) == pytest.approx(1000 * TRUE[label], rel=1e-12)
    assert float(row["shorter"]) == pytest.approx(1000 / TRUE[label], rel=1e-12)
    asked = calc.discover.find("proportion").given("ratio")
    assert isinstance(asked, Choice)
    key = next(option.key for option in asked.options if option.label == label)
    assert calc.answer("proportion", size="1 m", ratio=key)["longer"] == row["longer"]


@given(one=SIZES, other=SIZES)
def test_none_is_nearer_than_the_nearest(one: int, other: int) -> None:
    """By ratio, longer over shorter, whichever size was typed first."""
    times = max(one, other) / min(one, other)
    off = {label: abs(math.log(times / true)) for label, true in TRUE.items()}
    answer = pair(one, other)
    assert off[answer["nearest"]] <= min(off.values()) + 1e-12
    assert answer["nearest"] == pair(other, one)["nearest"]


@given(one=SIZES, other=SIZES)
def test_no_whole_numbers_are_nearer(one: int, other: int) -> None:
    """Of all pairs up to twelve; a pair that is one of them is over by nothing, in its lowest terms."""
    times = Fraction(max(one, other), min(one, other))
    pairs = [Fraction(many, few) for many in range(1, 13) for few in range(1, many + 1)]
    answer = pair(one, other)
    few, many = map(int, answer["in_whole"].split(" : "))
    assert math.gcd(few, many) == 1
    best = min(max(each / times, times / each) for each in pairs)
    assert max(Fraction(many, few) / times, times / Fraction(many, few)) == best
    assert (answer["whole_over"] == 0) == (times in pairs)


@given(one=SIZES, other=SIZES)
def test_what_would_be_true_has_the_nearest_proportion(one: int, other: int) -> None:
    """The longer cut to its true size, or the shorter, makes a pair over by nothing."""
    answer = pair(one, other)
    shorter, longer = sorted((one, other))
    for low, high in ((shorter, float(answer["true_longer"])), (float(answer["true_shorter"]), longer)):
        assert high / low == pytest.approx(TRUE[answer["nearest"]], rel=1e-12)
    assert float(answer["over"]) == pytest.approx(longer - float(answer["true_longer"]), abs=1e-9)
    assert float(answer["off"]) == pytest.approx(100 * (longer / float(answer["true_longer"]) - 1), abs=1e-9)


def test_whole_numbers_are_stepped_off() -> None:
    """A fifth of 7 1/2 in steps off twelve in eight; the golden section cannot be stepped."""
    answer = calc.answer("proportion", size="7 1/2 in", ratio="5:8")
    inch = Fraction("25.4")
    assert (answer["step_longer"], answer["longer"], answer["shorter"]) == (
        Fraction(3, 2) * inch,
        12 * inch,
        Fraction(75, 16) * inch,
    )
    assert answer["many"] * answer["step_longer"] == answer["longer"]
    assert answer["few"] * answer["step_shorter"] == answer["shorter"]
    golden = calc.answer("proportion", size="7 1/2 in", ratio="golden")
    assert golden["few"] is golden["step_longer"] is None


def test_a_pair_is_told_of_itself_and_not_of_partners() -> None:
    """One table or the other, never both."""
    assert pair(200, 300)["partners"] is pair(200, 300)["longer"] is None
    assert calc.answer("proportion", size="2 in")["against"] is None
