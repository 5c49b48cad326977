"""The flat-lid box: worked by hand, moved by the handbook's figures, laid together again by its sizes."""

import math

import pytest
from examples import Example, covered
from hypothesis import given
from hypothesis import strategies as st

from calc.sums._drills import under

BOX = Example("flat-lid-box")


def test_the_example_by_hand() -> None:
    """220 x 140 x 60 mm inside, of 12 mm ash, on paper.

    Rabbets 6 deep. Front and back 12 + 220 + 12 = 244; sides 6 + 140 + 6 = 152, so the box is 152 + 2 x 6 = 164 deep.
    Walls 12 + 60 = 72 high. Lid 244 + 12 = 256 by 164 + 12 = 176. Battens 140 - 4 = 136 long, 216 over both, so
    (256 - 216) / 2 = 20 in from the ends. Bottom 220 + 12 - 1 = 231 long; across it is 151 mm at its dampest.
    """
    result = BOX.answer()
    names = ("front_long", "side_long", "outside_deep", "front_high", "lid_long", "lid_wide", "batten_long")
    assert [result[name] for name in names] == [244, 152, 164, 72, 256, 176, 136]
    assert [result[name] for name in ("battens_over", "batten_in", "bottom_long", "volume")] == [
        216, 20, 231, 220 * 140 * 60,
    ]  # fmt: skip
    assert float(result["bottom_across"]) == pytest.approx(151 / 1.0113, abs=0.05)


def test_the_bottom_swells_by_the_handbook_s_coefficient() -> None:
    """White ash, flat-sawn: 0.00274 of its width for each percent (Wood Handbook, table 13-5), from 9 to 13.13 %.

    13.13 % is what 20 °C and 70 % give by equation 4-5: table 4-2 prints 13.1 at 70 °F (21.1 °C).
    """
    result = BOX.answer()
    assert float(result["bottom_across"]) * (1 + 0.00274 * (13.13 - 9)) == pytest.approx(151, abs=0.01)


def test_outside_sizes_make_the_same_box() -> None:
    """244 x 164 x 84 mm over all is 220 x 140 x 60 inside."""
    over = {"width": "244 mm", "depth": "164 mm", "height": "84 mm", "measured": "outside"}
    one, other = (BOX.answer(**more) for more in ({}, over))
    for name in ("inside_wide", "inside_deep", "inside_high", "lid_long", "lid_wide", "wood_volume", "cost"):
        assert one[name] == other[name], name


@given(st.integers(120, 600), st.integers(80, 400), st.integers(20, 300), st.integers(8, 25), st.integers(6, 20))
def test_the_room_is_what_was_asked_and_the_lid_covers_it(wide: int, deep: int, high: int, wall: int, lid: int) -> None:
    """Whatever the sizes, the inside is as asked, the lid even all round, the parts within the stock and the weight."""
    v = BOX.sized(width=wide, depth=deep, height=high, wall_thickness=wall, lid_thickness=lid)
    assert v["volume"] == wide * deep * high
    assert v["lid_long"] - v["outside_wide"] == v["lid_wide"] - v["outside_deep"] == 12
    assert v["batten_long"] + 2 * v["clearance"] == deep
    assert v["bottom_across"] < v["side_long"]
    assert float(v["weight"]) == pytest.approx(float(v["wood_volume"]) * float(v["density"]) / 1e9)
    covered(v)


def test_across_the_grain_comes_before_along_it_and_no_glue_crosses_it() -> None:
    """Crosscuts and the corner rabbets before any ripping; battens and the bottom's ends are not glued."""
    result = BOX.answer()
    tools = [row["tool"] for row in result["order"]]
    assert max(at for at, tool in enumerate(tools) if tool == "crosscut saw") < tools.index("rip saw, plane")
    assert tools.index("rabbet plane") < tools.index("rip saw, plane")
    glue = {row["joint"]: row["glue"].partition(":")[0] for row in result["joints"]}
    assert glue["Battens to lid"] == glue["Bottom to sides"] == "none"


