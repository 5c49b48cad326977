"""Equal spaces laid out as shapes, against numpy's even spacing, and to the last mark on every rule."""

from fractions import Fraction

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import box
from shapely.ops import unary_union

import calc
from calc import Bench, Refused, show
from calc.bench import MARKS

OPENINGS = st.integers(200 * 64, 4000 * 64).map(lambda n: Fraction(n, 64))
ENDS = st.sampled_from(["full", "half", "none"])
SHARE = {"full": 1.0, "half": 0.5, "none": 0.0}


def spaced(opening: Fraction, **more: object) -> calc.Result:
    """An opening in millimetres, with other entries as texts."""
    return calc.answer("spacing", opening=f"{float(opening):.6f} mm", **more)


@given(opening=OPENINGS, count=st.integers(2, 60), ends=ENDS)
def test_centres_agree_with_numpy(opening: Fraction, count: int, ends: str) -> None:
    """Points without width are numpy's linspace between the first and the last, however the ends are left."""
    answer = spaced(opening, count=count, ends=ends)
    gap = float(opening) / (count - 1 + 2 * SHARE[ends])
    even = np.linspace(SHARE[ends] * gap, float(opening) - SHARE[ends] * gap, count)
    assert [float(row["centre"]) for row in answer["marks"]][:-1] == pytest.approx(list(even))


@given(opening=OPENINGS, count=st.integers(2, 30), width=st.integers(1, 60), ends=ENDS)
def test_items_laid_out_leave_equal_gaps(opening: Fraction, count: int, width: int, ends: str) -> None:
    """Drawn as boxes on their marks the items never overlap; what they leave of the opening are gaps all alike."""
    assume(count * width < opening - 1)
    answer = spaced(opening, count=count, width=f"{width} mm", ends=ends)
    items = [box(float(row["near"]), 0, float(row["far"]), 1) for row in answer["marks"][:-1]]
    left = box(0, 0, float(opening), 1).difference(unary_union(items))
    gaps = sorted((piece.bounds[0], piece.area) for piece in getattr(left, "geoms", [left]) if piece.area > 1e-6)
    inner = gaps if ends == "none" else gaps[1:-1]
    assert [area for _, area in inner] == pytest.approx([float(answer["gap"])] * (count - 1))
    if ends != "none":
        assert [gaps[0][1], gaps[-1][1]] == pytest.approx([SHARE[ends] * float(answer["gap"])] * 2)


@given(opening=OPENINGS, count=st.integers(2, 200), ends=ENDS, start=st.integers(0, 50), width=st.integers(0, 1))
def test_the_last_mark_equals_the_opening(opening: Fraction, count: int, ends: str, start: int, width: int) -> None:
    """Exactly, in any number and however the ends are left: nothing has gathered on the way."""
    answer = spaced(opening, count=count, ends=ends, start=f"{start} mm", width=f"{width} mm")
    last = answer["marks"][-1]["far" if width else "centre"]
    assert last == answer["start"] + answer["opening"]
    assert isinstance(last, Fraction)


@given(opening=OPENINGS, count=st.integers(2, 60), mark=st.sampled_from(sorted(MARKS)))
def test_each_mark_is_rounded_by_itself(opening: Fraction, count: int, mark: str) -> None:
    """On every rule each printed mark is within half a mark of its exact place; stepping a rounded gap is not."""
    bench = Bench(mark=mark)
    unit = Fraction("25.4") if bench.system == "in" else Fraction(1)
    answer = calc.answer("spacing", bench, opening=f"{float(opening):.6f} mm", count=count)
    for at, row in enumerate(answer["marks"], 1):
        printed = show.marks(row["centre"] / unit, bench.step) * unit
        exact = answer["opening"] * at / (count + 1)
        assert abs(printed - exact) <= bench.step * unit / 2, at


