"""Screw: numbers, holes on the right side of their drills, and a length that grips and stays inside."""

from collections.abc import Callable
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused, tables
from calc.sums import _drills
from calc.sums._screw import LENGTHS
from calc.units import MM_PER_INCH

RACKS = (_drills.inch, _drills.metric, _drills.halves, _drills.numbered)


def screwed(**entries: str) -> calc.Result:
    """The screw answered, a number 8 through 16 mm unless told otherwise."""
    given = {"held": "16 mm", **entries}
    return calc.answer("screw", **(given if "own" in given else {"number": "8", **given}))


@given(tenths=st.integers(15, 95))
def test_drills_keep_their_side_and_come_near(tenths: int) -> None:
    """A pilot is never wider than its hole nor a tenth of a millimetre narrower; a clearance hole lets it slip."""
    found = screwed(own=f"{tenths / 10} mm")
    for hole, drill in (("pilot_soft", "soft_size"), ("pilot_hard", "hard_size")):
        assert 0 <= found[hole] - found[drill] < Fraction(1, 10)
    assert Fraction(2, 10) <= found["clear_size"] - found["diameter"] < Fraction(3, 10)


@pytest.mark.parametrize("rack", RACKS, ids=lambda one: one.__name__)
def test_a_rack_stands_thinnest_first(rack: Callable[[], tuple[_drills.Drill, ...]]) -> None:
    """As it is looked through: no drill out of its place, and no two alike."""
    sizes = [drill.diameter for drill in rack()]
    assert sizes == sorted(set(sizes))


@given(number=st.integers(0, 24), held=st.integers(2, 100), second=st.integers(10, 200))
def test_the_shortest_that_grips_and_stays_inside(number: int, held: int, second: int) -> None:
    """Tried against every length sold: no shorter one has seven diameters of thread in; the point stays inside."""
    try:
        found = screwed(number=str(number), held=f"{held} mm", second=f"{second} mm")
    except Refused as refused:
        inside = held + second - Fraction(25.4) / 8
        assert not [size for size in LENGTHS if held < size <= inside], refused  # noqa: PT017
        return
    assert found["left"] >= MM_PER_INCH / 8
    for shorter in (size for size in LENGTHS if held < size < found["length"]):
        assert min(shorter - held, shorter * 2 / 3) < 7 * found["diameter"]


def test_the_clearance_drill_is_not_as_thick_as_the_screw() -> None:
    """A number 8 of 0.164 in goes through 11/64 in, as drills for it are sold: common practice, no source."""
    assert "11/64 in" in screwed()["clear_drill"]
    assert screwed(own="4 mm")["clear_drill"].startswith("4.2 mm")


def test_a_head_deeper_than_the_piece_held_is_warned_of() -> None:
    """A number 24 is 9.45 mm thick; its head of 18.9 mm, at 82°, is 5.4 mm deep."""
    warned = [
        "head is deeper" in screwed(number="24", held=held, second="100 mm").text for held in ("5 mm", "6 mm", "20 mm")
    ]
    assert warned == [True, False, False]


def test_a_length_that_is_hardly_sold_so_thick_is_warned_of() -> None:
    """A number 24 of 3/8 in is as long as thick; a number 8 of 2 in is on every shelf: common practice, no source."""
    short = screwed(number="24", held="1/16 in", second="1/2 in")
    assert short["length"] == Fraction(3, 8) * MM_PER_INCH
    assert "hardly sold" in short.text
    assert "hardly sold" not in screwed().text


def test_what_the_tables_disagree_on_is_said() -> None:
    """A number 8 of 1916 is 0.16312 in; the handbook's 4.17 mm is the present rule's 0.164 in."""
    rows = screwed()["others"]
    assert [row["differs"] for row in rows] == ["0.02 mm thinner", "the same to 0.01 mm"]
    assert [row["printed"] for row in rows] == [Fraction("0.16312") * MM_PER_INCH, Fraction("4.17")]


def test_a_number_no_other_table_has_lists_none() -> None:
    """Neither table printed number 3; a screw measured has no number to compare."""
    assert screwed(number="3")["others"] is None
    assert screwed(own="4 mm")["others"] is None


def test_a_root_from_memory_says_so_and_a_measured_one_does_not() -> None:
    """Two thirds is remembered; callipers go before it."""
    assert tables.CHECK in screwed()["root_from"]
    own = screwed(measured="2.5 mm")
    assert (own["root"], own["root_from"]) == (Fraction(5, 2), "measured by you")
    assert "reckoned from memory" in screwed().text
    assert "reckoned from memory" not in own.text


def test_a_thin_second_piece_holds_less_and_says_so() -> None:
    """In 20 mm a number 8 cannot have 29 mm of thread."""
    assert "Less than seven diameters" in screwed(second="20 mm").text
    assert "Less than seven diameters" not in screwed(second="60 mm").text


@pytest.mark.parametrize(
    ("entries", "field"),
    [
        ({"held": "1/16 in", "second": "1/8 in", "margin": "0 in"}, "second"),
        ({"second": "3.2 mm", "margin": "10 mm"}, "margin"),
        ({"own": "2 mm", "measured": "2 mm"}, "measured"),
    ],
)
def test_what_cannot_be_screwed_is_refused(entries: dict[str, str], field: str) -> None:
    """Each refusal names the field to change."""
    with pytest.raises(Refused) as refused:
        screwed(**entries)
    assert refused.value.refusals[0].field == field
