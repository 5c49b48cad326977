"""Frames racked by numpy, corner by corner, against what diagonal says of their two diagonals."""

import math
from fractions import Fraction

import numpy as np
import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused

SIDES = st.integers(50, 3000)
CORNERS = st.integers(600, 1200).map(lambda tenths: tenths / 10)


def racked(length: float, width: float, corner: float) -> np.ndarray:
    """Near left, near right, far right, far left of a frame whose near left corner has that many degrees."""
    side = width * np.array([math.cos(math.radians(corner)), math.sin(math.radians(corner))])
    near = np.array([length, 0.0])
    return np.array([0 * near, near, near + side, side])


def measured(spots: np.ndarray) -> tuple[float, float]:
    """The diagonals from near left and from near right, as a tape would read them."""
    return float(np.linalg.norm(spots[2] - spots[0])), float(np.linalg.norm(spots[3] - spots[1]))


def asked(length: float, width: float, *diagonals: float, **more: str) -> calc.Result:
    """The answer for sizes in millimetres."""
    names = ("length", "width", "first", "second")
    texts = {name: f"{size:.9f} mm" for name, size in zip(names, (length, width, *diagonals), strict=False)}
    return calc.answer("diagonal", **texts, **more)


@given(length=SIDES, width=SIDES, corner=CORNERS)
def test_the_corner_is_found_from_both_diagonals(length: int, width: int, corner: float) -> None:
    """A frame racked to a known corner, its diagonals taped: that corner, its lean, and sides that agree."""
    spots = racked(length, width, corner)
    answer = asked(length, width, *measured(spots))
    assert float(answer["corner"]) == pytest.approx(corner, abs=1e-5)
    assert float(answer["lean"]) == pytest.approx(spots[3][0], abs=1e-5)
    assert float(answer["misfit"]) == pytest.approx(0, abs=1e-5)


@given(length=SIDES, width=SIDES, corner=CORNERS.filter(lambda corner: abs(corner - 90) > 0.05))
def test_bringing_the_named_corners_in_squares_the_frame(length: int, width: int, corner: float) -> None:
    """Racked back to a right angle the named diagonal is shorter by the pull, and both read what was told."""
    before, after = (measured(racked(length, width, angle)) for angle in (corner, 90))
    answer = asked(length, width, *before)
    named = 0 if answer["bring_in"] == "near left and far right" else 1
    assert before[named] - after[named] == pytest.approx(float(answer["pull"]), abs=1e-5)
    assert float(answer["pull"]) > 0
    assert after == pytest.approx([float(answer["even"])] * 2)


@given(length=SIDES, width=SIDES, corner=CORNERS)
def test_turned_about_the_frame_says_the_same(length: int, width: int, corner: float) -> None:
    """Seen from its other end a frame leans the other way, by as much, and the same two corners are brought in."""
    first, second = measured(racked(length, width, corner))
    one, other = asked(length, width, first, second), asked(length, width, second, first)
    assert one["lean"] == -other["lean"]
    assert one["pull"] == other["pull"]
    assert float(one["corner"] + other["corner"]) == pytest.approx(180)


@pytest.mark.parametrize(("length", "width"), [(42, 42), (12, 8), (5, 12), (19, 7)])
def test_the_true_diagonal_agrees_with_exact_geometry(length: int, width: int) -> None:
    """sympy's distance from corner to corner, exact where it is whole."""
    exact = sympy.Point(0, 0).distance(sympy.Point(length, width))
    answer = asked(length, width)["diagonal"]
    assert float(answer) == pytest.approx(float(sympy.N(exact, 25)), rel=1e-14)
    assert isinstance(answer, Fraction) == bool(exact.is_rational)


@given(length=SIDES, width=SIDES, mark=st.sampled_from(["1/16", "1/64", "mm", "half mm"]))
def test_each_triangle_fits_and_is_right(length: int, width: int, mark: str) -> None:
    """Sides within the frame, corners right by Pythagoras turned round, units a rule has, and none larger left out."""
    answer = asked(length, width, mark=mark)
    rows, unit = answer["triangles"] or [], Fraction("6.35") if "/" in mark else 1
    for row in rows:
        assert row["short"] <= min(length, width)
        assert row["long"] <= max(length, width)
        assert row["short"] ** 2 + row["long"] ** 2 == row["across"] ** 2
        assert row["short"] / 3 % unit == 0
    room = min(Fraction(min(length, width), 3), Fraction(max(length, width), 4))
    step = Fraction("25.4") if "/" in mark else 10
    assert answer["five"] == 5 * (room // (step if step <= room else unit)) * (step if step <= room else unit)


def test_a_square_frame_needs_nothing() -> None:
    """Both diagonals alike: neither corner is brought in, the corner is exactly 90°, and no clamp is warned of."""
    answer = calc.answer("diagonal", length="12 in", width="9 in", first="15 in", second="15 in")
    assert answer["bring_in"] == "neither, it is square"
    assert (answer["pull"], answer["lean"], answer["corner"], answer["misfit"]) == (0, 0, 90, 0)
    assert not answer.cautions


def test_sides_that_do_not_agree_are_warned_of() -> None:
    """Equal diagonals too long for the sides: the frame may be no rectangle at all."""
    answer = calc.answer("diagonal", length="12 in", width="9 in", first="15 1/4 in", second="15 1/4 in")
    assert any("do not agree" in caution.say for caution in answer.cautions)
    assert answer["misfit"] == Fraction("6.35")


def test_a_frame_that_was_measured_wrong_is_not_called_square() -> None:
    """Sides of 12 and 9 in have diagonals of 15 (3-4-5), never two of 16: no corner is told, and none called square."""
    answer = calc.answer("diagonal", length="12 in", width="9 in", first="16 in", second="16 in")
    assert answer["corner"] is None
    assert "square" not in answer["bring_in"]
    assert "do not fit these sides" in answer["bring_in"]
    near = calc.answer("diagonal", length="12 in", width="9 in", first="15 1/32 in", second="15 1/32 in")
    assert (near["bring_in"], near["corner"]) == ("neither, it is square", 90)


def test_a_frame_too_small_for_any_triangle_has_none() -> None:
    """Under three quarters of an inch wide, nothing on a rule of inches fits."""
    answer = calc.answer("diagonal", length="10 in", width="11/16 in")
    assert answer["triangles"] is answer["three"] is answer["five"] is None


@pytest.mark.parametrize(
    ("more", "field"),
    [
        ({"first": "15 in"}, "second"),
        ({"second": "15 in"}, "first"),
        ({"first": "21 in", "second": "15 in"}, "first"),
        ({"first": "15 in", "second": "3 in"}, "second"),
        ({"width": "0 in"}, "width"),
    ],
)
def test_what_is_no_frame_is_refused_by_name(more: dict[str, str], field: str) -> None:
    """One diagonal alone, one that closes no triangle with the sides, a side of nothing."""
    with pytest.raises(Refused) as refused:
        calc.answer("diagonal", **{"length": "12 in", "width": "9 in", **more})
    assert refused.value.refusals[0].field == field