@given(opening=OPENINGS, gap=st.integers(20, 400), width=st.integers(0, 60), ends=ENDS)
def test_no_other_number_comes_nearer_to_the_gap(opening: Fraction, gap: int, width: int, ends: str) -> None:
    """Every number of items that fits is tried: none leaves a gap nearer to the one wanted."""
    share = SHARE[ends]
    most = int(float(opening) // width) if width else 200
    tried = {n: (float(opening) - n * width) / (n - 1 + 2 * share) for n in range(1, most + 1) if n - 1 + 2 * share > 0}
    assume(tried)
    try:
        answer = spaced(opening, near_gap=f"{gap} mm", width=f"{width} mm", ends=ends)
    except Refused:
        assert ends == "none"
        assert most < 2
        return
    assert abs(float(answer["gap"]) - gap) == pytest.approx(min(abs(one - gap) for one in tried.values()), abs=1e-6)


def test_one_more_and_one_fewer_are_told() -> None:
    """Seven slats of 1 in in 15 in leave 1 in; six leave 9/7 in, eight 7/9 in."""
    answer = calc.answer("spacing", opening="15 in", count="7", width="1 in")
    inch = Fraction("25.4")
    assert (answer["gap"], answer["gap_fewer"], answer["gap_more"]) == (inch, inch * 9 / 7, inch * 7 / 9)


def test_a_start_moves_every_mark_alike() -> None:
    """With the tape hooked over the end of the board the marks begin where the opening does."""
    here, there = (calc.answer("spacing", opening="12 in", count="3", start=start) for start in ("0 in", "2 in"))
    moved = {b["centre"] - a["centre"] for a, b in zip(here["marks"], there["marks"], strict=True)}
    assert moved == {Fraction("50.8")}


@pytest.mark.parametrize(
    ("given", "field"),
    [
        ({"opening": "10 in", "count": "6", "width": "2 in"}, "count"),
        ({"opening": "1 in", "near_gap": "1 in", "width": "2 in"}, "near_gap"),
        ({"opening": "10 in", "count": "1", "ends": "none"}, "ends"),
        ({"opening": "20 m", "near_gap": "1 mm"}, "near_gap"),
        ({"opening": "10 in"}, "count"),
        ({"opening": "10 in", "count": "3", "near_gap": "1 in"}, "near_gap"),
    ],
)
def test_what_does_not_fit_is_refused_by_name(given: dict[str, str], field: str) -> None:
    """Too many, too wide, one alone with no gap, hundreds of them, neither or both of number and gap."""
    with pytest.raises(Refused) as refused:
        calc.answer("spacing", **given)
    assert refused.value.refusals[0].field == field


def test_items_may_touch() -> None:
    """Five of 2 in fill 10 in and leave gaps of nothing, which is no error."""
    answer = calc.answer("spacing", opening="10 in", count="5", width="2 in")
    assert answer["gap"] == 0
    assert answer["gap_more"] is None


def test_a_gap_that_could_catch_a_head_is_warned_of() -> None:
    """Between 89 and 230 mm, where there are slats; not for the same gap between hooks."""
    slats, hooks = (calc.answer("spacing", opening="1 m", count="8", width=width) for width in ("20 mm", "0 mm"))
    assert len(slats.cautions) == 1
    assert not hooks.cautions


def test_the_gap_at_an_end_is_warned_of_as_well() -> None:
    """By hand: 36 in less three of 1 in are three gaps of 11 in, with 139.7 mm at each end."""
    ends = calc.answer("spacing", opening="36 in", count="3", width="1 in", ends="half")
    assert (ends["gap"], ends["end_gap"]) == (Fraction("279.4"), Fraction("139.7"))
    assert "child's head" in ends.text
    assert "child's head" not in calc.answer("spacing", opening="36 in", count="3", width="1 in", ends="none").text


@pytest.mark.parametrize(
    ("count", "width", "say"),
    [
        ("1", "37 in", "one item is 939.8 mm, 37 in, wide, which is more than the opening"),
        ("4", "10 in", "4 items are together 1016 mm, 40 in, wide, which is more than the opening"),
    ],
)
def test_what_is_too_wide_is_said_in_both_units(count: str, width: str, say: str) -> None:
    """One item is, several are; by hand, 25.4 mm to the inch."""
    with pytest.raises(Refused, match=say):
        calc.answer("spacing", opening="36 in", count=count, width=width)
