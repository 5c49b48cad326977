"""The flat-lid box kept true while it is built: what gives way, and what is said where nothing does."""

import pytest
from examples import Example, offers, says

from calc.building.gaps import alike, gaps
from calc.building.piece_told import answered

BOX = Example("flat-lid-box")


def test_a_box_that_came_out_narrower_has_its_lid_follow() -> None:
    """Front cut to 242 mm instead of 244: inside 218, lid 254, bottom 229, battens 214 over all."""
    after = BOX.cut(("front_long", "242"))
    assert not says(after)
    assert [after.values[name] for name in ("inside_wide", "lid_long", "bottom_long", "battens_over")] == [
        218, 254, 229, 214,
    ]  # fmt: skip
    assert after.took == {"width": "front_long"}


def test_a_lid_cut_already_hangs_less_far_over_and_then_leaves_the_sides_bare() -> None:
    """Lid 256 on a box of 250: 3 mm each end. On a box of 260 nothing hangs over, and 4 mm are missing."""
    assert BOX.cut(("front_long", "250"), ("lid_long", "256")).values["end_overhang"] == 3
    after = BOX.cut(("front_long", "260"), ("lid_long", "256"))
    assert says(after) == ["The lid leaves 4.00 mm of the sides bare, both together."]


def test_battens_on_the_lid_use_up_their_clearance_and_are_then_too_long() -> None:
    """136 mm long in 138 mm: 1 mm each end. In 136 mm the least, 0.5 mm each end, is 1 mm too much."""
    assert BOX.cut(("side_long", "150"), ("batten_long", "136")).values["clearance"] == 1
    after = BOX.cut(("side_long", "148"), ("batten_long", "136"))
    assert says(after) == ["The batten is 1.00 mm too long to go in between front and back."]


WALLS = [(), *((name,) for name in ("front_long", "back_long", "side_long", "second_long", "second_high"))]


@pytest.mark.parametrize("walls", WALLS, ids=lambda walls: " ".join(walls) or "none cut")
def test_battens_never_move_the_walls(walls: tuple[str, ...]) -> None:
    """Whichever wall is cut, or none: at 146 in 140 mm, and at 226 over both in 220, 7 mm come off the battens."""
    for name, size in (("batten_long", "146"), ("battens_over", "226")):
        after = BOX.cut(*BOX.as_worked_out(*walls), (name, size))
        assert after.took.keys() <= {"clearance", "side_clearance"}
        (gap,) = gaps(after)
        assert (gap.name, gap.amount) == (name, 7)
    assert offers(after) == ["Take 7.00 mm off the pair of battens", "Leave it as it is"]
    assert offers(BOX.cut(("batten_long", "146")))[0] == "Take 7.00 mm off the batten"


def test_walls_of_unlike_height_are_told() -> None:
    """A tenth is let pass, half a millimetre is not."""
    first = ("front_high", "72")
    assert not says(BOX.cut(first, ("back_high", "71.9")))
    after = BOX.cut(first, ("back_high", "71.5"))
    assert says(after) == ["The back is 0.50 mm lower than the other."]
    assert [one.fits for one in alike(after)] == [False, True, True]


def test_battens_without_room_side_by_side_leave_the_rest_of_the_order() -> None:
    """Two 30 mm battens and twice 2 mm want 64 inside: at 60 only the step that marks them on the lid is left out."""
    whole = [row["do"] for row in BOX.plain.values["order"]]
    narrow = [row["do"] for row in BOX.cut(("width", "60 mm")).values["order"]]
    assert [do for do in whole if do not in narrow] == [
        "Mark the battens on the lid: in from its ends, in from its edges"
    ]


def test_a_bottom_that_would_slip_off_its_ledge_is_warned_of() -> None:
    """Planed 12 mm narrower than the room between front and back it bears on nothing when it is dry."""
    for cut, told in ((BOX.plain.values["inside_deep"] - 12, True), (BOX.plain.values["bottom_across"], False)):
        result = answered(BOX.cut(("bottom_across", f"{float(cut):.2f}")))
        assert result
        assert any("slips off its ledge" in one.say for one in result.cautions) == told
