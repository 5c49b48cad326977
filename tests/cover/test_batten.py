"""Batten: swung past the front by a geometry library; the lid's movement laid out by coordinates."""

from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import Point, affinity, box

import calc
from calc import Refused
from calc.discover import find
from calc.errors import Refusal

EXAMPLE = find("batten").example.givens
PIN = Point(0, 0)


@given(front=st.integers(60, 400), lid=st.integers(5, 30), batten=st.integers(5, 30), clearance=st.integers(1, 6))
def test_it_swings_past_the_front(front: int, lid: int, batten: int, clearance: int) -> None:
    """The batten turned about the pin in small steps keeps its clearance from the front's inner arris, and uses it."""
    try:
        v = find("batten").of(
            width=Fraction(front + 40), thickness=Fraction(lid), near=Fraction(3), front=Fraction(front),
            batten_thickness=Fraction(batten), batten_width=Fraction(8), clearance=Fraction(clearance), end=Fraction(4),
        )  # fmt: skip
    except Refusal:
        assume(False)
    pin = float(v["kerf"]) / 2
    shut = box(pin + 3, -lid - batten, pin + 3 + float(v["long"]), -lid)
    arris = Point(pin + front, -lid)
    near = min(affinity.rotate(shut, step / 10, origin=PIN).distance(arris) for step in range(0, 900))
    assert near >= clearance - 1e-6
    assert near <= clearance + 0.05


@given(width=st.integers(100, 900), moves=st.integers(0, 12), count=st.integers(2, 9), way=st.sampled_from([1, 2]))
def test_oval_holes_are_long_enough_and_no_longer(width: int, moves: int, count: int, way: int) -> None:
    """The lid stretched about its fast nail by a library: each nail slides to the end of its hole and not beyond."""
    v = find("batten").of(
        width=Fraction(width), thickness=Fraction(12), movement=Fraction(moves), count=count, end=Fraction(10),
        way="either" if way == 2 else "swells", own_shank=Fraction(2), batten_width=Fraction(20),
        fast="middle" if count % 2 else "near",
    )  # fmt: skip
    marks = [float(row["mark"]) for row in v["holes"]]
    fast = next(row for row in v["holes"] if row["grows"] == "round, fast")
    line = affinity.scale(
        box(marks[0], 0, marks[-1], 1), xfact=1 + moves / width, origin=(float(fast["mark"]), 0)
    ).bounds
    for row, there in ((v["holes"][0], line[0]), (v["holes"][-1], line[2])):
        slid = abs(there - float(row["mark"]))
        assert float(row["oval"]) == pytest.approx(2 + way * slid, abs=1e-9)
    assert fast["oval"] == 2


@given(lid=st.integers(5, 40), batten=st.integers(5, 40), kind=st.sampled_from(["common", "brad", "finish"]))
def test_no_nail_comes_through(lid: int, batten: int, kind: str) -> None:
    """Lid and batten together are longer than the nail, by the margin; or it says that none stays inside."""
    more = {"thickness": f"{lid} mm", "batten_thickness": f"{batten} mm", "kind": kind, "front": ""}
    found = calc.answer("batten", **{**EXAMPLE, **more})
    if found["nail_length"] is None:
        assert "stays inside" in found.text
    else:
        assert found["nail_length"] + 2 <= lid + batten


def test_the_sloping_lid_box_says_the_same() -> None:
    """The box reckons its battens from its own sizes; asked for the same lid this sum gives the same length."""
    box_ = find("sloping-lid-box")
    v = calc.answer("sloping-lid-box", **box_.example.givens).values
    along = (
        float(v["depth"] - v["rabbet"]) ** 2
        * (1 + ((float(v["back_height"] - v["front_height"])) / float(v["depth"])) ** 2)
    ) ** 0.5
    front = along - float(v["strip_under"]) - float(v["kerf"])
    found = find("batten").of(
        width=v["moving"], thickness=v["lid_thickness"], near=v["clearance"], front=front, kerf=v["kerf"],
        batten_thickness=v["batten_thickness"], batten_width=v["batten_width"], clearance=v["clearance"],
        end=Fraction(10),
    )  # fmt: skip
    assert float(found["long"]) == pytest.approx(float(v["batten_long"]), rel=1e-12)


def test_without_a_front_it_is_as_far_from_either_end() -> None:
    """Fifteen millimetres at both ends, unless the far end is given."""
    plain = {name: text for name, text in EXAMPLE.items() if name not in ("front", "near")}
    assert calc.answer("batten", **plain)["long"] == 137
    assert calc.answer("batten", **plain, far="20 mm")["long"] == 132


def test_section_is_the_lids_thickness_and_twice_that() -> None:
    """Unless the maker has other stock."""
    plain = {name: text for name, text in EXAMPLE.items() if name != "batten_width"}
    found = calc.answer("batten", **plain)
    assert (found["batten_thickness"], found["batten_width"]) == (16, 32)


@given(count=st.integers(2, 30))
def test_the_fast_nail_in_the_middle_is_in_the_middle(count: int) -> None:
    """As far from either end of the batten; an even number has none there, and is told which numbers have."""
    long = {**EXAMPLE, "width": "900 mm", "front": "", "count": str(count)}
    if count % 2:
        found = calc.answer("batten", **long)
        (fast,) = (row["mark"] for row in found["holes"] if row["grows"] == "round, fast")
        assert 2 * fast == found["long"]
        return
    with pytest.raises(Refused, match="none is in the middle") as refused:
        calc.answer("batten", **long)
    assert refused.value.refusals[0].field == "count"
    assert calc.answer("batten", **long, fast="near")["holes"][0]["grows"] == "round, fast"


def test_a_nail_that_is_not_two_thirds_in_the_lid_is_warned_of() -> None:
    """At least two thirds in the second piece (NAVEDTRA 14119, chapter 3): 6 mm of batten under a lid of 30 mm has."""
    thin = {**EXAMPLE, "thickness": "30 mm", "batten_thickness": "6 mm"}
    assert "two thirds" in calc.answer("batten", **EXAMPLE).text
    assert "two thirds" not in calc.answer("batten", **thin).text


def test_without_movement_there_are_no_oval_holes() -> None:
    """Nothing is made up; it says where to ask."""
    found = calc.answer("batten", **{**EXAMPLE, "movement": ""})
    assert found["oval"] is found["moves"] is None
    assert "sum called movement" in found.text


@pytest.mark.parametrize(
    ("more", "field", "say"),
    [
        ({"front": "170 mm"}, "front", "beyond the end of the lid"),
        ({"front": "60 mm"}, "front", "leaves a batten"),
        ({"front": "", "near": "80 mm"}, "width", "leaves a batten"),
    ],
)
def test_what_cannot_be_is_refused_by_name(more: dict[str, str], field: str, say: str) -> None:
    """Each refusal names the entry to change."""
    with pytest.raises(Refused, match=say) as refused:
        calc.answer("batten", **{**EXAMPLE, **more})
    assert refused.value.refusals[0].field == field
