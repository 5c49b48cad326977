"""Backwards: what is found, typed into the sum, makes the answer that was asked for, or comes as near as any."""

import math
from fractions import Fraction
from typing import Any

import pytest
from building import begun, built, done
from hypothesis import given, settings
from hypothesis import strategies as st
from toys import REST, TRAY

from calc import Bench, Refusal, discover
from calc.building import acts
from calc.building.settle import settle
from calc.cells import entry
from calc.engine import reckon
from calc.probing.backwards import Backwards, backwards
from calc.probing.probe import UNCOUNTED, of_piece, of_sum
from calc.trig import is_exact

SLOPE = {"rise": "3 in", "run": "12 in"}
SUMS = [one for one in discover.everything() if one.moment != "piece"]


def turned(wanted: str, moved: str, name: str, texts: dict[str, str] = SLOPE, bench: Bench | None = None) -> Backwards:
    """An answer of the sum called slope, asked backwards."""
    return backwards(of_sum(discover.find("slope"), texts, bench or Bench(), name), wanted, moved)


def test_a_straight_relation_is_turned_exactly() -> None:
    """A slope of 25 percent over 12 in rises 3 in, and 30 percent 3.6 in."""
    assert turned("25", "rise", "percent").found.text == "3 in"
    found = turned("30%", "rise", "percent")
    assert (found.found.text, found.found.value, found.exact) == ("91.44 mm", Fraction(9144, 100), True)
    assert found.on_rule is not None
    assert found.on_rule.text == "3 5/8 in"


def test_a_curved_one_is_exact_where_its_answer_is_short() -> None:
    """The 3-4-5 triangle: 5 in along the slope on 3 in of rise is 4 in of run; and 45 degrees are 3 in."""
    assert turned("5 in", "run", "length").found.text == "4 in"
    assert turned("5 in", "run", "length").exact
    assert turned("45", "run", "angle").found.text == "3 in"


def test_a_rounded_one_is_typed_as_rounded() -> None:
    """A slope of 14 degrees over 12 in rises 12 tan 14°, which no text says whole."""
    found = turned("14", "rise", "angle")
    assert found.found.text.startswith("≈ ")
    assert float(found.found.value) == pytest.approx(12 * 25.4 * math.tan(math.radians(14)), abs=1e-6)
    assert (found.reached, found.exact) == (True, False)
    assert found.say == "Rise 3 in, scant by 0.20 mm: angle from level 14.0°."


def test_what_no_value_makes_is_said_with_how_near_it_comes() -> None:
    """No rise of 3 in is 2 in along the slope; the shorter the run the nearer it comes."""
    found = turned("2 in", "run", "length")
    assert not found.reached
    assert float(found.found.answer) == pytest.approx(3 * 25.4, abs=1e-6)
    assert found.say.startswith(
        "Run more than 0 in, up to 20 m never makes length along the slope 2 in; it comes nearest"
    )


def test_what_makes_no_difference_says_so() -> None:
    """The length of the cut changes no angle."""
    probe = of_sum(discover.find("bevel"), {"angle": "14"}, Bench(), "complement")
    found = backwards(probe, "80", "cut")
    assert not found.reached
    assert found.say == "Length of the cut makes no difference to complement, which is 76.0°; choose another to change."


def test_a_whole_number_is_found_among_whole_numbers() -> None:
    """A frame with a cut of 22.5 degrees has eight sides; none has one of 21, and nine come nearest."""
    texts = {"sides": "6", "side": "100 mm"}
    probe = of_sum(discover.find("mitre"), texts, Bench(), "cut_angle")
    assert backwards(probe, "22.5", "sides").found.text == "8"
    assert backwards(probe, "21", "sides").found.text == "9"
    assert not backwards(probe, "21", "sides").reached


@pytest.mark.parametrize(
    ("wanted", "moved", "name", "told"),
    [
        ("a few", "rise", "angle", "Angle from level"),
        ("14", "angle", "percent", "follows from the others"),
        ("14", "rise", "run", "given, not answered"),
        ("14", "rise", "nothing", "no number called"),
    ],
)
def test_what_cannot_be_asked_is_refused(wanted: str, moved: str, name: str, told: str) -> None:
    """In words, with the field."""
    with pytest.raises(Refusal, match=told):
        turned(wanted, moved, name)


def test_a_choice_cannot_be_moved_little_by_little() -> None:
    """The kind of nail is no number."""
    one = discover.find("nail")
    choice = next(asked.name for asked in one.givens if asked.kind == "choice")
    probe = of_sum(one, one.example.givens, Bench(), "length")
    with pytest.raises(Refusal, match="cannot be changed little by little"):
        backwards(probe, "3 in", choice)


def numbered(one: Any) -> list[str]:
    """The answers of an example that can be asked backwards."""
    result = reckon(one, one.example.givens, Bench())
    return [each.name for each in result.answers if each.kind not in UNCOUNTED]


@pytest.mark.parametrize("name", [one.id for one in SUMS])
@settings(max_examples=12)
@given(data=st.data())
def test_every_sum_can_be_asked_backwards(name: str, data: st.DataObject) -> None:
    """What is found, typed in, answers what was said of it; that is what was wanted, or no further from it than now."""
    one, bench = discover.find(name), data.draw(st.sampled_from([Bench(), Bench(unit="mm", mark="mm")]))
    if not (names := numbered(one)):
        return
    probe = of_sum(one, one.example.givens, bench, data.draw(st.sampled_from(names)))
    wanted = entry(probe.answer.kind, probe.value * data.draw(st.sampled_from([1, 1.1, 0.7, 3])), bench)
    try:
        found = backwards(probe, wanted, data.draw(st.sampled_from([*probe.inputs])))
    except Refusal as refusal:
        wanted = refusal.say and refusal.instead
        assert wanted
        return
    again = reckon(one, {**one.example.givens, found.given.name: found.found.text}, bench)
    assert again[probe.answer.name] == found.found.answer
    missed = abs(float(found.found.answer - found.wanted))
    assert missed <= abs(float(probe.value - found.wanted)) + 1e-6
    if found.reached:
        assert missed <= 1e-4 * max(1.0, abs(float(found.wanted)))
    assert found.exact == (is_exact(found.found.answer) and found.found.answer == found.wanted)


def test_of_a_piece_that_is_being_built_the_cuts_stay() -> None:
    """The cover is to be 340: with the front cut at 321 only the lip can do it."""
    settled = built(TRAY, {"front_long": "321"})
    found = backwards(of_piece(settled, "cover_wide"), "340", "lip")
    assert (found.found.text, found.exact) == ("9.5 mm", True)
    again = settle(TRAY, acts.give(TRAY, settled.record, "lip", found.found.text))
    assert again.values["cover_wide"] == 340
    no_way = backwards(of_piece(settled, "cover_wide"), "340", "width")
    assert no_way.say == "Width makes no difference to cover wide, which is 331 mm; choose another to change."


def test_of_a_piece_a_curved_size_is_closed_in_on() -> None:
    """The board is to be 240: the depth that makes it, answered again through the record."""
    settled = built(REST, {})
    found = backwards(of_piece(settled, "board_long"), "240", "depth")
    again = settle(REST, done(REST, begun(REST), [("give", "depth", found.found.text)]))
    assert float(again.values["board_long"]) == pytest.approx(240, abs=1e-5)
