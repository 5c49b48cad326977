"""Lid: laid on its box by a geometry library, cut plumb at the back, and measured."""

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, affinity, box

import calc
from calc import Refused
from calc.discover import find

EXAMPLE = find("lid").example.givens
LIDS = st.fixed_dictionaries(
    {
        "depth": st.integers(60, 600).map(Fraction),
        "width": st.integers(60, 600).map(Fraction),
        "thickness": st.integers(4, 40).map(Fraction),
        "angle": st.integers(0, 59).map(Fraction),
        "front": st.integers(0, 40).map(Fraction),
    }
)


@given(LIDS)
def test_a_slab_cut_plumb_measures_as_answered(lid: dict[str, Fraction]) -> None:
    """A long slab is turned to the slope by the library and cut off at the back's face; its faces are measured."""
    v = find("lid").of(**lid)
    thick, turn = float(lid["thickness"]), math.radians(float(lid["angle"]))
    ends = float(lid["depth"] + lid["front"]) / math.cos(turn)
    slab = affinity.rotate(box(-2000, 0, ends, thick), -float(lid["angle"]), origin=(0, 0))
    cut = slab.intersection(box(0, -5000, 5000, 5000))
    down = (math.cos(turn), -math.sin(turn))
    normal = (math.sin(turn), math.cos(turn))
    for name, high in (("under", 0.001), ("upper", thick - 0.001)):
        start = (normal[0] * high - down[0] * 3000, normal[1] * high - down[1] * 3000)
        face = LineString([start, (start[0] + down[0] * 9000, start[1] + down[1] * 9000)])
        assert cut.intersection(face).length == pytest.approx(float(v[name]), abs=0.002 * math.tan(turn) + 1e-6)


@given(LIDS, st.integers(40, 300), st.integers(0, 6))
def test_strips_are_added_until_the_lid_is_made(lid: dict[str, Fraction], stock: int, joint: int) -> None:
    """One board more at a time, each joint costing its loss."""
    v = find("lid").of(**lid | {"stock": Fraction(stock), "joint": Fraction(joint)})
    made, count = stock, 1
    while made < v["upper"]:
        made, count = made + stock - joint, count + 1
    assert v["strips"] == count


def test_the_bevel_takes_thickness_times_tangent() -> None:
    """1 in 3 on 16 mm takes 5 1/3 mm; at 45 degrees as much as it is thick, exactly."""
    assert float(calc.answer("lid", **EXAMPLE)["bevel"]) == pytest.approx(16 / 3, rel=1e-12)
    assert calc.answer("lid", **{**EXAMPLE, "angle": "45"})["bevel"] == 16


def test_the_sloping_lid_box_says_the_same() -> None:
    """The box's own lid, from the same depth, overhangs and slope."""
    v = calc.answer("sloping-lid-box", **find("sloping-lid-box").example.givens).values
    found = find("lid").of(
        depth=v["depth"] + v["proud"], width=v["outside"], thickness=v["lid_thickness"], angle=v["angle"],
        front=v["front_overhang"], side=v["side_overhang"], stock=v["stock_width"], joint=v["joint"],
    )  # fmt: skip
    for ours, theirs in {"upper": "lid_long", "under": "lid_under", "wide": "lid_wide", "strips": "lid_strips"}.items():
        assert float(found[ours]) == pytest.approx(float(v[theirs]), rel=1e-12), ours


def test_a_level_lid_has_no_bevel_and_is_exact() -> None:
    """Depth and overhang added up, both faces alike."""
    found = calc.answer("lid", **{**EXAMPLE, "angle": "0"})
    assert found["upper"] == found["under"] == 184
    assert found["bevel_angle"] is found["nose"] is found["gap"] is None
    assert isinstance(found["upper"], Fraction)


def test_left_square_it_stands_off_the_back() -> None:
    """Both faces alike, and a gap above that is told of."""
    found = calc.answer("lid", **EXAMPLE, back="square")
    assert found["upper"] == found["under"]
    assert "stands off" in found.text
    assert float(found["gap"]) == pytest.approx(16 / math.sqrt(10), rel=1e-12)


def test_stock_no_wider_than_a_joints_loss_is_refused() -> None:
    """Nothing would be left of a strip."""
    with pytest.raises(Refused, match="nothing is left") as refused:
        calc.answer("lid", **{**EXAMPLE, "stock": "15 mm", "joint": "15 mm"})
    assert refused.value.refusals[0].field == "stock"
