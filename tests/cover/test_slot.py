"""Slot: what goes in, how big the slot, the holes that start it, and where they are marked."""

import itertools
from fractions import Fraction

import pytest
from shapely.geometry import LineString, Point, box

import calc
from calc.sums._money import things

NOTE = {"what": "usd-note", "halved": "2", "narrowed": "1"}


def test_each_fold_halves_a_side_and_doubles_the_layers() -> None:
    """A US note of 6.14 by 2.61 in, folded twice and once, is 1.535 by 1.305 in and eight layers."""
    found = calc.answer("slot", **NOTE)
    assert (found["folded_length"] / Fraction("25.4"), found["folded_width"] / Fraction("25.4")) == (
        Fraction("1.535"),
        Fraction("1.305"),
    )
    assert found["layers"] == 8


def test_folded_paper_takes_more_room_than_its_thickness() -> None:
    """Eight layers at 0.4 mm (common practice) are 3.2 mm; one sheet lies at its own thickness."""
    assert calc.answer("slot", **NOTE)["thick"] == Fraction("3.2")
    assert calc.answer("slot", what="usd-note")["thick"] == Fraction("0.10922")


@pytest.mark.parametrize("what", things())
@pytest.mark.parametrize("leads", ["shorter", "longer"])
def test_the_thing_passes_the_slot(what: str, leads: str) -> None:
    """Drawn with a geometry library, the section of each note, coin and card lies inside its round-ended slot."""
    found = calc.answer("slot", what=what, leads=leads)
    length, width, side, thick = (float(found[name]) for name in ("slot_length", "slot_width", "side", "thick"))
    slot = LineString([(width / 2, 0), (length - width / 2, 0)]).buffer(width / 2, quad_segs=64)
    gap = (length - side) / 2
    assert slot.contains(box(gap, -thick / 2, length - gap, thick / 2))


@pytest.mark.parametrize(
    "given", [NOTE, {"what": "gbp-coin-1p", "drills": "mm"}, {"what": "eur-note-first-series-500", "leads": "longer"}]
)
def test_the_holes_bore_both_ends_and_leave_wood_between(given: dict[str, str]) -> None:
    """Circles about the marks touch both ends of the slot, and stand apart by no less than the wood asked for."""
    found = calc.answer("slot", **given)
    holes = [
        Point(float(row["mark"]), 0).buffer(float(found["slot_width"]) / 2, quad_segs=64) for row in found["centres"]
    ]
    assert holes[0].bounds[0] == pytest.approx(0, abs=1e-9)
    assert holes[-1].bounds[2] == pytest.approx(float(found["slot_length"]), rel=1e-12)
    between = [near.distance(far) for near, far in itertools.pairwise(holes)]
    assert min(between) >= 25.4 / 8 - 1e-9
    assert max(between) == pytest.approx(float(found["waste"]), rel=1e-9)


def test_running_marks_do_not_add_up_rounding() -> None:
    """Each mark is worked from the exact pitch: the last is half a drill short of the end, exactly."""
    found = calc.answer("slot", **NOTE)
    assert found["centres"][-1]["mark"] == found["slot_length"] - found["slot_width"] / 2


def test_the_drill_is_the_next_that_leaves_the_clearance() -> None:
    """3.2 mm and 1 mm each side want 5.2 mm: 5.5 mm from a metric set, 7/32 in from an inch set (5.56 mm)."""
    assert calc.answer("slot", drills="mm", **NOTE)["drill"] == "5.5 mm"
    assert calc.answer("slot", **NOTE)["drill"] == "7/32 in"


def test_the_slot_is_put_midway_between_the_battens() -> None:
    """Equal clear wood either side; on a lid without battens, midway on the lid."""
    found = calc.answer("slot", lid="12 in", clear_from="3 in", clear_to="10 in", **NOTE)
    assert found["clear_low"] == found["clear_high"] > 0
    plain = calc.answer("slot", lid="12 in", **NOTE)
    assert plain["begins"] + plain["ends"] == 12 * Fraction("25.4")


def test_marks_run_from_the_end_of_the_lid_once_it_is_known() -> None:
    """The first hole is half a drill beyond where the slot begins."""
    found = calc.answer("slot", lid="12 in", start="2 in", **NOTE)
    assert found["centres"][0]["mark"] == 2 * Fraction("25.4") + found["slot_width"] / 2
    assert found["marks_from"] == "the end of the lid"


@pytest.mark.parametrize(
    ("given", "words"),
    [
        ({"what": "own", "length": "60 mm", "width": "40 mm", "thickness": "11 mm"}, "A finger of 12 mm"),
        ({"lid": "12 in", "start": "1 in", "clear_from": "2 in", **NOTE}, "runs into a batten"),
        ({"what": "own", "length": "20 mm", "width": "20 mm", "thickness": "14 mm"}, "round ends catch"),
        ({"what": "own", "length": "10 mm", "width": "5 mm", "thickness": "2 mm", "drills": "mm"}, "Less wood is left"),
        ({"what": "own", "length": "3 in", "width": "5 in"}, "is the shorter side"),
        ({"what": "gbp-coin-1p"}, "Sources disagree"),
        ({"what": "gbp-note-5-polymer"}, "from memory and not from a source"),
        ({"what": "usd-note", "length": "100 mm"}, "are not used"),
    ],
)
def test_it_warns_where_it_must(given: dict[str, str], words: str) -> None:
    """Legal but unwise: the number and a caution; and the plain slot has none of them."""
    assert words in calc.answer("slot", **given).text
    assert words not in calc.answer("slot", **NOTE).text


def test_no_size_from_memory_goes_unmarked() -> None:
    """Every note, coin and card whose size no source bears out says so."""
    for thing in things().values():
        remembered = any(size.remembered for size in (thing.length, thing.width, thing.thickness) if size)
        assert ("from memory and not from a source" in calc.answer("slot", what=thing.key).text) == remembered


@pytest.mark.parametrize(
    ("given", "field"),
    [
        ({"what": "own", "length": "100 mm"}, "width"),
        ({"what": "own"}, "length"),
        ({"what": "eur-coin-1", "halved": "1"}, "halved"),
        ({"lid": "1 in", **NOTE}, "lid"),
        ({"clear_from": "6 in", "clear_to": "3 in", **NOTE}, "clear_to"),
        ({"what": "own", "length": "10 mm", "width": "10 mm", "halved": "2", "narrowed": "2"}, "halved"),
        ({"what": "own", "length": "40 mm", "width": "9 mm", "narrowed": "3", "clearance": "0 mm"}, "narrowed"),
        ({"what": "own", "length": "10 mm", "width": "10 mm", "thickness": "16 mm"}, "clearance"),
        ({"what": "own", "length": "200 mm", "width": "100 mm", "thickness": "30 mm", "ease": "10 mm"}, "ease"),
    ],
)
def test_what_cannot_be_cut_is_refused(given: dict[str, str], field: str) -> None:
    """The refusal is about the entry to change."""
    with pytest.raises(calc.Refused) as refused:
        calc.answer("slot", **given)
    assert [one.field for one in refused.value.refusals] == [field]
