"""Rabbeted corners: four boards laid together by their answers make the box that was asked for."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon, box, unary_union
from shapely.affinity import scale

import calc
from calc import Refused

MM = st.integers(6, 60)
CORNERS = st.fixed_dictionaries(
    {
        "thickness": MM,
        "let_in": MM,
        "inside": st.integers(20, 900),
        "between": st.integers(20, 900),
        "proud": st.integers(0, 5),
    }
)
SHARES = st.sampled_from(["1/2", "1/3", "0.25", "2/3", "0.9"])


def rabbeted(answer: calc.Result) -> Polygon:
    """The front from above, its outer face along the bottom and its middle at nothing, rabbets cut at both ends."""
    half, thick = float(answer["long"]) / 2, float(answer["thickness"])
    taken = box(half - float(answer["width"]), thick - float(answer["depth"]), half, thick)
    board = box(-half, 0, half, thick)
    return board.difference(unary_union([taken, scale(taken, -1, 1, origin=(0, 0))]))


@given(sizes=CORNERS, kept=SHARES)
def test_four_boards_laid_together_make_the_box(sizes: dict[str, int], kept: str) -> None:
    """No board covers another, the room between them is the inside asked for, and the outside is as told."""
    answer = calc.answer("rabbet", **{name: f"{mm} mm" for name, mm in sizes.items()}, kept=kept)
    front, tongue = rabbeted(answer), float(answer["tongue"])
    deep = float(answer["outside_deep"])
    back = scale(front, 1, -1, origin=(0, deep / 2))
    left = -float(answer["long"]) / 2 + sizes["proud"]
    side = box(left, tongue, left + sizes["let_in"], tongue + float(answer["let_long"]))
    boards = [front, back, side, scale(side, -1, 1, origin=(0, 0))]
    joined = unary_union([board.buffer(1e-7, join_style="mitre") for board in boards])
    assert sum(board.area for board in boards) == pytest.approx(joined.area, abs=1e-2)
    (room,) = [Polygon(ring) for ring in joined.interiors]
    wide = (room.bounds[2] - room.bounds[0], room.bounds[3] - room.bounds[1])
    assert wide == pytest.approx((sizes["inside"], sizes["between"]), abs=1e-5)
    assert float(answer["outside_wide"]) == pytest.approx(2 * -left)
    assert joined.bounds[3] - joined.bounds[1] == pytest.approx(deep, abs=1e-5)


def test_half_is_kept_unless_another_share_is_asked_for() -> None:
    """16 mm leaves a tongue of 8 mm; a third of 18 mm is exactly 6 mm."""
    assert calc.answer("rabbet", thickness="16 mm", let_in="16 mm")["tongue"] == 8
    third = calc.answer("rabbet", thickness="18 mm", let_in="16 mm", kept="1/3")
    assert (third["tongue"], third["depth"], third["shows"]) == (6, 12, 6)


def test_the_plane_is_set_to_width_and_depth() -> None:
    """What stands past the other board is added at the fence, not at the stop."""
    answer = calc.answer("rabbet", thickness="3/4 in", let_in="1/2 in", proud="1/32 in")
    assert answer["fence"] == Fraction(17, 32) * Fraction("25.4")
    assert answer["stop"] == Fraction(3, 8) * Fraction("25.4")


def test_it_agrees_with_the_sloping_lid_box() -> None:
    """The piece cuts its front's rabbet as deep as this sum does, unless its maker says otherwise."""
    piece = calc.discover.find("sloping-lid-box")
    box_answer = calc.answer("sloping-lid-box", **piece.example.givens)
    front = float(box_answer["front_thickness"] or box_answer["thickness"])
    answer = calc.answer("rabbet", thickness=f"{front} mm", let_in="16 mm")
    assert float(answer["depth"]) == pytest.approx(float(box_answer["rabbet"]))


def test_lengths_are_left_out_when_the_inside_is_not_given() -> None:
    """Nothing is made up."""
    answer = calc.answer("rabbet", thickness="16 mm", let_in="16 mm")
    assert all(answer[name] is None for name in ("long", "let_long", "outside_wide", "outside_deep"))


@pytest.mark.parametrize(("thickness", "kept", "count"), [("16 mm", "1/2", 1), ("5 mm", "1/2", 2), ("16 mm", "0.3", 2)])
def test_thin_tongues_are_warned_of(thickness: str, kept: str, count: int) -> None:
    """Under 3 mm, or less than a third of the board."""
    assert len(calc.answer("rabbet", thickness=thickness, let_in="16 mm", kept=kept).cautions) == count


def test_shallow_rabbets_are_warned_of() -> None:
    """More than three quarters kept."""
    assert len(calc.answer("rabbet", thickness="16 mm", let_in="16 mm", kept="0.8").cautions) == 2


@pytest.mark.parametrize("kept", ["1", "0", "0.05", "50%"])
def test_a_share_is_part_of_the_whole(kept: str) -> None:
    """All, nothing, too little, and percents are refused at their field."""
    with pytest.raises(Refused) as refused:
        calc.answer("rabbet", thickness="16 mm", let_in="16 mm", kept=kept)
    assert refused.value.refusals[0].field == "kept"
