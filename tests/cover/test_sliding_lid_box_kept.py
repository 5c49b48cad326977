"""The sliding-lid box kept true while it is built: what gives way, and what is said where nothing does."""

from fractions import Fraction

import pytest
from examples import Example, offers, says

from calc.building.gaps import alike

BOX = Example("sliding-lid-box")


def test_a_box_that_came_out_narrower_has_its_lid_follow() -> None:
    """Front cut to 75 mm instead of 76: the lid is narrower by 1 mm less what it swells."""
    after = BOX.cut(("front_long", "75"))
    assert not says(after)
    swelled = 1 + float(BOX.plain.values["swells"]) / 100
    assert float(after.values["lid_wide"]) == pytest.approx(74.5 / swelled)


def test_a_lid_cut_already_uses_up_its_room_and_then_binds() -> None:
    """75.5 mm at the dampest: in 75.7 mm it leaves 0.2; in 74.5 mm it is 1 mm too wide then, 0.99 now."""
    (lid,) = BOX.as_worked_out("lid_wide")
    assert float(BOX.cut(("front_long", "75.7"), lid).values["spare"]) == pytest.approx(0.2, abs=1e-6)
    assert says(BOX.cut(("front_long", "74.5"), lid)) == ["The lid is 0.99 mm too wide, and binds in damp weather."]


def test_a_lid_too_long_uses_its_clearance_and_then_stands_over() -> None:
    """217.5 leaves half a millimetre at the back; 220 leaves none and stands 2 mm over the front."""
    assert BOX.cut(("lid_long", "217.5")).values["end_clearance"] == Fraction(1, 2)
    after = BOX.cut(("lid_long", "220"))
    assert (after.values["end_clearance"], after.values["overhang"]) == (0, 2)
    assert not says(after)


def test_a_lid_too_short_for_a_box_that_stands_leaves_a_gap() -> None:
    """Four millimetres of clearance are the most: 217 + 1 - 4 = 214, and 213 leaves 1 mm at the front."""
    assert says(BOX.cut(("side_long", "224"), ("lid_long", "213"))) == ["The lid leaves a gap of 1.00 mm at the front."]


def test_a_lid_never_moves_a_side_that_is_cut() -> None:
    """Either side cut at 224: a lid of 247 stands 4 mm over the front, past 1 mm of clearance and 25 of overhang."""
    for side in ("side_long", "second_long"):
        after = BOX.cut((side, "224"), ("lid_long", "247"))
        assert says(after) == ["The lid stands 4.00 mm too far over the front."]
        assert offers(after)[0] == "Take 4.00 mm off the lid"


def test_a_groove_ploughed_too_low_lowers_the_front_that_is_open() -> None:
    """7 mm down instead of 6: the lid lies 1 mm below the top, and all stands 1 mm higher to keep the room."""
    after = BOX.cut(("lip", "7"))
    assert not says(after)
    assert [after.values[name] for name in ("sunk", "side_high", "front_high", "back_lip")] == [1, 59, 46, 7]


def test_grooves_that_do_not_meet_are_told() -> None:
    """A tenth is let pass, half a millimetre is not."""
    first = ("lip", "6")
    assert not says(BOX.cut(first, ("second_lip", "6.1")))
    after = BOX.cut(first, ("second_lip", "6.5"))
    assert says(after) == ["The second side has its groove 0.50 mm lower than the other."]
    assert [one.fits for one in alike(after)] == [True, False, True, True]


def test_a_groove_too_low_wants_a_new_part_and_one_too_high_is_never_mended_by_taking_wood_out() -> None:
    """The floor of a groove stands 58 - 6 - 6 = 46 mm above the table: at a lip of 6.6 it is 45.4, whatever is planed
    off the top. At 5.4 it is 46.6: paring its lower edge helps, but the lip stays 5.4, so that no size is offered."""
    walls = [("side_high", "58"), ("second_high", "58"), ("back_high", "58"), ("front_high", "46"), ("lip", "6")]
    for name, part in (("second_lip", "second side"), ("back_lip", "back")):
        low, high = (BOX.cut(*walls, (name, size)) for size in ("6.6", "5.4"))
        again = f"Make the {part} again, with the wood above the groove of the {part} 6 mm"
        assert (offers(low), says(high)) == ([again, "Leave it as it is"], [])
        (told,) = [one.say for one in alike(high) if not one.fits]
        assert "differ by 0.60 mm" in told
        assert "pare the lower edge of a groove that is too high" in told


def test_a_first_groove_too_high_wants_a_new_side_or_a_thinner_lid() -> None:
    """6 mm of lip were planned, 4 are there: a lid 2 mm thinner lies flush over it."""
    after = BOX.cut(("lip", "4"))
    assert offers(after)[:2] == [
        "Make the side again, with the wood above the grooves 6 mm",
        "Make the thickness of the lid 10 mm",
    ]
    assert "ploughed so much wider" in says(after)[0]
    assert offers(BOX.cut(("lid_thickness", "12"), ("lip", "4")))[1] == "Take 2.00 mm off the thickness of the lid"


def test_a_groove_too_high_and_ploughed_as_much_wider_downwards_fits() -> None:
    """4 mm of lip and 8 of groove end 12 mm down, where the front of 46 mm stands; the lid's edge is 7.5 mm thick."""
    after = BOX.cut(("lip", "4"), ("groove", "8"))
    assert not says(after)
    assert [after.values[name] for name in ("front_high", "side_high", "second_lip", "lid_tongue")] == [46, 58, 4, 7.5]


def test_planing_the_sides_is_never_offered_for_a_low_front() -> None:
    """What comes off the top of the sides leaves their grooves where they were."""
    after = BOX.cut(("side_high", "58"), ("lip", "6"), ("front_high", "44"))
    assert offers(after) == ["Make the front again, with the height of the front 46 mm", "Leave it as it is"]
