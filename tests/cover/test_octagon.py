"""Sticks made eight-sided, against exact roots and against the polygons themselves."""

import math
from fractions import Fraction

import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st
from shapely import Point, Polygon, box
from shapely.affinity import rotate

import calc
from calc import Refused

SIZES = st.integers(1000, 50000).map(lambda hundredths: hundredths / 100)


def chamfered(half: float, gauge: float) -> Polygon:
    """A square of this half width with its four corners cut off from gauge line to gauge line."""
    inner = half - gauge
    corners = [(half, -inner), (half, inner), (inner, half), (-inner, half)]
    return Polygon([*corners, (-half, inner), (-half, -inner), (-inner, -half), (inner, -half)])


@given(width=SIZES)
def test_the_square_cut_at_its_gauge_lines_is_regular(width: float) -> None:
    """Turned by an eighth of a turn it covers itself; its side, corners and what is planed off are measured on it."""
    answer = calc.answer("octagon", width=f"{width} mm")
    eight = chamfered(width / 2, float(answer["gauge"]))
    assert eight.symmetric_difference(rotate(eight, 45, origin=(0, 0))).area < 1e-9 * width**2
    assert float(answer["side"]) == pytest.approx(eight.length / 8)
    assert float(answer["corners"]) == pytest.approx(2 * eight.hausdorff_distance(Point(0, 0)))
    corner = Point(width / 2, width / 2)
    assert float(answer["off_arris"]) == pytest.approx(corner.distance(eight))


@given(width=SIZES)
def test_sixteen_sides_are_regular_and_a_touch_proud_of_round(width: float) -> None:
    """The octagon, each arris cut off from its gauge line, covers itself turned by a sixteenth."""
    answer = calc.answer("octagon", width=f"{width} mm")
    small = float(answer["gauge_sixteen"])
    half, reach = width / 2, float(answer["side_sixteen"]) / 2
    points = [
        (math.cos(turn) * half - math.sin(turn) * end, math.sin(turn) * half + math.cos(turn) * end)
        for turn in (math.pi * one / 4 for one in range(8))
        for end in (small - float(answer["side"]) / 2, float(answer["side"]) / 2 - small)
    ]
    sixteen = Polygon(points)
    assert sixteen.symmetric_difference(rotate(sixteen, 22.5, origin=(0, 0))).area < 1e-9 * width**2
    assert 2 * reach == pytest.approx(sixteen.length / 16)
    assert float(answer["proud"]) == pytest.approx(sixteen.hausdorff_distance(Point(0, 0)) - half)
    arris = Point(half, float(answer["side"]) / 2)
    assert float(answer["off_eight"]) == pytest.approx(arris.distance(sixteen), abs=1e-9)


def test_gauge_and_old_rules_agree_with_exact_roots() -> None:
    """Sympy's surds for a square 1 in wide, and for what each rule of whole parts leaves."""
    answer = calc.answer("octagon", width="1 in")
    gauge = 1 - 1 / sympy.sqrt(2)
    assert float(answer["gauge"]) / 25.4 == pytest.approx(float(gauge.evalf(30)), rel=1e-14)
    for row, told in zip(answer["rules"], ("5/17", "7/24", "12/41"), strict=True):
        share = sympy.Rational(told)
        assert row["by_rule"] == Fraction(told) * Fraction("25.4")
        assert float(row["off"]) / 25.4 == pytest.approx(float((share - gauge).evalf(30)), rel=1e-9)
        uneven = (1 - 2 * share) - share * sympy.sqrt(2)
        assert float(row["uneven"]) / 25.4 == pytest.approx(float(uneven.evalf(30)), rel=1e-9)


@given(width=SIZES)
def test_each_rule_s_sides_are_measured_on_the_stick_it_makes(width: float) -> None:
    """The octagon gauged by whole parts has four sides wider than the others by what is told."""
    for row in calc.answer("octagon", width=f"{width} mm")["rules"]:
        shape = list(chamfered(width / 2, float(row["by_rule"])).exterior.coords)
        assert math.dist(shape[0], shape[1]) - math.dist(shape[1], shape[2]) == pytest.approx(float(row["uneven"]))


@given(width=SIZES)
def test_any_one_size_gives_the_same_stick(width: float) -> None:
    """The side and the width across corners lead back to the square."""
    first = calc.answer("octagon", width=f"{width} mm", small="10 mm")
    for name in ("side", "corners"):
        again = calc.answer("octagon", **{name: f"{float(first[name]):.12f} mm"}, small="10 mm")
        for other in ("width", "gauge", "gauge_small", "side_sixteen"):
            assert float(again[other]) == pytest.approx(float(first[other]), rel=1e-9)


def test_a_taper_is_gauged_by_the_same_share_at_both_ends() -> None:
    """Half the width, half the gauge line; no other end, no line there."""
    answer = calc.answer("octagon", width="2 in", small="1 in")
    assert float(answer["gauge"]) == pytest.approx(2 * float(answer["gauge_small"]))
    assert calc.answer("octagon", width="2 in")["gauge_small"] is None
    square = box(0, 0, 1, 1)
    assert float(answer["gauge_small"]) / 25.4 == pytest.approx(1 - math.sqrt(square.area / 2))


@pytest.mark.parametrize("givens", [{}, {"width": "2 in", "side": "1 in"}, {"width": "0"}])
def test_one_size_is_wanted(givens: dict[str, str]) -> None:
    """None, two, or nothing are refused."""
    with pytest.raises(Refused):
        calc.answer("octagon", **givens)
