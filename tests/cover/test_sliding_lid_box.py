"""The sliding-lid box: worked by hand, kept true while it is built, its lid moved through the seasons."""

from fractions import Fraction
from itertools import permutations
from typing import Any

import pytest
from building import METRIC, begun, done, numbers
from hypothesis import given, settings
from hypothesis import strategies as st
from randomly import cuts_of, entries, near, walked

import calc
from calc.discover import find
from calc.errors import Refused
from calc.gaps import alike, gaps
from calc.piece import Piece
from calc.settle import Settled, settle

FOUND = find("sliding-lid-box")
assert isinstance(FOUND, Piece)
BOX: Piece = FOUND
EXAMPLE = dict(BOX.example.givens)
PLAIN = settle(BOX, begun(BOX, **EXAMPLE))
CUTS = [name for name in cuts_of(BOX) if BOX.sizes[name].kind == "length"]


def box(*cuts: tuple[str, str]) -> Settled:
    """The example with these cuts."""
    return settle(BOX, done(BOX, begun(BOX, **EXAMPLE), [("cut", *cut) for cut in cuts]))


def says(settled: Settled) -> list[str]:
    """What does not fit, in words."""
    return [gap.say for gap in gaps(settled)]


def plain(settled: Settled) -> dict[str, Any]:
    """The sizes and givens alone."""
    return {name: one for name, one in numbers(settled).items() if name in BOX.labels}


def test_the_example_by_hand() -> None:
    """200 x 64 x 34 mm inside, of 12 mm lime, on paper.

    Rabbets and grooves 6 deep. Sides 12 + 200 + 12 = 224; front and back 6 + 64 + 6 = 76; over the sides 88. Sides
    12 + 34 + 12 = 58 high, the front 12 + 34 = 46, so 6 of groove and 6 of lip are left above it. Lid from 1 mm short
    of the back's groove, 5 mm inside the back, over 200 and over 12 of front: 217. Its edges 5.5 thick, so 6.5 deep.
    """
    result = calc.answer("sliding-lid-box", METRIC, **EXAMPLE)
    names = ("side_long", "front_long", "outside_wide", "side_high", "front_high", "lip", "lid_long", "volume")
    assert [result[name] for name in names] == [224, 76, 88, 58, 46, 6, 217, 200 * 64 * 34]
    assert [result[name] for name in ("lid_tongue", "lid_step", "lid_rabbet", "notch_deep")] == [5.5, 6.5, 6.5, 3]


def test_the_lid_swells_by_the_handbook_s_coefficient() -> None:
    """Basswood, flat-sawn: 0.00330 of its width for each percent (Wood Handbook, table 13-5), from 9 to 13.13 %.

    76 mm from groove to groove less half a millimetre. 13.13 % is equation 4-5 at 20 °C and 70 %: table 4-2 has 13.1.
    """
    result = calc.answer("sliding-lid-box", METRIC, **EXAMPLE)
    assert float(result["lid_wide"]) * (1 + 0.00330 * (13.13 - 9)) == pytest.approx(75.5, abs=0.01)


def test_the_lid_fits_as_the_sum_of_panels_in_grooves_has_it() -> None:
    """The sum called groove, asked for the same wood and climates, answers the same width and the same hold."""
    panel = find("groove").of(
        species="basswood-american", opening=Fraction(64), depth=Fraction(6), moisture_now=Fraction(9)
    )
    assert float(PLAIN.values["lid_wide"]) == pytest.approx(float(panel["panel"]), rel=1e-12)
    assert float(PLAIN.values["hold"]) == pytest.approx(float(panel["hold"]), rel=1e-12)


def test_outside_sizes_make_the_same_box() -> None:
    """224 x 88 x 58 mm over all is 200 x 64 x 34 inside."""
    over = {"length": "224 mm", "width": "88 mm", "height": "58 mm", "measured": "outside"}
    one, other = (calc.answer("sliding-lid-box", METRIC, **(EXAMPLE | more)) for more in ({}, over))
    for name in ("inside_long", "inside_wide", "inside_high", "lid_long", "lid_wide", "wood_volume", "cost"):
        assert one[name] == other[name], name


@given(st.integers(80, 500), st.integers(50, 250), st.integers(15, 200), st.integers(8, 20), st.integers(9, 20))
def test_the_lid_runs_in_every_season(long: int, wide: int, high: int, wall: int, lid: int) -> None:
    """Whatever the sizes: the inside as asked, the lid never wider than its grooves nor out of them, over the front."""
    sizes = {"length": long, "width": wide, "height": high, "wall_thickness": wall, "lid_thickness": lid}
    given = {name: PLAIN.asked[name] for name in EXAMPLE} | {name: Fraction(size) for name, size in sizes.items()}
    v = BOX.of(**given)
    assert v["volume"] == long * wide * high
    grooves = wide + 2 * float(v["groove_deep"])
    damp, dry = (float(v["lid_wide"]) * (1 + float(v[name]) / 100) for name in ("swells", "shrinks"))
    assert wide < dry < damp == pytest.approx(grooves - 0.5)
    assert v["front_high"] + v["lid_thickness"] == v["side_high"]
    assert float(v["weight"]) == pytest.approx(float(v["wood_volume"]) * float(v["density"]) / 1e9)
    for row in v["buy"]:
        parts = [part for part in v["parts"] if part["thickness"] == row["thickness"]]
        assert row["length"] * row["width"] >= sum(part["count"] * part["length"] * part["width"] for part in parts)


