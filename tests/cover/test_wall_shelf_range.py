"""The wall shelf over its range: what would just bear the load, its curves as circles, its wood and what to buy."""

from fractions import Fraction
from typing import Any

import pytest
from examples import Example, covered
from hypothesis import given
from hypothesis import strategies as st
from randomly import sized
from shapely.geometry import Point, box

SHELF = Example("wall-shelf")
SHELVES = st.fixed_dictionaries(
    {
        "stock_width": sized(100, 300),
        "stock_thickness": sized(10, 30),
        "inside_width": sized(200, 900),
        "depth": sized(100, 300),
        "drop": st.none() | sized(70, 250),
        "rise": sized(10, 150),
        "radius": sized(10, 90),
        "species": st.sampled_from(["ash-white", "oak-white", "cherry-black"]),
        "load": st.integers(1, 30).map(Fraction),
    }
)


@given(SHELVES)
def test_what_would_do_just_does(givens: dict[str, Any]) -> None:
    """Asked again with the least thickness it stays within the limit, a hair thinner it does not."""
    v = SHELF.of(**givens)
    for off, over in ((1.0001, False), (0.9999, True)):
        found = SHELF.of(**givens | {"shelf_thickness": Fraction(v["shelf_least"] * off)})
        assert (found["sag_later"] > found["allowed"]) == over


@given(SHELVES)
def test_an_end_is_a_board_less_two_corners_of_a_circle(givens: dict[str, Any]) -> None:
    """Cut out of shapely's rectangle with shapely's circles, the end has the area that is answered."""
    v = SHELF.of(**givens)
    deep, high, radius = (float(v[name]) for name in ("depth", "end_high", "radius"))
    end = box(0, 0, deep, high)
    for name, level in (("curve_low", 0.0), ("curve_up", high)):
        along = float(v[name])
        middle = along if level == 0 else high - along
        corner = box(deep - radius, min(level, middle), deep, max(level, middle))
        end = end.difference(corner.difference(Point(deep - radius, middle).buffer(radius, quad_segs=2000)))
    assert end.area == pytest.approx(float(v["end_area"]), rel=1e-6)


@given(SHELVES)
def test_the_wood_is_that_of_its_solids_and_weighs_as_much(givens: dict[str, Any]) -> None:
    """The solids come to the volume answered, and that times the density to the weight."""
    SHELF.weighs_as_its_solids(SHELF.of(**givens))


@given(SHELVES)
def test_the_board_to_buy_covers_the_parts(givens: dict[str, Any]) -> None:
    """Thickness by thickness, the board is at least what the parts come to."""
    covered(SHELF.of(**givens))
