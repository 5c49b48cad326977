"""What is said to be done where a part does not fit. That a plane adds no wood is common practice, no source."""

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
    """Nothing is made again; the entry offered is the size as drawn, and closes the gap."""
    before = example(piece_id)
    mend = gaps(example(piece_id, (name, text)))[0].choices[0]
    assert (mend.say.startswith("Take "), mend.say.endswith(say), mend.name) == (True, True, name)
    after = example(piece_id, (name, mend.text))
    assert not gaps(after)
    assert after.values[name] <= before.values[name]


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
