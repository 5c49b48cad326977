"""The sliding-lid box: worked by hand, its lid moved through the seasons."""

from fractions import Fraction

import pytest
from examples import Example, covered
from hypothesis import given
from hypothesis import strategies as st

from calc.discover import find
from calc.sums._drills import under

BOX = Example("sliding-lid-box")


def test_the_example_by_hand() -> None:
    """200 x 64 x 34 mm inside, of 12 mm lime, on paper.

    Rabbets and grooves 6 deep. Sides 12 + 200 + 12 = 224; front and back 6 + 64 + 6 = 76; over the sides 88. Sides
    12 + 34 + 12 = 58 high, the front 12 + 34 = 46, so 6 of groove and 6 of lip are left above it. Lid from 1 mm short
    of the back's groove, 5 mm inside the back, over 200 and over 12 of front: 217. Its edges 5.5 thick, so 6.5 deep.
    """
    result = BOX.answer()
    names = ("side_long", "front_long", "outside_wide", "side_high", "front_high", "lip", "lid_long", "volume")
    assert [result[name] for name in names] == [224, 76, 88, 58, 46, 6, 217, 200 * 64 * 34]
    assert [result[name] for name in ("lid_tongue", "lid_step", "lid_rabbet", "notch_deep")] == [5.5, 6.5, 6.5, 3]


def test_the_lid_swells_by_the_handbook_s_coefficient() -> None:
    """Basswood, flat-sawn: 0.00330 of its width for each percent (Wood Handbook, table 13-5), from 9 to 13.13 %.

    76 mm from groove to groove less half a millimetre. 13.13 % is equation 4-5 at 20 °C and 70 %: table 4-2 has 13.1.
    """
    result = BOX.answer()
    assert float(result["lid_wide"]) * (1 + 0.00330 * (13.13 - 9)) == pytest.approx(75.5, abs=0.01)


def test_the_lid_fits_as_the_sum_of_panels_in_grooves_has_it() -> None:
    """The sum called groove, asked for the same wood and climates, answers the same width and the same hold."""
    panel = find("groove").of(
        species="basswood-american", opening=Fraction(64), depth=Fraction(6), moisture_now=Fraction(9)
    )
    assert float(BOX.plain.values["lid_wide"]) == pytest.approx(float(panel["panel"]), rel=1e-12)
    assert float(BOX.plain.values["hold"]) == pytest.approx(float(panel["hold"]), rel=1e-12)


def test_outside_sizes_make_the_same_box() -> None:
    """224 x 88 x 58 mm over all is 200 x 64 x 34 inside."""
    over = {"length": "224 mm", "width": "88 mm", "height": "58 mm", "measured": "outside"}
    one, other = (BOX.answer(**more) for more in ({}, over))
    for name in ("inside_long", "inside_wide", "inside_high", "lid_long", "lid_wide", "wood_volume", "cost"):
        assert one[name] == other[name], name


@given(st.integers(80, 500), st.integers(50, 250), st.integers(15, 200), st.integers(8, 20), st.integers(9, 20))
def test_the_lid_runs_in_every_season(long: int, wide: int, high: int, wall: int, lid: int) -> None:
    """Whatever the sizes: the inside as asked, the lid never wider than its grooves nor out of them, over the front."""
    v = BOX.sized(length=long, width=wide, height=high, wall_thickness=wall, lid_thickness=lid)
    assert v["volume"] == long * wide * high
    grooves = wide + 2 * float(v["groove_deep"])
    damp, dry = (float(v["lid_wide"]) * (1 + float(v[name]) / 100) for name in ("swells", "shrinks"))
    assert wide < dry < damp == pytest.approx(grooves - 0.5)
    assert v["front_high"] + v["lid_thickness"] == v["side_high"]
    assert float(v["weight"]) == pytest.approx(float(v["wood_volume"]) * float(v["density"]) / 1e9)
    covered(v)


def test_across_the_grain_comes_before_along_it() -> None:
    """Every crosscut, the end rabbets and the lid's back rabbet before any ripping or ploughing."""
    tools = [row["tool"] for row in BOX.answer()["order"]]
    across = [at for at, tool in enumerate(tools) if tool in ("crosscut saw", "tenon saw, chisel")]
    assert max(across) < tools.index("rip saw, plane") < tools.index("plough plane")
    assert tools.index("rabbet plane") < tools.index("rip saw, plane")


def test_a_lid_asked_to_stand_out_is_not_planed_flush() -> None:
    """The last step planes the lid's end where its overhang has it; without one, flush."""
    flush, out = (BOX.answer(overhang=past)["order"][-1] for past in ("0 mm", "12 mm"))
    assert "flush" in flush["do"]
    assert flush["setting"] is None
    assert "flush" not in out["do"]
    assert out["setting"] == 12


def test_a_wide_bottom_is_nailed_where_it_does_not_hinder_the_wood() -> None:
    """Its grain runs back to front and it is glued to one side, so that it moves from side to side: front and back may
    hold it in the middle only. Common practice, no source."""
    told = [one.say for one in BOX.answer(width="300 mm").cautions]
    assert any("along one side and at the middle of front and back only" in say for say in told)


def test_what_is_bored_has_its_drill_beside_it() -> None:
    """The nearest drill no thicker than the hole that the table of joints has for the corners."""
    result = BOX.answer()
    (hole,) = [row["hole"] for row in result["joints"] if row["joint"] == "Sides to front and back"]
    (tool,) = [row["tool"] for row in result["order"] if "Bore and nail" in row["do"]]
    assert tool == f"drill {under(hole)[0]}; hammer, punch"
