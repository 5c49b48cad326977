"""Capacity: layers laid out by a geometry library, stacks counted one by one."""

import math
from fractions import Fraction
from itertools import combinations, permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Point, box

import calc
from calc import Refused
from calc.discover import find
from calc.sums._capacity import bricked, staggered

EXAMPLE = find("capacity").example.givens
ROOM = {"box_length": "200 mm", "box_width": "150 mm", "box_height": "100 mm"}


def own(long: int, wide: int, thick: int, **more: str) -> calc.Result:
    """A box of 200 by 150 by 100 mm filled with a thing of the maker's own."""
    size = {"length": f"{long} mm", "width": f"{wide} mm", "thickness": f"{thick} mm"}
    return calc.answer("capacity", **{**ROOM, **size, **more})


@given(long=st.integers(20, 150), wide=st.integers(20, 100), thick=st.integers(1, 30))
def test_a_stack_is_the_best_of_the_six_ways(long: int, wide: int, thick: int) -> None:
    """Things are put down along each side one by one until the next would not go in."""

    def along(room: int, size: int) -> int:
        count = 0
        while (count + 1) * size <= room:
            count += 1
        return count

    ways = [math.prod(along(r, s) for r, s in zip(room, (long, wide, thick), strict=True))
            for room in permutations((200, 150, 100))]  # fmt: skip
    if max(ways):
        assert own(long, wide, thick)["stacked"] == max(ways)


@given(long=st.integers(10, 160), wide=st.integers(10, 120), across=st.integers(8, 30))
def test_staggered_coins_lie_inside_and_on_top_of_none(long: int, wide: int, across: int) -> None:
    """Discs drawn by the library: each within the floor, no two nearer than a diameter."""
    spots = [Point(spot) for spot in bricked(Fraction(long), Fraction(wide), Fraction(across))]
    floor = box(0, 0, long, wide)
    assert len(spots) == staggered(Fraction(long), Fraction(wide), Fraction(across))
    assert all(floor.buffer(1e-9).covers(spot) for spot in spots)
    assert all(spot.distance(floor.exterior) >= across / 2 - 1e-9 for spot in spots)
    assert all(a.distance(b) >= across - 1e-9 for a, b in combinations(spots, 2))


def test_staggered_rows_beat_straight_ones_on_a_wide_floor() -> None:
    """Rows of circles 0.866 of a diameter apart: ten rows of ten and nine, and one row more than straight."""
    found = own(10, 10, 2, shape="round", box_length="100 mm", box_width="100 mm", box_height="20 mm")
    assert found["a_layer"] == 6 * 10 + 5 * 9 == 105
    assert "staggered" in found["lie"]
    assert found["stacked"] >= 1050


def test_loose_is_the_share_of_the_volume() -> None:
    """Three litres, half air, in discs of ten millimetres by two: by hand 3 000 000 / 2 / 157.08."""
    found = own(10, 10, 2, shape="round")
    assert found["loose"] == math.floor(3_000_000 / 2 / (math.pi * 25 * 2))
    assert own(10, 10, 2, shape="round", share="25")["loose"] == pytest.approx(found["loose"] / 2, abs=1)


def test_a_coin_of_the_table_is_round() -> None:
    """The United States cent, 19.05 mm and 1.55 mm in the thicker print: as its own size given round."""
    cent = calc.answer("capacity", **ROOM, what="usd-coin-cent")
    same = calc.answer("capacity", **ROOM, length="19.05 mm", width="19.05 mm", thickness="1.55 mm", shape="round")
    assert (cent["stacked"], cent["loose"]) == (same["stacked"], same["loose"])
    assert "Sources disagree" in cent.text


def test_folds_halve_and_double() -> None:
    """Folded once each way it is a quarter as large and four layers of the loft thick."""
    found = own(120, 80, 1, halved="1", narrowed="1", loft="2 mm")
    assert (found["folded_length"], found["folded_width"], found["thick"]) == (60, 40, 8)
    assert found["one"] == 60 * 40 * 8


def test_the_filling_is_weighed_when_one_is() -> None:
    """So many times the mass of one; without it nothing is made up."""
    found = calc.answer("capacity", **EXAMPLE)
    assert found["mass_loose"] == found["loose"] * Fraction("0.0018")
    assert own(50, 50, 5)["mass_loose"] is None


def test_a_filling_that_is_heavy_only_when_stacked_is_warned_of_and_hung() -> None:
    """Discs of 20 by 2 mm: a fifth of three litres loose is 954 of 6 g, under 6 kg; stacked there are far more."""
    found = own(20, 20, 2, shape="round", share="20", one_mass="6 g")
    assert found["mass_loose"] < 10 < found["mass_stacked"] == found["mass_most"]
    assert "strains bottom and fixings" in found.text
    (hung,) = (carry for carry in find("capacity").carry_on if carry.to == "hang")
    assert hung.give["contents"] == "mass_most"


def test_a_coin_too_big_for_the_box_is_not_to_be_folded() -> None:
    """A bigger box is all that helps a coin; paper may be folded once more."""
    with pytest.raises(Refused) as coin:
        own(300, 300, 2, shape="round")
    with pytest.raises(Refused) as paper:
        own(300, 300, 2)
    assert [one.value.refusals[0].instead for one in (coin, paper)] == [
        "give a bigger box",
        "give a bigger box, or fold it once more",
    ]


@pytest.mark.parametrize(
    ("more", "field", "say"),
    [
        ({"what": "usd-coin-cent", "halved": "1"}, "halved", "does not fold"),
        ({"what": "own", "length": "300 mm", "width": "300 mm", "thickness": "2 mm"}, "box_length", "not even one"),
        ({"what": "own", "length": "30 mm", "width": "20 mm", "shape": "round"}, "width", "as wide as it is long"),
        ({"what": "own"}, "length", "nothing is typed"),
    ],
)
def test_what_cannot_be_is_refused_by_name(more: dict[str, str], field: str, say: str) -> None:
    """Each refusal names the entry to change."""
    with pytest.raises(Refused, match=say) as refused:
        calc.answer("capacity", **ROOM, **more)
    assert refused.value.refusals[0].field == field
