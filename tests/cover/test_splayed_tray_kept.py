"""The splayed tray kept true while it is built: what gives way, what is said, and one asked for backwards."""

import math

import pytest
from building import begun, done
from examples import Example, offers, says

from calc.building.gaps import gaps
from calc.building.settle import Settled, settle
from calc.probing.backwards import backwards
from calc.probing.probe import of_piece

TRAY = Example("splayed-tray")


def test_an_outside_asked_for_is_found_backwards() -> None:
    """A maker who knows the outside at the top has the inside at the bottom worked out."""
    wanted = float(TRAY.plain.values["outside_long"]) + 10
    found = backwards(of_piece(TRAY.plain, "outside_long"), f"{wanted:.6f} mm", "long")
    assert found.reached
    assert float(found.found.value) == pytest.approx(270, abs=1e-4)


def test_a_side_sawn_short_makes_the_bottom_shorter() -> None:
    """2 mm off both long sides before the bottom is cut: the floor is 258 long, and nothing else moves."""
    after = TRAY.cut(("long_side", f"{float(TRAY.plain.values['long_side']) - 2:.9f} mm"))
    assert not says(after)
    assert float(after.values["bottom_long"]) == pytest.approx(258, abs=1e-6)
    assert float(after.values["bottom_wide"]) == pytest.approx(170, abs=1e-6)


def test_a_bottom_planed_small_sinks_and_then_leaves_a_gap() -> None:
    """The sides nailed up, the bottom comes out 1 mm short: by hand it sinks 0.5/tan 15° = 1.866 mm of its 3, and is
    1 mm narrower too; 2 mm short it would have to sink 3.73, and only 3 are there."""
    made = TRAY.as_worked_out("long_side", "end_side", "side_wide")
    after = TRAY.cut(*made, ("bottom_long", "259"))
    assert not says(after)
    assert float(after.givens["bottom_up"]) == pytest.approx(3 - 0.5 / math.tan(math.radians(15)), abs=1e-4)
    assert float(after.values["bottom_wide"]) == pytest.approx(169, abs=1e-4)
    assert any("leaves gaps at the ends" in say for say in says(TRAY.cut(*made, ("bottom_long", "258"))))


def test_ends_sawn_at_another_angle_make_the_sides_lean_as_they_were_sawn() -> None:
    """tan(face) = sin(lean): sawn at 14° the sides lean by asin(tan 14°) = 14.44°."""
    after = TRAY.cut(("face_cut", "14°"))
    assert not says(after)
    assert float(after.givens["lean"]) == pytest.approx(math.degrees(math.asin(math.tan(math.radians(14)))), abs=1e-6)


def test_a_second_side_unlike_the_first_says_so() -> None:
    """With the first cut, 0.4 mm is let pass and 1 mm is not."""
    first = TRAY.as_worked_out("long_side")
    longer = [("second_long", f"{float(TRAY.plain.values['long_side']) + off:.9f} mm") for off in (0.4, 1)]
    assert not says(TRAY.cut(*first, longer[0]))
    assert says(TRAY.cut(*first, ("long", "260"), longer[1])) == [
        "The second long side is 1.00 mm longer than the first."
    ]


def test_a_bottom_that_leaves_gaps_is_too_short_or_too_narrow() -> None:
    """Both come out 2 mm less than they were to be, and only 3 mm are there to sink: it is said as at the bench."""
    made = TRAY.as_worked_out("long_side", "end_side", "side_wide")
    for name, size, words in (("bottom_long", "258", "too short"), ("bottom_wide", "168", "too narrow")):
        assert any(f" {words} and leaves gaps" in say for say in says(TRAY.cut(*made, (name, size))))


NARROW = [("end_side", f"{float(TRAY.plain.values['end_side']) - 16:.9f} mm"), ("bottom_wide", "166")]
"""Ends that make the floor 154 wide, and a bottom 12 mm too wide for it."""


def test_a_bottom_too_wide_is_planed_and_does_not_lift_the_floor() -> None:
    """By hand it would have to stay 6/tan 15° = 22.4 mm higher; 5 are let pass, which is common practice, no source,
    and the rest, 12 - 10 tan 15° = 9.32 mm, is to come off."""
    after = TRAY.cut(*NARROW)
    assert says(after) == ["The bottom is 9.32 mm too wide to go down between the long sides."]
    assert "Take 9.32 mm off the bottom" in offers(after)
    assert float(after.givens["bottom_up"]) == 8
    assert not says(TRAY.cut(NARROW[0], ("bottom_wide", f"{166 - 12 + 10 * math.tan(math.radians(15)):.9f} mm")))


def test_it_counts_not_which_came_first() -> None:
    """The bottom cut before the ends is as much too wide."""
    assert says(TRAY.cut(*NARROW[::-1])) == says(TRAY.cut(*NARROW))


def test_a_bottom_a_little_too_wide_stays_up_a_little() -> None:
    """1 mm too wide it stays 0.5/tan 15° = 1.866 mm higher than its 3, and nothing is said."""
    after = TRAY.cut(NARROW[0], ("bottom_wide", "155"))
    assert not says(after)
    assert float(after.givens["bottom_up"]) == pytest.approx(3 + 0.5 / math.tan(math.radians(15)), abs=1e-4)


PAIRS = [("long_side", "bottom_long", 260.0, "bottom's length"), ("end_side", "bottom_wide", 170.0, "bottom's width")]
"""A side and the way of the bottom that goes with it, as the example has it, and what is said of it."""


def settled(cuts: list[tuple[str, float]], first: str) -> Settled:
    """The example with these cuts, one of them said to have come first."""
    acts = [*(("cut", name, f"{size:.9f} mm") for name, size in cuts), ("first", first)]
    return settle(TRAY.piece, done(TRAY.piece, begun(TRAY.piece, **TRAY.givens), acts))


@pytest.mark.parametrize(("side", "way", "size", "words"), PAIRS)
def test_a_side_too_short_for_the_bottom_may_have_the_bottom_taken_smaller(
    side: str, way: str, size: float, words: str
) -> None:
    """A new side is the dearer mend: it is said that as much off the bottom closes it too, and it does."""
    short = float(TRAY.plain.values[side]) - 12
    (gap,) = gaps(settled([(way, size), (side, short)], way))
    assert gap.say.endswith(f"unless as much is taken off the {words}.")
    assert not gaps(settled([(way, size + float(gap.amount)), (side, short)], way))


@pytest.mark.parametrize(("side", "way", "size", "words"), PAIRS)
def test_a_bottom_too_small_may_have_its_sides_sawn_shorter(side: str, way: str, size: float, words: str) -> None:
    """It is said of the bottom, and as much off the sides closes it."""
    made = float(TRAY.plain.values[side])
    (gap,) = gaps(settled([(side, made), (way, size - 14)], side))
    assert "sawn as much shorter" in gap.say
    assert not gaps(settled([(side, made + float(gap.amount)), (way, size - 14)], side))
