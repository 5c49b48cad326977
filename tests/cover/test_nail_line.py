"""Line of nails: marks that never add up rounding, distances kept, and a word where the wood will split."""

from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused, discover, tables
from calc.errors import Refusal
from calc.sums._nails import KINDS, named, stock

LINE = {"line": "400 mm", "own": "2 mm", "hole": "bored"}


def lined(**entries: str) -> calc.Result:
    """The line answered."""
    return calc.answer("nail-line", **{**LINE, **entries})


@given(line=st.integers(80, 3000), end=st.integers(5, 39), count=st.integers(2, 60))
def test_marks_are_equal_steps_from_one_end_to_the_other(line: int, end: int, count: int) -> None:
    """As numpy divides the same line; the last mark is exact and not the sum of rounded ones."""
    found = lined(line=f"{line} mm", from_end=f"{end} mm", count=str(count))
    marks = [row["mark"] for row in found["marks"]]
    assert np.allclose([float(mark) for mark in marks], np.linspace(end, line - end, count), rtol=0, atol=1e-9)
    assert marks[-1] == line - end
    assert all(isinstance(mark, Fraction) for mark in marks)


@given(line=st.integers(60, 3000), wanted=st.integers(10, 500), tenths=st.integers(10, 60))
def test_the_fewest_nails_that_keep_to_the_spacing(line: int, wanted: int, tenths: int) -> None:
    """One nail fewer would leave them further apart than wanted; the least distance is kept in any case."""
    try:
        found = lined(line=f"{line} mm", wanted=f"{wanted} mm", own=f"{tenths / 10} mm")
    except Refused as refused:
        assert refused.refusals[0].field == "line"  # noqa: PT017 - nothing else may be refused here
        return
    span = line - 2 * (found["end_least"] if found["kept"] is None else found["kept"])
    assert found["nails"] == 1 or found["apart"] >= found["apart_least"]
    if found["most"] >= found["by_wish"] > 2:
        assert found["apart"] <= wanted < span / (found["nails"] - 2)


def test_one_nail_alone_stands_in_the_middle() -> None:
    """Where there is room for no second one."""
    found = lined(line="30 mm", from_end="14 mm")
    assert (found["nails"], found["apart"]) == (1, None)
    assert [row["mark"] for row in found["marks"]] == [15]


def test_one_nail_alone_is_not_said_to_be_kept_from_the_ends() -> None:
    """In the middle of 400 mm it is 200 mm from either end: neither the least nor what was settled is told of it."""
    one, settled = lined(count="1"), lined(count="1", from_end="30 mm")
    assert one["kept"] is settled["kept"] is None
    assert settled["marks"][0]["mark"] == 200
    assert "stands in the middle" in settled.text
    assert "stands in the middle" not in one.text
    assert "nearer to the ends" not in lined(count="1", from_end="6 mm").text


@pytest.mark.parametrize(
    ("entries", "say"),
    [
        ({"from_end": "6 mm"}, "nearer to the ends"),
        ({"row_in": "3 mm"}, "nearer to the side"),
        ({"count": "100"}, "closer together than the least"),
        ({"hole": "none", "thickness": "13 mm"}, "thinner than seven diameters"),
        ({"hole": "none", "wood": "dense"}, "wants a hole for every nail"),
        ({"hole": "none", "own": "6.5 mm", "line": "1 m"}, "wants a hole for every nail"),
        ({"wanted": "8 mm"}, "there are fewer nails"),
        ({"own": "5 mm", "hole": "none"}, "from memory"),
    ],
)
def test_it_warns_where_the_wood_is_likely_to_split(entries: dict[str, str], say: str) -> None:
    """Each of these breaks one rule, and only says so then."""
    assert say in lined(**entries).text
    assert say not in lined().text


def test_without_a_hole_every_distance_is_wider() -> None:
    """Boring never asks for more room; nor does lighter wood (Eurocode 5, table 8.2, as restated)."""
    names = ("end_least", "beside_least", "apart_least")
    bored, light, medium = (lined(**one) for one in ({}, {"hole": "none", "wood": "light"}, {"hole": "none"}))
    for name in names:
        assert bored[name] < light[name] < medium[name]


def test_across_the_grain_the_row_keeps_off_the_end_instead() -> None:
    """Turned a quarter, the ends of the line are the board's edges, and beside the row is its end."""
    along, across = lined(), lined(run="across")
    assert (along["end_by"], along["beside_by"]) == (across["beside_by"], across["end_by"])


def test_a_rule_of_your_own_takes_the_table_s_place() -> None:
    """Diameters typed are used as they are, and said to be yours."""
    found = lined(own_end="10", own_beside="2.5", own_apart="15")
    assert [found[name] for name in ("end_least", "beside_least", "apart_least")] == [20, 5, 30]
    assert found["rules_from"] == "yours"


@pytest.mark.parametrize("kind", KINDS)
def test_every_nail_of_the_nail_sum_can_be_chosen(kind: str) -> None:
    """By its whole name, as that sum hands it over; one with no thickness in any table is not made up."""
    asked = discover.find("nail-line").given("nail")
    for nail in stock(kind):
        assert named()[asked.read(nail.name, calc.Bench()).value] == nail
        if nail.diameter is None:
            with pytest.raises(Refused, match="measure it"):
                calc.answer("nail-line", line="1 m", nail=nail.name)
        else:
            found = calc.answer("nail-line", line="1 m", nail=nail.name)
            assert (found["thick"], found["thick_from"]) == (nail.diameter.value, nail.diameter.said)
            assert (tables.CHECK in found["thick_from"]) == nail.diameter.remembered


def test_part_of_a_number_finds_no_nail() -> None:
    """A 2 in brad of 14 gauge is not in the table, and the 1 1/2 in one is not taken for it."""
    with pytest.raises(Refusal, match="is no nail in the table"):
        discover.find("nail-line").given("nail").read("2 in wire brad, 14 gauge", calc.Bench())


@pytest.mark.parametrize(
    ("entries", "field"),
    [
        ({"line": "1 in", "own": "6 mm"}, "line"),
        ({"line": "60 mm", "from_end": "31 mm"}, "from_end"),
        ({"line": "60 mm", "own_end": "16"}, "own_end"),
        ({"line": "10 m", "wanted": "1/4 in"}, "wanted"),
    ],
)
def test_what_cannot_be_nailed_is_refused(entries: dict[str, str], field: str) -> None:
    """No room between the ends, which is blamed on what asked for so much, or more nails than anyone would drive."""
    with pytest.raises(Refused) as refused:
        lined(**entries)
    assert refused.value.refusals[0].field == field
