"""Dressed sizes: found as they are asked for, never made up between two, memory and old editions marked."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused, discover, tables
from calc.errors import Refusal
from calc.sums._lumber import sizes, thicknesses
from calc.units import MM_PER_INCH


@pytest.mark.parametrize(
    ("typed", "key"),
    [
        ("2x4", "2x4"),
        ("2 x 4", "2x4"),
        ("2X4", "2x4"),
        ("1 1/4 x 6", "1 1/4x6"),
        ("5/4x6", "1 1/4x6"),
        ("5/4 x 6", "1 1/4x6"),
        ("6/4X12", "1 1/2x12"),
        ("5/4", "5/4"),
        ("5/4 hardwood", "5/4"),
        ("3/4", "3/4"),
        ("1910-2", "1910-2"),
        ("2 in rough in 1910", "1910-2"),
        ("2 x 12", "2x12"),
        ("3/4 in", "3/4"),
        ("1916-2x12", "1916-2x12"),
    ],
)
def test_a_size_is_found_as_it_is_asked_for(typed: str, key: str) -> None:
    """As the trade writes it, with or without spaces; 2 x 4 is never 2 1/2 x 4."""
    assert discover.find("dressed").given("size").read(typed, calc.Bench()).value == key


def test_an_old_size_is_never_taken_for_a_new_one() -> None:
    """Two inches alone could be 8/4, or 2 in of 1910: both are named, neither is chosen."""
    with pytest.raises(Refusal, match="could be") as refused:
        discover.find("dressed").given("size").read("2 in", calc.Bench())
    assert "8/4" in refused.value.say
    assert "1910" in refused.value.say


@given(tenths=st.integers(40, 889), trade=st.sampled_from(["hardwood", "softwood"]))
def test_the_thinnest_board_that_is_enough(tenths: int, trade: str) -> None:
    """Tried against every thickness of the list."""
    wanted = Fraction(tenths, 10)
    enough = [one for one in thicknesses(trade) if one.dressed[0] >= wanted]
    found = calc.answer("dressed", finished=f"{tenths / 10} mm", trade=trade)
    assert found["nominal"] == min(one.called[0] for one in enough)
    assert found["spare"] == found["thickness"] - wanted >= 0
    assert found["width"] is None


def test_thicker_than_the_list_is_refused() -> None:
    """3 1/2 in is the thickest softwood dressed; no 4 in is made up."""
    with pytest.raises(Refused, match="glue it up") as refused:
        calc.answer("dressed", finished="3 5/8 in", trade="softwood")
    assert refused.value.refusals[0].field == "finished"


@pytest.mark.parametrize("key", list(sizes()))
def test_every_size_says_how_it_is_known(key: str) -> None:
    """What no source bears out says so; what a book of 1910 or 1916 prints names the book and its age.

    Only the 2 x 4 of the present standard was read: NIST, Making sure lumber measures up (2017).
    """
    found = calc.answer("dressed", size=key)
    old = key.startswith("19")
    assert (tables.CHECK in found["figure_from"]) is not (old or key == "2x4")
    assert ("a hundred years old" in found.text) is old
    assert ("from memory and not from a source" in found.text) is not (old or key == "2x4")
    assert ("NIST" in found["figure_from"]) is (key == "2x4")
    assert found["thickness"] < found["nominal"]


def test_editions_are_kept_apart() -> None:
    """2 x 8 was 1 5/8 by 7 1/2 in 1916 and is 1 1/2 by 7 1/4 as remembered of the present standard."""
    then, now = (calc.answer("dressed", size=key) for key in ("1916-2x8", "2x8"))
    assert [then["thickness"], then["width"]] == [Fraction(13, 8) * MM_PER_INCH, Fraction(15, 2) * MM_PER_INCH]
    assert [now["thickness"], now["width"]] == [Fraction(3, 2) * MM_PER_INCH, Fraction(29, 4) * MM_PER_INCH]


def test_what_is_paid_for_and_what_is_left() -> None:
    """A 2 x 4 is two thirds of a board foot a foot, and 21/32 of it is left: 1.5 x 3.5 of 2 x 4."""
    found = calc.answer("dressed", size="2x4")
    assert (found["a_foot"], found["share"]) == (Fraction(2, 3), 100 * Fraction(21, 32))


def test_only_boards_are_seven_inches_wide() -> None:
    """PS 20 (from memory): boards, under 2 in, come 7 in wide; dimension lumber goes from 6 in to 8."""
    assert {key for key in sizes() if key.endswith("x7")} == {"1x7", "1 1/4x7", "1 1/2x7"}
    with pytest.raises(Refused, match="no size in the table"):
        calc.answer("dressed", size="2x7")


def test_the_trade_is_told_only_where_it_counts() -> None:
    """A size by its name says by itself whether it is softwood; for a thickness wanted the list looked in is told."""
    told = [
        [given.name for given in calc.answer("dressed", **entries).givens]
        for entries in ({"size": "2x4"}, {"finished": "16 mm"}, {"size": "2x4", "trade": "softwood"})
    ]
    assert told == [["size"], ["finished", "trade"], ["size", "trade"]]


def test_the_source_of_the_figures_is_said_once() -> None:
    """As a sentence: the label leaves the word from to what is told."""
    assert "from: from" not in calc.answer("dressed", size="4/4").text


def test_too_thick_is_told_in_both_units() -> None:
    """3 1/2 in is 88.9 mm."""
    with pytest.raises(Refused, match=r"dresses to 88\.9 mm, 3\.5 in"):
        calc.answer("dressed", finished="3 5/8 in", trade="softwood")
