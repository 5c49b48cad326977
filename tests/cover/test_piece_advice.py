"""What is said to be done where a part does not fit. That a plane adds no wood is common practice, no source."""

from fractions import Fraction
from typing import Any

import pytest
from building import begun, done

from calc.building.gaps import gaps
from calc.building.piece import Piece
from calc.building.settle import settle
from calc.discover import find

TOO_SMALL = [
    ("wall-shelf", "housing_wide", "16 mm", "more out of the end"),
    ("sliding-lid-box", "lid_rabbet", "4 mm", "more out of the lid"),
    ("sloping-lid-box", "slot_length", "60 mm", "more out of the moving lid"),
    ("sloping-lid-box", "slot_width", "2 mm", "more out of the moving lid"),
]


def example(piece_id: str, *cuts: tuple[str, str]) -> Any:
    """The piece's example with these cuts, settled."""
    piece = find(piece_id)
    assert isinstance(piece, Piece)
    record = done(piece, begun(piece, **dict(piece.example.givens)), [("cut", *cut) for cut in cuts])
    return settle(piece, record)


@pytest.mark.parametrize(("piece_id", "name", "text", "say"), TOO_SMALL)
def test_a_hollow_cut_too_small_is_cut_larger(piece_id: str, name: str, text: str, say: str) -> None:
    """Nothing is made again; the entry offered is the size as drawn, or the mark beside it, and closes the gap."""
    before = example(piece_id)
    mend = gaps(example(piece_id, (name, text)))[0].choices[0]
    assert (mend.say.startswith("Take "), mend.say.endswith(say), mend.name) == (True, True, name)
    after = example(piece_id, (name, mend.text))
    assert not gaps(after)
    assert after.values[name] <= before.values[name] + Fraction(1, 2)


def test_a_housing_cut_too_wide_is_not_planed_narrower() -> None:
    """The example's shelf is 19 mm: 21 wants the end made again, or a thicker shelf, which is still to be planed."""
    settled = example("wall-shelf", ("shelf_thickness", "19 mm"), ("housing_wide", "21 mm"))
    assert [choice.say for choice in gaps(settled)[0].choices] == [
        "Make the end again, with the width of the housings 19 mm",
        "Leave it as it is",
    ]


def test_what_cannot_be_worked_out_names_the_field_as_the_maker_sees_it() -> None:
    """A lid of 27 mm leaves the battens no room, and the sentence says Inside width, not inside_width."""
    told = example("sloping-lid-box", ("lid_wide", "27 mm")).refused["slot_room"]
    assert str(told).startswith("Inside width: the two battens have no room side by side; ")


def offered(piece_id: str, *cuts: tuple[str, str]) -> dict[str, str]:
    """What to record for each thing that can be done about these cuts, by what is said of it."""
    return {one.say: one.text for gap in gaps(example(piece_id, *cuts)) for one in gap.choices if one.name}


def test_housings_chopped_already_are_not_made_shallower() -> None:
    """A shelf 10 mm short of 9 mm housings is made again; no advice puts wood back."""
    cuts = [("housing_deep", "9 mm"), ("rail_long", "598 mm"), ("shelf_long", "606 mm")]
    assert offered("wall-shelf", *cuts) == {"Make the shelf again, with the length of the shelf 616 mm": "616 mm"}


def test_housings_chopped_already_are_deepened_for_a_shelf_too_long() -> None:
    """Housings of 4 mm between ends 600 mm apart hold a shelf of 612 mm once they are 6 mm deep."""
    cuts = [("housing_deep", "4 mm"), ("rail_long", "600 mm"), ("shelf_long", "612 mm")]
    deeper = "Take 2.00 mm more out of the depth of the housings"
    assert offered("wall-shelf", *cuts) == {"Take 4.00 mm off the shelf": "608 mm", deeper: "6 mm"}
    assert not gaps(example("wall-shelf", *cuts[1:], ("housing_deep", "6 mm")))


@pytest.mark.parametrize("made", [[("housing_deep", "4 mm")], []])
def test_no_housing_is_advised_that_goes_through_its_end(made: list[tuple[str, str]]) -> None:
    """A shelf of 642 mm between ends 590 mm apart would want housings of 26 mm in ends of 19 mm."""
    assert len(offered("wall-shelf", *made, ("rail_long", "590 mm"), ("shelf_long", "642 mm"))) == 1


def test_grooves_ploughed_already_are_only_deepened() -> None:
    """For a lid too wide they can be; for one too narrow the lid is made again. Open grooves may still be shallower."""
    front, narrow, grooves = ("front_long", "76 mm"), ("lid_wide", "67.5 mm"), ("groove_deep", "5 mm")
    wide = offered("sliding-lid-box", front, grooves, ("lid_wide", "77.5 mm"))
    assert any("more out of the depth of the grooves" in one for one in wide)
    assert not any("groove" in one for one in offered("sliding-lid-box", front, grooves, narrow))
    assert any("Make the depth of the grooves 4 mm" in one for one in offered("sliding-lid-box", front, narrow))


def test_what_is_advised_can_be_set_on_the_rule() -> None:
    """A bottom as dry as now comes to 145.36 mm; 145 mm is within its allowance, and is what is said and typed."""
    cuts = [("wall_thickness", "8 mm"), ("bottom_across", "150.3 mm")]
    assert offered("flat-lid-box", *cuts) == {"Take 5.30 mm off the bottom": "145 mm"}
    assert not gaps(example("flat-lid-box", cuts[0], ("bottom_across", "145 mm")))


def test_what_fits_on_no_mark_is_advised_as_it_is() -> None:
    """Housings a third of 19 mm deep, both ends: neither 608 nor 609 mm fills them as 608 2/3 does."""
    found = offered("wall-shelf", ("rail_long", "596 mm"), ("shelf_long", "614 mm"))
    assert found["Take 5.33 mm off the shelf"] == "608.666667 mm"


def test_an_angle_is_advised_to_the_tenth_of_a_degree() -> None:
    """The splayed tray's bevel is 3.84°, told as 3.8°, and 3.8° is what is typed."""
    found = offered("splayed-tray", ("bevel", "5.3°"))
    assert found == {"Make the long side again, with the bevel of the ends off square 3.8°": "3.8"}
