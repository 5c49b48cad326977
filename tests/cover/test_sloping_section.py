"""Sloping-lid box: the parts are laid together again by coordinates, and must meet without gap or overlap."""

import math
from itertools import combinations
from typing import Any

import pytest
from hypothesis import given
from shapely import affinity
from shapely.geometry import Point, Polygon
from shapely.ops import unary_union
from sloping import BOXES, Shapes, at_the_side, built, front, in_the_middle, lid, lids


@given(BOXES)
def test_no_part_runs_into_another(givens: dict[str, Any]) -> None:
    """In both sections no two parts share any wood."""
    m = built(givens)
    for shapes in (at_the_side(m), in_the_middle(m)):
        for (one, first), (other, second) in combinations(shapes.items(), 2):
            assert first.intersection(second).area < 1e-6, (one, other)


@given(BOXES)
def test_parts_meet_without_a_gap(givens: dict[str, Any]) -> None:
    """Through a side, the parts and the kerf are one piece without a hole; through the middle they close one inside."""
    m = built(givens)
    solid, ring = (closed(shapes) for shapes in (at_the_side(m), in_the_middle(m)))
    assert solid.geom_type == ring.geom_type == "Polygon"
    assert not solid.interiors
    (inside,) = ring.interiors
    assert Polygon(inside).area * m["inside_width"] == pytest.approx(m["volume"], rel=1e-6)


def closed(shapes: Shapes) -> Polygon:
    """The parts as one shape; seams thinner than a millionth of a millimetre are rounding."""
    return unary_union([shape.buffer(1e-7, join_style="mitre") for shape in shapes.values() if shape.area])


@given(BOXES)
def test_the_lid_is_as_long_as_its_corners_are_apart(givens: dict[str, Any]) -> None:
    """The faces of the lid, drawn from points of the slope, are as long as answered; so are those of strip and lid."""
    m = built(givens)
    under, toe, nose, crown, *_ = list(lid(m)[0].exterior.coords)
    assert math.dist(under, toe) == pytest.approx(m["lid_under"], rel=1e-9)
    assert math.dist(crown, nose) == pytest.approx(m["lid_long"], rel=1e-9)
    assert crown[1] + m["crest"] == pytest.approx(m["back_high"] - m["tail"], rel=1e-9)
    pieces = lids(m)
    assert pieces["strip"].area == pytest.approx((m["strip"] + m["strip_under"]) / 2 * m["lid_thickness"], rel=1e-7)
    assert pieces["moving"].area == pytest.approx(m["moving"] * m["lid_thickness"], rel=1e-7)


@given(BOXES)
def test_the_front_is_bevelled_to_the_slope(givens: dict[str, Any]) -> None:
    """From the two heights of the front and its thickness comes the angle of the lid; so it does from the sides."""
    m = built(givens)
    for fall, run in (
        (m["front_inner"] - m["front_outer"], m["front_thickness"]),
        (m["back_height"] - m["front_height"], m["depth"]),
        (m["lid_bevel"], m["lid_thickness"]),
    ):
        assert math.degrees(math.atan2(fall, run)) == pytest.approx(m["angle"], abs=1e-6)


@given(BOXES)
def test_battens_swing_clear_of_the_front(givens: dict[str, Any]) -> None:
    """Turned about the pin, step by step to upright, a batten keeps its clearance from the front and hits nothing."""
    m = built(givens)
    _, at = lid(m)
    begin, high, low = m["strip"] + m["kerf"] + m["clearance"], m["lid_thickness"], m["batten_thickness"]
    end, low = begin + m["batten_long"], high + low
    batten = Polygon([at(begin, high), at(end, high), at(end, low), at(begin, low)])
    pin, stays = at(m["strip"] + m["kerf"] / 2, 0), unary_union([front(m, 0), lids(m)["strip"]])
    for turn in range(0, 91, 3):
        turned = affinity.rotate(batten, turn, origin=Point(pin))
        assert turned.distance(stays) >= m["clearance"] - 1e-6, turn


@given(BOXES)
def test_widths_add_up_across_the_box(givens: dict[str, Any]) -> None:
    """Across the front: overhangs, sides, clearances, battens and the space between; the slot midway in it."""
    m = built(givens)
    inside = m["slot_room"] + 2 * (m["batten_width"] + m["clearance"])
    assert inside == pytest.approx(m["inside_width"])
    assert inside + 2 * (m["side_thickness"] + m["side_overhang"]) == pytest.approx(m["lid_wide"])
    beside = m["slot_begins"] - m["batten_in"] - m["batten_width"]
    assert beside >= -1e-9
    assert 2 * beside + m["slot_length"] == pytest.approx(m["slot_room"])


@given(BOXES)
def test_the_slot_opens_into_the_box(givens: dict[str, Any]) -> None:
    """Cut square through the lid, the slot comes out behind the front's inner face and clear of the hinge leaf."""
    m = built(givens)
    _, at = lid(m)
    middle = m["strip"] + m["kerf"] + m["slot_down"]
    low, high = (middle + way * m["slot_width"] / 2 for way in (1, -1))
    assert at(low, m["lid_thickness"])[0] < m["depth"] - m["rabbet"]
    assert high > m["strip"] + m["kerf"] / 2 + m["leaf"] - 1e-9
