"""Ovals against an independent library's elliptic integral, symbols, and pins and strips in the plane."""

import math
from fractions import Fraction

import mpmath
import numpy as np
import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused
from calc.sums._ellipse import perimeter

SHAPES = st.tuples(st.integers(1, 4000), st.integers(1, 4000)).map(lambda pair: (max(pair), min(pair)))


def exact_edge(long: float, short: float) -> mpmath.mpf:
    """Four times half the long axis times the complete elliptic integral of the second kind, to forty figures."""
    with mpmath.workdps(40):
        return 2 * mpmath.mpf(long) * mpmath.ellipe(1 - (mpmath.mpf(short) / mpmath.mpf(long)) ** 2)


@given(shape=SHAPES)
def test_the_edge_is_the_elliptic_integral(shape: tuple[int, int]) -> None:
    """To fourteen figures, for ovals of every shape."""
    answer = calc.answer("ellipse", long=f"{shape[0]} mm", short=f"{shape[1]} mm")
    assert answer["perimeter"] == pytest.approx(float(exact_edge(*shape)), rel=1e-14)


@pytest.mark.parametrize("thin", range(10))
def test_the_edge_of_a_thin_oval_comes_near_twice_its_length(thin: int) -> None:
    """Down to a thousand millionth of its length across, the sum keeps its figures."""
    assert perimeter(1, 10.0**-thin) == pytest.approx(float(exact_edge(1, 10.0**-thin)), rel=1e-14)


@given(shape=SHAPES)
def test_foci_area_and_radii_are_those_of_the_symbolic_ellipse(shape: tuple[int, int]) -> None:
    """Sympy's ellipse of the same axes: foci, area, and the curvature at both ends of a quarter."""
    answer = calc.answer("ellipse", long=f"{shape[0]} mm", short=f"{shape[1]} mm")
    a, b = sympy.Rational(shape[0], 2), sympy.Rational(shape[1], 2)
    oval = sympy.Ellipse(sympy.Point(0, 0), a, b)
    assert float(answer["pin"]) == pytest.approx(float(oval.focus_distance), abs=1e-9)
    assert answer["area"] == pytest.approx(float(oval.area), rel=1e-14)
    assert float(answer["end_radius"]) == pytest.approx(float(b**2 / a), rel=1e-14)
    turns = np.array([-1e-4, 0, 1e-4]) + math.pi / 2
    x, y = float(a) * np.cos(turns), float(b) * np.sin(turns)
    sag, half = y[1] - (y[0] + y[2]) / 2, (x[0] - x[2]) / 2
    assert float(answer["side_radius"]) == pytest.approx((half**2 + sag**2) / 2 / sag, rel=1e-4)


@given(shape=SHAPES)
def test_a_loop_held_tight_by_every_point_has_one_length(shape: tuple[int, int]) -> None:
    """From the plotted point round both pins is the loop, whichever point the pencil stands on."""
    answer = calc.answer("ellipse", long=f"{shape[0]} mm", short=f"{shape[1]} mm")
    pins = np.array([[-float(answer["pin"]), 0], [float(answer["pin"]), 0]])
    for row in answer["points"]:
        pencil = np.array([float(row["along"]), float(row["off"])])
        loop = np.linalg.norm(pins - pencil, axis=1).sum() + float(answer["foci"])
        assert loop == pytest.approx(float(answer["loop"]), rel=1e-12)


@given(shape=SHAPES, turn=st.floats(0.01, 1.56))
def test_the_trammel_s_pencil_runs_on_the_oval(shape: tuple[int, int], turn: float) -> None:
    """A strip whose two marks are kept on the axes, at any slant, has its third mark on the curve."""
    answer = calc.answer("ellipse", long=f"{shape[0]} mm", short=f"{shape[1]} mm")
    along, across, gap = (float(answer[name]) for name in ("arm_long", "arm_short", "sliders"))
    assert gap == pytest.approx(along - across)
    on_short = np.array([0, -gap * math.sin(turn)])
    pencil = on_short + along * np.array([math.cos(turn), math.sin(turn)])
    assert (pencil[0] / along) ** 2 + (pencil[1] / across) ** 2 == pytest.approx(1)


@given(shape=SHAPES)
def test_any_two_sizes_give_the_same_oval(shape: tuple[int, int]) -> None:
    """Axes and pins, whichever two are typed."""
    long, short = shape[0] + 1, shape[1]
    first = calc.answer("ellipse", long=f"{long} mm", short=f"{short} mm")
    foci = f"{float(first['foci']):.12f} mm"
    for two in ({"long": f"{long} mm", "foci": foci}, {"short": f"{short} mm", "foci": foci}):
        again = calc.answer("ellipse", **two)
        assert float(again["long"]) == pytest.approx(long)
        assert float(again["short"]) == pytest.approx(short, rel=1e-6)


def test_what_can_be_exact_is() -> None:
    """Three, four, five: pins four apart; and a circle has its pins in one place."""
    oval = calc.answer("ellipse", long="5 in", short="3 in")
    assert oval["foci"] == 4 * Fraction("25.4")
    assert isinstance(oval["loop"], Fraction)
    circle = calc.answer("ellipse", long="7 in", short="7 in")
    assert (circle["foci"], circle["sliders"]) == (0, 0)
    assert circle["perimeter"] == pytest.approx(math.pi * 7 * 25.4, rel=1e-15)


@pytest.mark.parametrize(
    ("sizes", "field"),
    [
        ({"long": "3 in", "short": "5 in"}, "short"),
        ({"long": "5 in", "foci": "5 in"}, "foci"),
        ({"long": "5 in"}, "short"),
        ({"long": "5 in", "short": "3 in", "foci": "4 in"}, "foci"),
    ],
)
def test_what_is_no_oval_is_refused_by_name(sizes: dict[str, str], field: str) -> None:
    """Axes the wrong way round, pins outside the oval, one size and three."""
    with pytest.raises(Refused) as refused:
        calc.answer("ellipse", **sizes)
    assert refused.value.refusals[0].field == field
