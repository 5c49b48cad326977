"""Frames against exact trigonometry, against their own corners, and at their limits."""

import math
from fractions import Fraction

import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Polygon, box
from shapely.affinity import rotate

import calc
from calc import Refused

SIDES = st.integers(3, 24)
SIZES = st.integers(1, 5000).map(lambda hundredths: f"{hundredths / 100:.2f} in")


@pytest.mark.parametrize("sides", range(3, 25))
def test_a_frame_agrees_with_exact_trigonometry(sides: int) -> None:
    """Side and across corners of a frame 1 in across flats equal sympy's exact tangent and cosine to twelve digits."""
    answer = calc.answer("mitre", sides=sides, across_flats="1 in")
    side, corners = sympy.tan(sympy.pi / sides), 1 / sympy.cos(sympy.pi / sides)
    assert float(answer["side"]) / 25.4 == pytest.approx(float(sympy.N(side, 30)), rel=1e-12)
    assert float(answer["across_corners"]) / 25.4 == pytest.approx(float(sympy.N(corners, 30)), rel=1e-12)


@pytest.mark.parametrize(
    ("given", "name", "exact"),
    [
        ({"sides": 4, "across_flats": "7 in"}, "side", 7 * Fraction("25.4")),
        ({"sides": 4, "side": "7 in", "width": "1 in"}, "short_edge", 5 * Fraction("25.4")),
        ({"sides": 6, "side": "100 mm"}, "across_corners", Fraction(200)),
        ({"sides": 6, "across_corners": "100 mm"}, "side", Fraction(50)),
        ({"sides": 7, "side": "1 in"}, "cut_angle", Fraction(180, 7)),
    ],
)
def test_what_can_be_exact_is(given: dict[str, object], name: str, exact: Fraction) -> None:
    """Squares, the hexagon's corners and every angle are Fractions, untouched by rounding."""
    value = calc.answer("mitre", **given)[name]
    assert isinstance(value, int | Fraction)
    assert value == exact


@given(sides=SIDES, size=SIZES, name=st.sampled_from(["side", "across_flats", "across_corners"]))
def test_any_one_size_gives_the_same_frame(sides: int, size: str, name: str) -> None:
    """Whichever size is given, the other two given back lead to the first again."""
    first = calc.answer("mitre", sides=sides, **{name: size})
    for other in ("side", "across_flats", "across_corners"):
        again = calc.answer("mitre", sides=sides, **{other: f"{float(first[other]):.12f} mm"})
        assert float(again[name]) == pytest.approx(float(first[name]), rel=1e-9)


@given(sides=SIDES, share=st.fractions(Fraction(1, 50), Fraction(9, 20), max_denominator=100))
def test_the_short_edge_is_the_side_of_the_inner_polygon(sides: int, share: Fraction) -> None:
    """The outer polygon drawn corner by corner and shrunk by the stock's width has the short edge for a side."""
    answer = calc.answer("mitre", sides=sides, across_flats="200 mm", width=f"{float(200 * share):.9f} mm")
    radius = float(answer["across_corners"]) / 2
    turns = [2 * math.pi * one / sides for one in range(sides)]
    outer = Polygon([(radius * math.cos(turn), radius * math.sin(turn)) for turn in turns])
    inner = outer.buffer(-float(answer["width"]), join_style="mitre")
    assert inner.length / sides == pytest.approx(float(answer["short_edge"]), rel=1e-6)


def test_stock_too_wide_is_refused_with_the_widest_that_serves() -> None:
    """Half of across flats leaves nothing inside; the refusal names the field and how narrow it must be."""
    with pytest.raises(Refused, match="less than 40 mm") as refused:
        calc.answer("mitre", sides="4", side="80 mm", width="40 mm")
    assert refused.value.refusals[0].field == "width"


def test_without_a_width_the_inside_is_not_told() -> None:
    """The outside alone needs no stock width, and nothing is made up about the inside."""
    answer = calc.answer("mitre", sides="5", side="3 in")
    assert answer["short_edge"] is answer["inside_flats"] is answer["stock_turned"] is None


def test_turned_pieces_take_less_stock_than_pieces_one_way_up() -> None:
    """Sharing slanting cuts saves what the mitres slope, and never costs."""
    answer = calc.answer("mitre", sides="6", side="4 in", width="1 in")
    saved = float(answer["stock_alike"] - answer["stock_turned"])
    assert saved == pytest.approx(5 * 25.4 * math.tan(math.pi / 6))


@given(sides=SIDES, kerf=st.integers(0, 50))
def test_the_stock_holds_the_pieces_and_every_saw_cut(sides: int, kerf: int) -> None:
    """A saw cut laid across the stock at the mitre's slant takes its own length of it, once for each cut."""
    answer = calc.answer("mitre", sides=sides, side="150 mm", width="20 mm", kerf=f"{kerf / 10} mm")
    cut = rotate(box(-kerf / 20, -1000, kerf / 20, 1000), float(answer["cut_angle"]))
    taken = (sides + 1) * cut.intersection(LineString([(-2000, 0), (2000, 0)])).length
    slant, middle = float(answer["side"] - answer["short_edge"]) / 2, float(answer["side"] + answer["short_edge"]) / 2
    assert float(answer["stock_turned"]) == pytest.approx(sides * middle + slant + taken)
    assert float(answer["stock_alike"]) == pytest.approx(sides * 150 + taken)


@pytest.mark.parametrize("sides", ["2", "25", "4.5"])
def test_sides_are_three_to_twenty_four_whole(sides: str) -> None:
    """Two sides make no frame, past twenty-four it is a hoop."""
    with pytest.raises(Refused):
        calc.answer("mitre", sides=sides, side="3 in")


def test_short_pieces_are_warned_of() -> None:
    """A side shorter than a hand is wide brings the caution to clamp it."""
    short, long = calc.answer("mitre", sides="8", side="2 in"), calc.answer("mitre", sides="8", side="12 in")
    assert len(short.cautions) == len(long.cautions) + 1