def test_a_slot_lets_the_lid_move_as_far_as_it_goes_there() -> None:
    """The end screws of a 136 mm batten stand 68 - 25 = 43 mm from the middle: the lid goes 43/176 of its own way."""
    v = BOX.plain.values
    assert v["slot_long"] == pytest.approx(0.138 * 25.4 + 2 * float(v["lid_moves"]) * 43 / 176)
    assert not math.isclose(float(v["lid_moves"]), 0)


def test_like_parts_share_a_width_of_stock() -> None:
    """On paper: of 180 mm stock, two 72 mm walls lie side by side. Front and back take 244 once, the sides 152 once,
    then 231 of bottom, 256 of lid and 136 of battens: 1019, and five saw cuts of 1.5 mm."""
    assert [row["length"] for row in BOX.answer()["buy"]] == [1027]


def test_nails_and_screws_are_counted_as_they_are_bought() -> None:
    """The nails in all are those on the list to buy; the six screws of two battens are on a list of their own."""
    result = BOX.answer()
    assert result["nail_count"] == sum(row["count"] for row in result["nail_list"])
    assert not any("screw" in row["nail"] for row in result["nail_list"])
    assert [row["count"] for row in result["screw_list"]] == [6]


def test_a_lid_too_thin_for_screws_says_what_to_do_and_screws_nothing() -> None:
    """Through 3 mm into 3 mm with 2 mm left over a screw would be 3 to 4 mm long; the shortest sold is 1/4 in."""
    result = BOX.answer(batten_thickness="3 mm", lid_thickness="3 mm")
    told = [one.say for one in result.cautions]
    assert any("give a thicker lid" in say for say in told)
    assert not any("wire brads" in say for say in told)
    assert not any("crew the battens" in row["do"] for row in result["order"])
    assert "settle how the battens are held" in result["order"][-1]["do"]
    assert result["screw_list"] == []


@pytest.mark.parametrize(
    ("batten", "lid", "told"),
    [("12 mm", "12 mm", False), ("10 mm", "10 mm", False), ("5 mm", "4 mm", True), ("3 mm", "3 mm", False)],
)
def test_screws_that_hardly_reach_the_lid_are_warned_of(batten: str, lid: str, told: bool) -> None:
    """A No. 6 screw is 3.51 mm thick: 5.26 mm in the lid are enough. Through 5 mm the longest that stays 2 mm inside a
    lid of 4 is 6.35 mm and goes 1.35 in; through 10 into 10 it is 15.88 and goes 5.88. Of 3 mm no screw is told at all.

    Common practice, no source.
    """
    cautions = BOX.answer(batten_thickness=batten, lid_thickness=lid).cautions
    assert any("one and a half times" in one.say for one in cautions) == told


def test_what_is_bored_has_its_drill_beside_it() -> None:
    """A No. 6 screw is 0.138 in thick, 3.51 mm: 3.6 mm clears it. Its lead hole and the nails' are those of the joints,
    by the nearest drill no thicker."""
    result = BOX.answer()
    holes = {row["joint"]: under(row["hole"])[0] for row in result["joints"] if row["hole"]}
    tools = {row["do"].partition(":")[0]: row["tool"] for row in result["order"]}
    assert tools["Bore the battens to clear their screws"] == f"drill {result['clear_drill']}; file"
    assert result["clear_drill"].startswith("3.6 mm")
    assert tools["Bore the lid and screw the battens on, no glue"] == f"drill {holes['Battens to lid']}; screwdriver"
    (nailed,) = [row["tool"] for row in result["order"] if "Bore and nail" in row["do"]]
    assert nailed == f"drill {holes['Front and back to sides']}; hammer, punch"


def test_the_battens_are_bored_to_clear_their_screws_and_slotted_by_what_can_be_measured() -> None:
    """The slot's own length is told, not half its play."""
    result = BOX.answer()
    step = next(row for row in result["order"] if "slots" in row["do"] and "Bore" in row["do"])
    assert step["second"] == result["slot_long"] > 0.138 * 25.4
