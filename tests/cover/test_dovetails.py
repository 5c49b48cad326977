"""Dovetails laid out on both boards: the shapes fill each other, the last mark is the board's edge."""

import math
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import Polygon, box, unary_union

import calc
from calc import Bench, Refused
from calc.show import marks

BOARDS: dict[str, Any] = {
    "width": st.integers(40, 600).map(lambda mm: f"{mm} mm"),
    "tails": st.integers(1, 20).map(str),
    "thickness": st.integers(6, 30).map(lambda mm: f"{mm} mm"),
    "wood": st.sampled_from(["soft", "hard"]),
    "pin": st.integers(4, 40).map(lambda quarters: f"{quarters / 4} mm"),
}
OPTIONAL = {
    "half": st.integers(4, 60).map(lambda quarters: f"{quarters / 4} mm"),
    "slope": st.integers(4, 14).map(str),
    "lap": st.integers(0, 5).map(lambda mm: f"{mm} mm"),
    "other": st.integers(6, 30).map(lambda mm: f"{mm} mm"),
}
JOINTS = st.fixed_dictionaries(BOARDS, optional=OPTIONAL)


def laid(joint: dict[str, str]) -> calc.Result:
    """The joint laid out; boards with no room for it are drawn again."""
    try:
        return calc.answer("dovetails", **joint)
    except Refused:
        assume(False)
        raise


def shapes(answer: calc.Result, rows: str, near: str, far: str) -> list[Polygon]:
    """Tails or pins as flat shapes, `near` the base line of the tail board, which is the pins' inner face."""
    deep = float(answer["tail_line"])
    return [
        Polygon(
            [(float(row[f"{side}_{end}"]), y) for side, end, y in ((near, "from", 0), (far, "from", deep))]
            + [(float(row[f"{side}_{end}"]), y) for side, end, y in ((far, "to", deep), (near, "to", 0))]
        )
        for row in answer[rows]
    ]


@given(joint=JOINTS)
def test_tails_and_pins_fill_the_joint_without_a_gap(joint: dict[str, str]) -> None:
    """Drawn from the marks of their own boards, together they are the whole rectangle, and none covers another."""
    answer = laid(joint)
    tails = shapes(answer, "tail_marks", "base", "end")
    pins = shapes(answer, "pin_marks", "in", "out")
    whole = box(0, 0, float(answer["width"]), float(answer["tail_line"]))
    assert unary_union(tails + pins).buffer(1e-9).covers(whole)
    assert sum(one.area for one in tails + pins) == pytest.approx(whole.area)
    assert all(one.is_valid for one in tails + pins)


@given(joint=JOINTS)
def test_every_side_has_the_slope(joint: dict[str, str]) -> None:
    """The sides of each tail lean by the angle whose tangent is one in the slope."""
    answer = laid(joint)
    for row in answer["tail_marks"]:
        lean = math.atan2(float(row["base_from"] - row["end_from"]), float(answer["tail_line"]))
        assert math.degrees(lean) == pytest.approx(float(answer["angle"]))
        assert 1 / math.tan(lean) == pytest.approx(float(answer["slope"]))


@given(joint=JOINTS)
def test_running_marks_end_at_the_edge_of_the_board(joint: dict[str, str]) -> None:
    """The last mark is the board's width, exactly; no rounding gathers on the way, on any rule."""
    answer = laid(joint)
    half = answer["half"]
    assert answer["pin_marks"][-1]["out_to"] == answer["width"]
    assert answer["tail_marks"][-1]["end_to"] + half == answer["width"]
    for step in (Fraction(1), Bench(mark="1/16").step * Fraction("25.4")):
        for row in answer["tail_marks"]:
            assert abs(marks(row["end_to"], step) - row["end_to"]) <= step / 2


@given(joint=JOINTS)
def test_marks_are_exact_and_alike(joint: dict[str, str]) -> None:
    """Every mark is a Fraction; all tails are alike, all whole pins too, and none is under what is asked."""
    answer = laid(joint)
    cells = [value for row in answer["tail_marks"] for name, value in row.items() if name != "tail"]
    assert all(isinstance(value, Fraction | int) for value in cells)
    assert {row["end_to"] - row["end_from"] for row in answer["tail_marks"]} == {answer["tail"]}
    assert {row["out_to"] - row["out_from"] for row in answer["pin_marks"][1:-1]} <= {answer["pin"]}
    assert min(row["base_to"] - row["base_from"] for row in answer["tail_marks"]) == answer["tail_narrow"] > 0


