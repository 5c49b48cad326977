"""Rounded edges against the curve itself: drawn finely and measured, and, once, with exact symbols."""

import math
from itertools import pairwise

import numpy as np
import pytest
import sympy
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon, box

import calc
from calc import Refused
from calc.sums._facets import off

EDGES = st.fixed_dictionaries(
    {"width": st.integers(20, 200), "depth": st.integers(20, 200), "flats": st.integers(1, 12)}
)


def curve(width: float, depth: float, steps: int = 4000) -> LineString:
    """The quarter of the ellipse from face to edge, its middle at nothing."""
    turns = np.linspace(0, math.pi / 2, steps + 1)
    return LineString(np.column_stack([width * np.sin(turns), depth * np.cos(turns)]))


def arrises(answer: calc.Result) -> list[tuple[float, float]]:
    """Where the flats begin and the last one ends, about the middle of the ellipse."""
    width, depth = float(answer["width"]), float(answer["depth"])
    starts = [(width - float(row["starts_in"]), depth - float(row["starts_down"])) for row in answer["rows"]]
    return [*starts, (width, depth - float(answer["edge_line"]))]


def asked(edge: dict[str, int]) -> calc.Result:
    """The answer to sizes in millimetres."""
    return calc.answer("facets", width=f"{edge['width']} mm", depth=f"{edge['depth']} mm", flats=edge["flats"])


@settings(max_examples=40)
@given(edge=EDGES)
def test_every_flat_touches_the_curve_and_none_cuts_it(edge: dict[str, int]) -> None:
    """The distance from each flat to the curve is next to nothing, and all of the curve is inside the flats."""
    answer = asked(edge)
    round_edge, spots = curve(edge["width"], edge["depth"]), arrises(answer)
    fine = 1e-6 * max(edge["width"], edge["depth"])
    for start, end in pairwise(spots):
        assert LineString([start, end]).distance(round_edge) < fine
    inside = Polygon([(0, edge["depth"]), *spots, (edge["width"], 0), (0, 0)]).buffer(fine)
    assert inside.covers(round_edge)


@settings(max_examples=40)
@given(edge=EDGES)
def test_ridges_are_as_tall_as_they_measure(edge: dict[str, int]) -> None:
    """The tallest and the lowest arris stand off the finely drawn curve by what is told."""
    answer = asked(edge)
    round_edge = curve(edge["width"], edge["depth"])
    heights = [Point(spot).distance(round_edge) for spot in arrises(answer)]
    assert answer["ridge"] == pytest.approx(max(heights), abs=1e-4)
    assert answer["least_ridge"] == pytest.approx(min(heights), abs=1e-4)


@settings(max_examples=40)
@given(edge=EDGES)
def test_lines_on_face_and_edge_are_where_each_flat_leaves_the_square_corner(edge: dict[str, int]) -> None:
    """Each flat drawn on across the uncut corner meets its face and its edge at the lines told, at the angle told."""
    answer, spots = asked(edge), arrises(asked(edge))
    corner = box(-1e4, -1e4, edge["width"], edge["depth"])
    for row, (x, y), (u, v) in zip(answer["rows"], spots[:-1], spots[1:], strict=True):
        assert float(row["wide"]) == pytest.approx(math.dist((x, y), (u, v)))
        assert float(row["angle"]) == pytest.approx(math.degrees(math.atan2(y - v, u - x)), abs=1e-6)
        flat = LineString([(x - 50 * (u - x), y - 50 * (v - y)), (u + 50 * (u - x), v + 50 * (v - y))])
        cut = flat.intersection(corner.exterior)
        ends = sorted((edge["width"] - one.x, edge["depth"] - one.y) for one in cut.geoms)
        assert ends[0] == pytest.approx((0, float(row["on_edge"])), abs=1e-6)
        assert ends[-1] == pytest.approx((float(row["on_face"]), 0), abs=1e-6)


def test_a_flat_meets_the_ellipse_once_in_exact_symbols() -> None:
    """One flat on a rounding 2 by 1: put into the ellipse's equation it leaves a square, one point and no more."""
    x = sympy.symbols("x")
    answer = calc.answer("facets", width="2 in", depth="1 in", flats="1")
    face = 2 * (2 - sympy.sqrt(2))
    line = 1 - (x - (2 - face)) / 2
    assert sympy.simplify(sympy.discriminant((x / 2) ** 2 + line**2 - 1, x)) == 0
    assert float(answer["face_line"]) / 25.4 == pytest.approx(float(face), rel=1e-14)
    assert float(answer["chamfer_face"]) == pytest.approx(float(answer["face_line"]))


@given(radius=st.integers(5, 200), flats=st.integers(1, 12))
def test_a_round_edge_has_all_its_ridges_alike(radius: int, flats: int) -> None:
    """As wide as deep, every ridge is the radius by one over the cosine of half a step, less one."""
    answer = asked({"width": radius, "depth": radius, "flats": flats})
    tall = radius * (1 / math.cos(math.radians(45 / (flats + 1))) - 1)
    assert answer["ridge"] == pytest.approx(tall, rel=1e-9)
    assert answer["least_ridge"] == pytest.approx(tall, rel=1e-9)


@given(edge=EDGES)
def test_the_fewest_flats_are_found(edge: dict[str, int]) -> None:
    """The ridge that so many flats leave, asked for, takes so many and no fewer."""
    ridge = asked(edge)["ridge"]
    sizes = {"width": f"{edge['width']} mm", "depth": f"{edge['depth']} mm"}
    assert calc.answer("facets", **sizes, allowed=f"{ridge + 1e-6:.9f} mm")["flats"] == edge["flats"]
    assert calc.answer("facets", **sizes, allowed=f"{ridge * 0.999:.9f} mm")["flats"] == edge["flats"] + 1


@given(turn=st.floats(0, math.pi / 2), a=st.integers(1, 200), b=st.integers(1, 200), out=st.floats(1e-6, 50))
def test_the_distance_off_an_ellipse_is_what_was_gone_square_to_it(turn: float, a: int, b: int, out: float) -> None:
    """From a point of the curve, so far out along its normal: the way back is as long."""
    normal = np.array([math.sin(turn) / a, math.cos(turn) / b])
    spot = np.array([a * math.sin(turn), b * math.cos(turn)]) + out * normal / np.linalg.norm(normal)
    assert off(a, b, *spot.tolist()) == pytest.approx(out, rel=1e-6, abs=1e-9)


@pytest.mark.parametrize(
    ("sizes", "field"),
    [
        ({"width": "210 mm", "depth": "10 mm", "flats": "3"}, "depth"),
        ({"width": "100 mm", "depth": "100 mm", "allowed": "0.001 mm"}, "allowed"),
        ({"width": "10 mm", "depth": "10 mm"}, "flats"),
        ({"width": "10 mm", "depth": "10 mm", "flats": "3", "allowed": "1 mm"}, "allowed"),
        ({"width": "10 mm", "depth": "10 mm", "flats": "0"}, "flats"),
    ],
)
def test_what_is_no_rounding_is_refused_by_name(sizes: dict[str, str], field: str) -> None:
    """A bevel, too many flats, neither number nor ridge, both, none."""
    with pytest.raises(Refused) as refused:
        calc.answer("facets", **sizes)
    assert refused.value.refusals[0].field == field


def test_an_even_number_of_flats_has_no_middle_one() -> None:
    """Nothing is told of a flat that is not there."""
    assert asked({"width": 20, "depth": 20, "flats": 2})["chamfer"] is None
    assert asked({"width": 20, "depth": 20, "flats": 3})["chamfer"] == 45
