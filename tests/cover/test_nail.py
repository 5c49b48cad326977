"""Nail: the length by the rule, the nail of the shop, its hole, and where its point comes to rest."""

import math
from fractions import Fraction

import pytest

import calc
from calc import tables
from calc.sums._nails import stock
from calc.units import MM_PER_INCH

KINDS = ("common", "box", "finish", "casing", "brad")


@pytest.mark.parametrize("kind", KINDS)
def test_the_shortest_nail_that_answers_the_rule_is_chosen(kind: str) -> None:
    """For 3/8 in held, no nail of 9/8 in or more is shorter than the one chosen (NAVEDTRA 14119, chapter 3)."""
    found = calc.answer("nail", held="3/8 in", second="2 ft", kind=kind)
    wanted = 3 * Fraction(3, 8) * MM_PER_INCH
    assert found["length"] == min(nail.length.value for nail in stock(kind) if nail.length.value >= wanted)
    assert found["share"] >= Fraction(200, 3)


def test_a_nail_must_not_come_through_unless_it_is_meant_to() -> None:
    """In two 3/4 in pieces the rule wants 2 1/4 in; with 1/8 in left beyond the point the longest is 1 1/4 in."""
    found = calc.answer("nail", held="3/4 in", second="3/4 in")
    assert found["length"] == Fraction(5, 4) * MM_PER_INCH
    assert found["left"] >= Fraction(1, 8) * MM_PER_INCH
    assert "shorter than the rule" in found.text


def test_a_clinched_nail_stands_out_far_enough_to_turn() -> None:
    """Two 3/4 in pieces and 3/8 in to turn want 1 7/8 in: a 2 in nail stands out half an inch."""
    found = calc.answer("nail", held="3/4 in", second="3/4 in", end="clinch")
    assert (found["length"] / MM_PER_INCH, found["out"] / MM_PER_INCH) == (2, Fraction(1, 2))
    assert found["left"] is None


def test_a_nail_that_leans_crosses_more_wood() -> None:
    """At 60° from square every thickness is doubled, exactly."""
    found = calc.answer("nail", held="1/2 in", second="6 in", lean="60")
    assert (found["along_held"], found["wanted"]) == (MM_PER_INCH, 3 * MM_PER_INCH)


def test_the_drill_is_never_thicker_than_the_hole_may_be() -> None:
    """75 % is the most for light woods and 90 % for dense ones (National Design Specification, as quoted)."""
    for nail in (nail for kind in KINDS for nail in stock(kind) if nail.diameter):
        for wood, most in (("light", Fraction(3, 4)), ("dense", Fraction(9, 10))):
            size = f"{float(nail.diameter.value)} mm"
            found = calc.answer("nail", held="1 in", second="1 ft", wood=wood, measured=size)
            assert found["drill_size"] <= most * nail.diameter.value
            assert most * nail.diameter.value - found["drill_size"] < MM_PER_INCH / 64


def test_a_thickness_no_table_has_is_not_made_up() -> None:
    """3d common nails have a length by the penny rule (Noyes 1910) and no printed thickness."""
    found = calc.answer("nail", held="10 mm", second="1 ft")
    assert found["nail"] == "3d common nail"
    assert [found[name] for name in ("diameter", "hole", "drill")] == [None, None, None]
    assert "measure yours" in found["thickness_from"]
    assert "no hole is answered" in found.text


def test_your_own_nail_measured_takes_the_table_s_place() -> None:
    """What callipers say goes before what any table says."""
    found = calc.answer("nail", held="10 mm", second="1 ft", measured="2 mm")
    assert (found["diameter"], found["hole"], found["thickness_from"]) == (2, Fraction(3, 2), "measured by you")


@pytest.mark.parametrize("kind", KINDS)
def test_no_figure_from_memory_goes_unmarked(kind: str) -> None:
    """Each thickness and length that no source bears out says so, and brings its caution."""
    for nail in stock(kind):
        held = f"{float(nail.length.value / 3)} mm"
        found = calc.answer("nail", held=held, second="1 ft", kind=kind)
        chosen = next(one for one in stock(kind) if one.name == found["nail"])
        remembered = [one for one in (chosen.length, chosen.diameter) if one and one.remembered]
        said = [found["length_from"], found["thickness_from"]].count(tables.CHECK)
        assert said == len(remembered)
        assert not remembered or "from memory and not from a source" in found.text


def test_the_sizes_either_side_show_what_each_would_do() -> None:
    """In two 3/4 in pieces: too short, short, then 1 1/2 in, which ends in the far face itself, and through."""
    found = calc.answer("nail", held="3/4 in", second="3/4 in")
    assert [row["word"] for row in found["near"]] == ["short", "short", "too near the far face", "comes through"]


def test_a_longer_nail_that_stays_inside_is_said_to_end_too_near() -> None:
    """16 and 35 mm are 51: a 6d nail of 2 in is 50.8, and leaves 0.2 mm of the 1/8 in that is wanted."""
    found = calc.answer("nail", held="16 mm", second="35 mm")
    assert {row["nail"]: row["word"] for row in found["near"]}["6d common nail"] == "too near the far face"
    assert "end too near the far face" in found.text


@pytest.mark.parametrize("lean", ["0", "30", "45", "60"])
@pytest.mark.parametrize("kind", KINDS)
def test_a_leaning_nail_keeps_its_distance_square_from_the_far_face(kind: str, lean: str) -> None:
    """The point, found by turning the nail's length, is no nearer to the face than 1/8 in, however it leans."""
    found = calc.answer("nail", held="20 mm", second="24 mm", lean=lean, kind=kind)
    down = float(found["length"]) * math.cos(math.radians(float(lean)))
    assert 20 + 24 - down >= 25.4 / 8 - 1e-9


@pytest.mark.parametrize(
    ("given", "field"),
    [
        ({"held": "16 mm", "second": "6 mm"}, "kind"),
        ({"held": "16 mm", "second": "3 mm", "margin": "3 mm"}, "margin"),
        ({"held": "6 in", "second": "12 in"}, "kind"),
        ({"held": "3 in", "second": "6 in", "end": "clinch"}, "kind"),
    ],
)
def test_where_no_nail_will_do_it_says_why(given: dict[str, str], field: str) -> None:
    """No number is given where no nail of the table stands in the wood."""
    with pytest.raises(calc.Refused) as refused:
        calc.answer("nail", **given)
    assert [one.field for one in refused.value.refusals] == [field]


def test_it_always_speaks_of_eyes_and_of_splitting() -> None:
    """Common practice, no source; the standard names no safe distance (NDS 1997, 12.4.1, as quoted)."""
    said = calc.answer("nail", held="16 mm", second="180 mm").text
    assert "eye protection" in said
    assert "splits" in said
