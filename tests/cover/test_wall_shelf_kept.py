"""The wall shelf kept true while it is built: what gives way, and what is said where nothing does."""

from examples import Example, offers, says

SHELF = Example("wall-shelf")


def test_a_shelf_sawn_short_brings_the_ends_nearer_until_the_rail_is_cut() -> None:
    """2 mm short: the rail follows, 598 long. With the rail sawn to 600 it stands 2 mm short in its housings."""
    short = ("shelf_long", "610 2/3 mm")
    after = SHELF.cut(short)
    assert not says(after)
    assert after.values["rail_long"] == 598
    assert says(SHELF.cut(short, ("rail_long", "600"), ("inside_width", "600"))) == [
        "The shelf is 2.00 mm short of the floors of its housings, both ends together, unless the rail is sawn as much "
        "shorter."
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


def test_a_housing_higher_on_the_first_end_is_mended_at_its_foot() -> None:
    """120 up on the first end and 118 on the second: 2 mm off the first end's foot, and the shelf is level."""
    first, second = ("drop", "120"), ("second_drop", "118")
    assert "Take 2.00 mm off the ends below the shelf" in offers(SHELF.cut(first, second))
    assert not says(SHELF.cut(("drop", "118"), second))


def test_a_rail_sawn_already_may_be_sawn_shorter_for_a_short_shelf() -> None:
    """608 for 600 + 2 · 6 1/3: with the rail cut nothing gives way, and 4.67 mm off it is one way out."""
    (say,) = says(SHELF.cut(("rail_long", "600"), ("shelf_long", "608")))
    assert "4.67 mm short" in say
    assert "unless the rail is sawn as much shorter" in say
    shorter = SHELF.cut(("rail_long", "595 1/3 mm"), ("shelf_long", "608"))
    assert not says(shorter)