def test_a_box_that_came_out_narrower_has_its_lid_follow() -> None:
    """Front cut to 75 mm instead of 76: the lid is narrower by 1 mm less what it swells."""
    after = box(("front_long", "75"))
    assert not says(after)
    swelled = 1 + float(PLAIN.values["swells"]) / 100
    assert float(after.values["lid_wide"]) == pytest.approx(74.5 / swelled)


def test_a_lid_cut_already_uses_up_its_room_and_then_binds() -> None:
    """75.5 mm at the dampest: in 75.7 mm it leaves 0.2; in 74.5 mm it is 1 mm too wide then, 0.99 now."""
    lid = ("lid_wide", f"{float(PLAIN.values['lid_wide']):.9f} mm")
    assert float(box(("front_long", "75.7"), lid).values["spare"]) == pytest.approx(0.2, abs=1e-6)
    assert says(box(("front_long", "74.5"), lid)) == ["The lid is 0.99 mm too wide, and binds in damp weather."]


def test_a_lid_too_long_uses_its_clearance_and_then_stands_over() -> None:
    """217.5 leaves half a millimetre at the back; 220 leaves none and stands 2 mm over the front."""
    assert box(("lid_long", "217.5")).values["end_clearance"] == Fraction(1, 2)
    after = box(("lid_long", "220"))
    assert (after.values["end_clearance"], after.values["overhang"]) == (0, 2)
    assert not says(after)


def test_a_lid_too_short_for_a_box_that_stands_leaves_a_gap() -> None:
    """Four millimetres of clearance are the most: 217 + 1 - 4 = 214, and 213 leaves 1 mm at the front."""
    assert says(box(("side_long", "224"), ("lid_long", "213"))) == ["The lid leaves a gap of 1.00 mm at the front."]


def test_a_groove_ploughed_too_low_lowers_the_front_that_is_open() -> None:
    """7 mm down instead of 6: the lid lies 1 mm below the top, and all stands 1 mm higher to keep the room."""
    after = box(("lip", "7"))
    assert not says(after)
    assert [after.values[name] for name in ("sunk", "side_high", "front_high", "back_lip")] == [1, 59, 46, 7]


def test_grooves_that_do_not_meet_are_told() -> None:
    """A tenth is let pass, half a millimetre is not."""
    first = ("lip", "6")
    assert not says(box(first, ("second_lip", "6.1")))
    after = box(first, ("second_lip", "6.5"))
    assert says(after) == ["The second side has its groove 0.50 mm more than the other."]
    assert [one.fits for one in alike(after)] == [True, False, True, True]


def test_where_everything_was_cut_as_worked_out_everything_fits() -> None:
    """Every part recorded at its size, to a millionth: no gap, all alike."""
    after = box(*((name, f"{float(PLAIN.values[name]):.9f} mm") for name in CUTS))
    assert not says(after)
    assert all(one.fits for one in alike(after))


@settings(max_examples=40)
@given(data=st.data())
def test_anything_may_come_out_of_the_saw(data: st.DataObject) -> None:
    """Entries, sensible or not: cuts stay, all can be told, and undone to the first it is the same piece."""
    walked(BOX, EXAMPLE, data.draw(st.lists(entries(BOX, PLAIN), max_size=7)))


@settings(max_examples=30)
@given(data=st.data())
def test_the_order_of_entry_does_not_matter(data: st.DataObject) -> None:
    """Three cuts in every order give one and the same box."""
    chosen = data.draw(st.lists(st.sampled_from(CUTS), min_size=2, max_size=3, unique=True))
    cuts = [(name, data.draw(near(BOX, PLAIN, name))) for name in chosen]
    settled = [box(*order) for order in permutations(cuts)]
    assert all(plain(one) == plain(settled[0]) for one in settled)
    assert all(says(one) == says(settled[0]) for one in settled)


def test_across_the_grain_comes_before_along_it() -> None:
    """Every crosscut, the end rabbets and the lid's back rabbet before any ripping or ploughing."""
    tools = [row["tool"] for row in calc.answer("sliding-lid-box", METRIC, **EXAMPLE)["order"]]
    across = [at for at, tool in enumerate(tools) if tool in ("crosscut saw", "tenon saw, chisel")]
    assert max(across) < tools.index("rip saw, plane") < tools.index("plough plane")
    assert tools.index("rabbet plane") < tools.index("rip saw, plane")


@pytest.mark.parametrize(
    ("entry", "field", "words"),
    [
        ({"rabbet": "12 mm"}, "rabbet", "as deep as the walls"),
        ({"groove": "12 mm"}, "groove", "above the grooves"),
        ({"groove_deep": "12 mm"}, "groove_deep", "as deep as the walls"),
        ({"groove": "2 mm", "play": "2 mm"}, "play", "lid's edge"),
        ({"groove_deep": "1 mm", "spare": "2 mm"}, "groove_deep", "leave its grooves"),
        ({"length": "30 mm", "measured": "outside"}, "length", "too small"),
        ({"species": "own"}, "shrinkage", "another wood is chosen"),
    ],
)
def test_what_cannot_be_built_is_refused(entry: dict[str, str], field: str, words: str) -> None:
    """Each refusal names the field to change, and says what is wrong."""
    with pytest.raises(Refused) as refused:
        calc.answer("sliding-lid-box", METRIC, **(EXAMPLE | entry))
    (refusal,) = refused.value.refusals
    assert (refusal.field, words in refusal.say) == (field, True), refusal
