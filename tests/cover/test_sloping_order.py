"""Sloping-lid box: every joint, hole and hinge has its step in the order of work, and what it wants is bought."""

import pytest
from examples import Example

from calc.answers import Result
from calc.declare import Values
from calc.discover import find
from calc.errors import Refused

BOX = Example("sloping-lid-box")


def step(result: Result | Values, words: str) -> Values:
    """The one step of the order of work that says this."""
    (found,) = [row for row in result["order"] if words in row["do"]]
    return dict(found)


def test_the_battens_are_sawn_before_they_are_nailed() -> None:
    """To their length, across the grain, and to their width."""
    result = BOX.answer()
    said = [row["do"] for row in result["order"]]
    assert step(result, "Saw the battens")["setting"] == result["batten_long"]
    assert step(result, "battens to width")["second"] == 30
    assert said.index(step(result, "Saw the battens")["do"]) < said.index(step(result, "Nail the battens")["do"])


def test_every_joint_of_the_table_has_its_step() -> None:
    """The joints are driven in the order of the table, the one from the back into the strip down the slope."""
    result = BOX.answer()
    words = ("front to the sides", "Nail the bottom", "Nail the back on", "Nail the strip", "back to the strip",
             "Nail the battens", "hinge screws")  # fmt: skip
    at = [list(result["order"]).index(step(result, one)) for one in words]
    assert at == sorted(at)
    assert step(result, "back to the strip")["angle"] == result["angle"]


def test_glue_is_spoken_of_where_the_joints_have_it() -> None:
    """Long grain to long grain: the bottom along the front, and the back along the sides; nowhere else."""
    result = BOX.answer()
    glued = {row["joint"] for row in result["joints"] if row["glue"].startswith("yes")}
    assert glued == {"Front to bottom", "Back to sides"}
    assert "glue along the front only" in step(result, "Nail the bottom")["do"]
    assert "glue along the sides' edges only" in step(result, "Nail the back on")["do"]
    assert all("no glue" in step(result, one)["do"] for one in ("front to the sides", "the strip,", "Nail the battens"))


@pytest.mark.parametrize(
    ("entry", "settings"),
    [
        ({}, [20, 20]),
        ({"crest": "60 mm", "tail": "0 mm"}, [30, None]),
        ({"crest": "0 mm", "tail": "50 mm"}, [25, None]),
        ({"crest": "0 mm", "tail": "0 mm"}, [None, None]),
    ],
)
def test_the_back_is_bored_for_the_wall_where_it_stands_out(entry: dict[str, str], settings: list[int | None]) -> None:
    """In the middle of crest and tail, and inside the box where there is neither. Common practice, no source."""
    found = step(BOX.answer(**entry), "for the wall's screws")
    assert [found["setting"], found["second"]] == settings


def test_one_nail_stands_on_the_line_over_each_side() -> None:
    """The nail line runs parallel to the back and crosses the top of a side once."""
    counts = {row["joint"]: row["count"] for row in BOX.answer()["joints"]}
    assert counts["Strip to sides"] == 2


def test_the_hinges_stand_as_the_sum_of_hinges_has_them() -> None:
    """Two 40 mm butts on 244 mm, each its own length from its end: 40 to 80 and 164 to 204, by hand and by that sum."""
    result = BOX.answer()
    assert [(row["start"], row["end"]) for row in result["hinge_marks"]] == [(40, 80), (164, 204)]
    own = find("hinge").of(size=40, leaf=14, knuckle=5, length=244, thickness=16, number=4)
    assert list(result["hinge_marks"]) == list(own["marks"])
    assert [row["length"] for row in result["screw_list"]] == [own["screw_length"]]
    assert step(result, "Let in the hinges")["setting"] == 40


def test_hinges_and_their_screws_are_bought() -> None:
    """Two leaves of three holes to each of two hinges: twelve screws."""
    result = BOX.answer()
    assert [row["count"] for row in result["screw_list"]] == [2 * 2 * 3]
    assert [(row["along"], row["open"], row["count"]) for row in result["hinge_list"]] == [(40, 28, 2)]


def test_hinges_keep_clear_of_the_sides() -> None:
    """On a narrow box the first hinge begins past overhang, side and clearance, where no nail of the strip stands."""
    result = BOX.answer(inside_width="90 mm", batten_width="20 mm", note="own", note_length="40 mm", note_width="30 mm")
    assert result["hinge_in"] == 6 + 16 + 3
    assert result["hinge_size"] == 18


def test_a_slot_that_cannot_be_made_leaves_the_rest_of_the_order() -> None:
    """Between battens that leave 54 mm no slot of 69.5 fits: its two steps are left out, and no other."""
    whole = {row["do"] for row in BOX.plain.values["order"]}
    narrow = {row["do"] for row in BOX.cut(("inside_width", "120 mm")).values["order"]}
    assert whole - narrow == {
        "Place the slot: middle down from the sawn edge, end in from the lid's end",
        "Bore and chop the slot: length, width",
    }


def test_what_is_sawn_out_of_the_lid_has_no_widths_of_its_own() -> None:
    """Strip and moving lid are sawn out of one that is glued up already: only that counts its widths of stock."""
    strips = {row["part"]: row["strips"] for row in BOX.answer()["parts"]}
    assert strips["Lid, whole"] == 2
    assert strips["Fixed strip"] is strips["Moving lid"] is None


def test_more_hinges_than_there_is_room_for_are_refused_with_what_fits() -> None:
    """Between the insets of 25 mm lie 194 of 244 mm: six hinges of 40 do not, and 244/8 = 30.5 mm would be the most."""
    with pytest.raises(Refused) as refused:
        BOX.answer(hinges="6", hinge_size="40 mm")
    assert "give 30 mm or less" in str(refused.value)
    assert BOX.answer(hinges="6", hinge_size="30 mm")["hinge_in"] == 30


def test_a_lid_too_thin_for_hinge_screws_says_so_and_buys_none() -> None:
    """8 mm less a gain of 2.5 leaves 5.5: with 2 left over and 1.5 of leaf no screw of 1/4 in or more stays inside."""
    result = BOX.answer(lid_thickness="8 mm")
    assert any("under its hinges" in caution.say for caution in result.cautions)
    assert result["screw_list"] == []