@pytest.mark.parametrize(("wood", "slope"), [("soft", 6), ("hard", 8)])
def test_the_wood_chooses_the_slope_unless_one_is_given(wood: str, slope: int) -> None:
    """1 in 6 in soft wood, 1 in 8 in hard; a slope of one's own wins."""
    boards = {"width": "6 in", "tails": "4", "thickness": "5/8 in", "wood": wood}
    assert calc.answer("dovetails", **boards)["slope"] == slope
    assert calc.answer("dovetails", **boards, slope="7")["slope"] == 7


def test_a_lap_makes_the_tails_shorter_and_the_gauges_follow() -> None:
    """A quarter of an inch left in front of three quarters: tails half an inch long, pins by the other board."""
    answer = calc.answer("dovetails", width="4 in", tails="3", thickness="3/4 in", lap="1/4 in", other="1/2 in")
    assert (answer["tail_line"], answer["pin_line"]) == (Fraction("12.7"), Fraction("12.7"))


@pytest.mark.parametrize(
    ("change", "count"),
    [
        ({}, 1),
        ({"slope": "5"}, 2),
        ({"slope": "9"}, 2),
        ({"tails": "2"}, 3),
        ({"pin": "1/8 in", "tails": "5"}, 2),
        ({"pin": "1 mm", "tails": "8"}, 3),
        ({"half": "1/8 in"}, 2),
    ],
)
def test_what_the_books_advise_against_is_warned_of(change: dict[str, str], count: int) -> None:
    """Too steep, too flat, tails too wide, pins too fine, half pins too thin: the numbers, and a caution for each."""
    joint = {"width": "4 1/2 in", "tails": "4", "thickness": "5/8 in"} | change
    assert len(calc.answer("dovetails", **joint).cautions) == count


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"lap": "5/8 in"}, "lap"),
        ({"tails": "20"}, "tails"),
        ({"tails": "13", "pin": "5 mm", "slope": "3"}, "tails"),
        ({"slope": "2"}, "slope"),
        ({"tails": "0"}, "tails"),
    ],
)
def test_what_is_no_joint_is_refused_by_name(change: dict[str, str], field: str) -> None:
    """A lap through the board, no room for tails, tails that come to a point, a slope like a saw tooth, no tails."""
    joint = {"width": "4 1/2 in", "tails": "4", "thickness": "5/8 in"} | change
    with pytest.raises(Refused) as refused:
        calc.answer("dovetails", **joint)
    assert refused.value.refusals[0].field == field


def test_one_tail_has_no_whole_pin_to_tell_of() -> None:
    """Between two half pins there is none: one row each for the halves, and no width."""
    one, two = (calc.answer("dovetails", width="2 in", tails=tails, thickness="5/8 in") for tails in ("1", "2"))
    assert (one["pin_wide"], [row["pin"] for row in one["pin_marks"]]) == (None, ["half", "half"])
    assert two["pin_wide"] == two["pin"] + 2 * two["flare"]


def test_pins_are_marked_at_the_lap_where_there_is_one() -> None:
    """A lapped pin is narrowest inside its lap, not on the outer face, where none of it is seen (geometry)."""
    text = calc.answer("dovetails", width="4 in", tails="3", thickness="3/4 in", lap="1/4 in").text
    assert "Outer face or lap, from" in text
    assert "Outer face, from" not in text


def test_tails_past_four_pins_are_wider_than_looks_allow() -> None:
    """W. Noyes (1910): up to four times as wide as the pins for looks. By hand: 3 1/4 in between, over three tails."""
    joint = {"width": "4 1/4 in", "tails": "3", "thickness": "5/8 in", "pin": "1/4 in"}
    assert "wider than even looks allow" in calc.answer("dovetails", **joint).text
    assert "looks" not in calc.answer("dovetails", **{**joint, "width": "4 in"}).text
