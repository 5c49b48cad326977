"""The wall shelf kept true while it is built: what gives way, and what is said where nothing does."""

from examples import Example, says

SHELF = Example("wall-shelf")


def test_a_shelf_sawn_short_brings_the_ends_nearer_until_the_rail_is_cut() -> None:
    """2 mm short: the rail follows, 598 long. With the rail sawn to 600 it stands 2 mm short in its housings."""
    short = ("shelf_long", "610 2/3 mm")
    after = SHELF.cut(short)
    assert not says(after)
    assert after.values["rail_long"] == 598
    assert says(SHELF.cut(short, ("rail_long", "600"), ("inside_width", "600"))) == [
        "The shelf is 2.00 mm short of the floors of its housings, both ends together."
    ]


def test_an_end_sawn_short_is_shorter_above_the_shelf() -> None:
    """3 mm short of 199: the rise gives way, 57 instead of 60, and the upper curve with it."""
    after = SHELF.cut(("end_high", "196"))
    assert not says(after)
    assert after.values["rise"] == 57
    assert after.values["curve_up"] == 51


def test_a_housing_cut_too_narrow_asks_for_a_thinner_shelf() -> None:
    """18.5 for a board of 19: half a millimetre off the shelf is offered, and closes it."""
    after = SHELF.cut(("housing_wide", "18.5"))
    assert says(after) == ["The end has its housing 0.50 mm narrower than the shelf is thick."]
    assert not says(SHELF.cut(("housing_wide", "18.5"), ("shelf_thickness", "18.5")))


def test_a_second_end_unlike_the_first_says_so() -> None:
    """Half a millimetre is let pass, one is not."""
    assert not says(SHELF.cut(("drop", "120"), ("second_drop", "120.4")))
    assert says(SHELF.cut(("drop", "120"), ("second_drop", "121"))) == [
        "The second end has its housing 1.00 mm higher than the first."
    ]
