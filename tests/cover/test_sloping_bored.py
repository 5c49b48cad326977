"""Sloping-lid box: what is bored, with which drill, and a wall screw too near the end of the back."""

import pytest
from examples import Example
from test_sloping_order import step

from calc.building.piece_told import answered
from calc.sums._drills import under

BOX = Example("sloping-lid-box")


@pytest.mark.parametrize(
    ("crest", "tail", "told"),
    [("20", "20", False), ("0", "0", False), ("19", "40", True), ("40", "19", True)],
)
def test_a_wall_screw_too_near_the_end_of_the_back_is_warned_of(crest: str, tail: str, told: bool) -> None:
    """Half of 19 mm is less than 10 mm from the end; where the back does not stand out nothing is bored there.

    Common practice, no source.
    """
    cautions = BOX.answer(crest=f"{crest} mm", tail=f"{tail} mm").cautions
    assert any("from the end of the back" in one.say for one in cautions) == told


def test_a_back_cut_so_short_that_its_screw_stands_near_the_end_is_warned_of() -> None:
    """At 245 mm the tail is used up and 8 of the crest are left: the screw would stand 4 mm from the top."""
    result = answered(BOX.cut(("back_high", "245")))
    assert result
    assert step(result, "for the wall's screws")["setting"] < 5
    assert any("from the end of the back" in one.say for one in result.cautions)


def test_what_is_bored_has_its_drill_beside_it() -> None:
    """Of a joint as its table has the hole, by the nearest drill no thicker; none of a nail that no table measures, and
    for the wall's screws what clears them, since what they are hangs on the wall."""
    result = BOX.answer()
    holes = {row["joint"]: row["hole"] for row in result["joints"]}
    assert step(result, "front to the sides")["tool"] == f"drill {under(holes['Front to sides'])[0]}; hammer, punch"
    hinges = under(holes["Hinges to strip and moving lid"])[0]
    assert step(result, "hinge screws")["tool"] == f"drill {hinges}; screwdriver"
    assert holes["Back to strip, down the slope"] is None
    assert step(result, "back to the strip")["tool"] == "drill, hammer"
    assert "clears the screws chosen for the wall" in step(result, "for the wall's screws")["tool"]
