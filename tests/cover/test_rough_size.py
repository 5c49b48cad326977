"""Rough size: the finished part lies inside the rough one, and the parts inside the board, as shapely has it."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import box

import calc

PART = {"length": "260 mm", "width": "180 mm", "thickness": "16 mm", "count": "3"}


def roughed(**entries: str) -> calc.Result:
    """The part answered."""
    return calc.answer("rough-size", **{**PART, **entries})


@given(long=st.integers(10, 2000), wide=st.integers(5, 400), end=st.integers(0, 50), edge=st.integers(0, 20))
def test_what_is_left_all_round_is_the_allowance(long: int, wide: int, end: int, edge: int) -> None:
    """The finished face, laid in from a corner of the rough one, stands off every side by what was asked."""
    found = roughed(length=f"{long} mm", width=f"{wide} mm", end=f"{end} mm", edge=f"{edge} mm")
    rough, part = box(0, 0, float(found["rough_length"]), float(found["rough_width"])), box(0, 0, long, wide)
    left, low, right, top = rough.bounds
    laid = box(end, edge, end + part.bounds[2], edge + part.bounds[3])
    assert rough.covers(laid)
    assert (right - laid.bounds[2], top - laid.bounds[3], laid.bounds[0] - left, laid.bounds[1] - low) == (
        end,
        edge,
        end,
        edge,
    )


@given(count=st.integers(1, 40), kerf=st.integers(0, 12))
def test_parts_are_sawn_one_by_one_from_a_board_that_just_reaches(count: int, kerf: int) -> None:
    """Each cut takes a kerf; the last part comes off the saw with nothing left."""
    found = roughed(count=str(count), kerf=f"{kerf} mm")
    board = found["end_to_end"]
    for cut in range(count):
        board -= found["rough_length"] + (kerf if cut < count - 1 else 0)
    assert board == 0


def test_stock_that_is_planed_already_loses_nothing_in_thickness() -> None:
    """With nothing to plane off a face the thickness is the finished one."""
    found = roughed(face="0 in", edge="0 in", end="0 in")
    assert (found["rough_thickness"], found["kept"]) == (16, 100)


def test_it_hands_its_list_on_to_board_measure_exactly() -> None:
    """Two parts of 16 mm with its sixteenths, read back by the next sum to the last fraction."""
    found = roughed()
    rows = calc.answer("board-measure", boards=found["boards"])["boards"]
    assert [rows[0][name] for name in ("count", "thickness", "width", "length")] == [
        3,
        found["rough_thickness"],
        found["rough_width"],
        found["rough_length"],
    ]
    assert found["rough_thickness"] == 16 + Fraction(127, 40)


@pytest.mark.parametrize(("thickness", "board"), [("16 mm", "4/4"), ("7/8 in", "4/4"), ("15/16 in", "5/4")])
def test_the_thinnest_quarter_that_is_thick_enough(thickness: str, board: str) -> None:
    """With a sixteenth off each face, 7/8 in just comes out of an inch."""
    assert roughed(thickness=thickness)["quarters"].startswith(board)


def test_too_thick_for_the_list_says_so() -> None:
    """Nothing is sold that thick, so nothing is named."""
    found = roughed(thickness="4 in")
    assert found["quarters"] is None
    assert "glue it up" in found.text
    assert "glue it up" not in roughed().text


@pytest.mark.parametrize(
    ("thickness", "face", "layers"),
    [("4 in", "1/16 in", 2), ("8 in", "1/16 in", 3), ("12 in", "0", 3), ("12 in", "1 in", 6)],
)
def test_too_thick_for_the_list_says_of_how_many_it_is_glued(thickness: str, face: str, layers: int) -> None:
    """By hand: a layer is 4 in less a planing on each face, 3 7/8 in of the first: two are under 8 in, three over."""
    assert roughed(thickness=thickness, face=face)["layers"] == layers


def test_short_parts_bring_their_caution() -> None:
    """Under a foot, 304.8 mm: common practice."""
    assert "planing machine" in roughed().text
    assert "planing machine" in roughed(length="304 mm", end="0").text
    assert "planing machine" not in roughed(length="12 in", end="0").text
    assert "planing machine" not in roughed(length="600 mm").text


@given(long=st.integers(10, 2000), wide=st.integers(5, 400), thick=st.integers(1, 100))
def test_the_volumes_in_a_line_of_working_come_to_its_answer(long: int, wide: int, thick: int) -> None:
    """The line read back and worked out, as a reader with a calculator would: the percent that is printed, by hand."""
    found = roughed(length=f"{long} mm", width=f"{wide} mm", thickness=f"{thick} mm")
    numbers, result = next((line.numbers, line.result) for line in found.working if "100 ×" in line.numbers)
    kept, whole = (float(part.removesuffix(" m³")) for part in numbers.removeprefix("100 × ").split(" ÷ "))
    assert 100 * kept / whole == pytest.approx(float(result.removesuffix("%")), abs=0.0511)
