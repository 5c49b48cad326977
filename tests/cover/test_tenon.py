"""Tenons by thirds, by chisel, at a corner and along a stile: the joint put together piece by piece."""

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import box

import calc
from calc import Refused

RAIL: dict[str, Any] = {"thickness": "18 mm", "width": "60 mm", "into": "60 mm"}
JOINTS = st.fixed_dictionaries(
    {
        "thickness": st.integers(9, 60).map(lambda mm: f"{mm} mm"),
        "width": st.integers(25, 200).map(lambda mm: f"{mm} mm"),
        "into": st.integers(25, 120).map(lambda mm: f"{mm} mm"),
        "place": st.sampled_from(["corner", "middle"]),
        "kind": st.sampled_from(["blind", "through"]),
        "between": st.integers(50, 900).map(lambda mm: f"{mm} mm"),
    },
    optional={
        "chisel": st.integers(3, 12).map(lambda mm: f"{mm} mm"),
        "groove": st.integers(3, 12).map(lambda mm: f"{mm} mm"),
        "edge": st.integers(0, 8).map(lambda mm: f"{mm} mm"),
        "share": st.sampled_from(["1/2", "2/3", "0.75"]),
        "extra": st.integers(0, 4).map(lambda mm: f"{mm} mm"),
    },
)


def joint(texts: dict[str, str]) -> calc.Result:
    """The joint's sizes; stock with no room for one is drawn again."""
    try:
        return calc.answer("tenon", **texts)
    except Refused:
        assume(False)
        raise


@given(texts=JOINTS)
def test_the_tenon_lies_in_its_mortise_and_the_shoulders_close(texts: dict[str, str]) -> None:
    """From the face: the tenon inside the rail's width and its mortise's depth, the haunch beside it, no overlap."""
    answer = joint(texts)
    width, long = float(answer["width"]), float(answer["length"])
    mortise = box(-float(answer["mortise"]), float(answer["mortise_from"]), 0, float(answer["mortise_to"]))
    tenon = box(-long, float(answer["mortise_from"]), 0, float(answer["mortise_from"] + answer["tenon_width"]))
    if answer["kind"] == "blind":
        assert mortise.buffer(1e-9).covers(tenon)
        assert float(answer["mortise"]) - long == pytest.approx(float(answer["extra"]))
    else:
        assert tenon.buffer(1e-9).covers(mortise)
        assert long - float(answer["into"]) == pytest.approx(float(answer["extra"]))
    assert box(-long, 0, 0, width).covers(tenon)
    if answer["haunch_width"] is not None:
        haunch = box(-float(answer["haunch_long"]), 0, 0, float(answer["haunch_width"]))
        assert haunch.intersection(tenon).area == pytest.approx(0)
        assert float(answer["haunch_long"]) < long


@given(texts=JOINTS)
def test_end_on_the_tenon_stands_in_the_middle_of_the_rail(texts: dict[str, str]) -> None:
    """Both shoulders alike, the gauge's pins on the tenon's cheeks, the glued cheeks counted twice."""
    answer = joint(texts)
    end = box(0, 0, float(answer["thickness"]), float(answer["width"]))
    near, far = float(answer["shoulder"]), float(answer["gauge_far"])
    tenon = box(near, float(answer["mortise_from"]), far, float(answer["mortise_to"]))
    assert tenon.centroid.x == pytest.approx(end.centroid.x)
    assert far - near == pytest.approx(float(answer["tenon"]))
    in_wood = min(answer["length"], answer["mortise"])
    assert float(answer["area"]) == pytest.approx(2 * tenon.area / (far - near) * float(in_wood))


@given(texts=JOINTS)
def test_the_rail_reaches_from_tenon_to_tenon(texts: dict[str, str]) -> None:
    """Its whole length, less both tenons, is the frame's inside; all of it exact."""
    answer = joint(texts)
    assert answer["rail"] - 2 * answer["length"] == answer["between"]
    assert all(isinstance(answer[name], int | Fraction) for name in ("tenon", "length", "rail", "tenon_width"))


def test_a_third_of_the_stock_is_the_rule_and_a_chisel_breaks_it() -> None:
    """18 mm gives 6 mm; with an 8 mm chisel it is 8 mm, and the shoulders follow."""
    thirds, own = calc.answer("tenon", **RAIL), calc.answer("tenon", **RAIL, chisel="8 mm")
    assert (thirds["tenon"], thirds["shoulder"], thirds["gauge_far"]) == (6, 6, 12)
    assert (own["tenon"], own["shoulder"], own["third"]) == (8, 5, None)


@pytest.mark.parametrize(
    ("thickness", "names"),
    [("18 mm", ["1/4 in", "6 mm"]), ("3/4 in", ["1/4 in", "6 mm"]), ("16 mm", ["3/16 in", "5 mm"])],
)
def test_the_chisels_nearest_a_third_are_named(thickness: str, names: list[str]) -> None:
    """One of each kind that is sold."""
    answer = calc.answer("tenon", **RAIL | {"thickness": thickness})
    assert [row["chisel"] for row in answer["chisels"]] == names
    assert all(25 <= row["part"] <= 40 for row in answer["chisels"])


def test_a_groove_sets_the_inner_shoulder_and_the_haunch() -> None:
    """The tenon loses what is ploughed away, and the haunch fills the groove's end."""
    plain, ploughed = calc.answer("tenon", **RAIL, edge="3 mm"), calc.answer("tenon", **RAIL, groove="9 mm")
    assert (plain["inner"], plain["haunch_long"], plain["tenon_width"]) == (3, 6, 37)
    assert (ploughed["inner"], ploughed["haunch_long"], ploughed["tenon_width"]) == (9, 9, 31)


def test_along_the_stile_there_are_two_shoulders_and_no_haunch() -> None:
    """60 mm with 3 mm at each edge is 54 mm of tenon."""
    answer = calc.answer("tenon", **RAIL, place="middle", edge="3 mm")
    assert (answer["tenon_width"], answer["mortise_from"], answer["mortise_to"]) == (54, 3, 57)
    assert answer["haunch_width"] is answer["haunch_long"] is None


@pytest.mark.parametrize(
    ("change", "count"),
    [
        ({"place": "middle"}, 1),
        ({}, 2),
        ({"chisel": "10 mm"}, 3),
        ({"chisel": "4 mm", "width": "30 mm"}, 3),
        ({"place": "middle", "width": "100 mm"}, 2),
        ({"place": "middle", "width": "10 mm", "edge": "4.6 mm"}, 2),
    ],
)
def test_weak_joints_are_warned_of(change: dict[str, str], count: int) -> None:
    """A horn wanted at a corner; thin cheeks, a thin tenon, one too wide, one too narrow."""
    assert len(calc.answer("tenon", **RAIL | {"width": "40 mm"} | change).cautions) == count


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"chisel": "18 mm"}, "chisel"),
        ({"groove": "45 mm"}, "width"),
        ({"place": "middle", "edge": "30 mm"}, "width"),
        ({"into": "12 mm", "groove": "10 mm"}, "into"),
        ({"into": "20 mm", "groove": "12 mm", "place": "middle"}, "into"),
        ({"into": "10 mm", "extra": "8 mm"}, "extra"),
        ({"share": "1"}, "share"),
    ],
)
def test_what_leaves_no_tenon_is_refused_by_name(change: dict[str, str], field: str) -> None:
    """Too wide a chisel, no width or length left, a haunch as long as the tenon, a tenon in its groove, too far in."""
    with pytest.raises(Refused) as refused:
        calc.answer("tenon", **RAIL | change)
    assert refused.value.refusals[0].field == field
