"""A cut so far from what it was to be that it is asked about. The sizes are those of the comment-card box, by hand."""

import pytest
from test_piece_advice import example

from calc.building.gaps import gaps
from calc.building.settle import Settled

LOST_POINT = ("front_height", "1685 mm", "168.5 mm")
ANOTHER_POINT = ("front_height", "16.85 mm", "168.5 mm")
INCHES = ("inside_width", "200 in", "200 mm")
MILLIMETRES = ("depth", "5.9 mm", "149.86 mm")


@pytest.mark.parametrize(("name", "text", "meant"), [LOST_POINT, ANOTHER_POINT, INCHES, MILLIMETRES])
def test_a_slip_is_asked_about_and_what_was_meant_is_offered(name: str, text: str, meant: str) -> None:
    """The first choice is the number with its point or unit put right; taken, nothing is asked any more."""
    settled = card_box((name, text))
    assert name in asked(settled)
    assert [(one.say, one.name, one.text) for one in gaps(settled)[0].choices] == [
        (f"It is {meant}", name, meant),
        ("Leave it as it is", "", ""),
    ]
    assert not asked(card_box((name, meant)))


def test_it_says_what_was_planned_and_what_came_out() -> None:
    """Both as they are read on the maker's rule."""
    said = gaps(card_box(LOST_POINT[:2]))[0].say
    assert said == (
        "The height of the front edge was to be 170 mm, and came out at 1685 mm: is that what you measured?"
    )


@pytest.mark.parametrize("text", ["100 mm", "160 mm", "171 mm", "400 mm"])
def test_what_a_saw_may_do_is_not_asked_about(text: str) -> None:
    """However wrong, less than four times too large or small is a cut, not a slip of the pen."""
    assert not asked(card_box(("front_height", text)))


def test_small_sizes_may_be_many_times_as_planned() -> None:
    """An overhang of 6 mm that came out at 1.4 is over four times too small, and 4.6 mm out: a saw may do that."""
    assert card_box().values["side_overhang"] == 6
    assert not asked(card_box(("side_overhang", "1.4 mm")))
    assert asked(card_box(("side_overhang", "0.6 mm"))) == ["side_overhang"]


def test_two_cuts_that_agree_are_not_asked_about() -> None:
    """A depth of 700 instead of 150 mm is asked about, until a lid is cut to it: then it was meant."""
    assert asked(card_box(("depth", "700 mm"))) == ["depth"]
    lid = card_box(("depth", "700 mm")).values["lid_long"]
    settled = card_box(("depth", "700 mm"), ("lid_long", f"{float(lid):.1f} mm"))
    assert not asked(settled)


def asked(settled: Settled) -> list[str]:
    """The cuts that are asked about."""
    return [one.name for one in gaps(settled) if one.say.endswith("is that what you measured?")]


def card_box(*cuts: tuple[str, str]) -> Settled:
    """The comment-card box with these cuts."""
    settled: Settled = example("sloping-lid-box", *cuts)
    return settled
