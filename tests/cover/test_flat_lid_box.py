"""The flat-lid box: worked by hand, kept true while it is built, and laid together again by its sizes."""

import math
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

FOUND = find("flat-lid-box")
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
    """220 x 140 x 60 mm inside, of 12 mm ash, on paper.

    Rabbets 6 deep. Front and back 12 + 220 + 12 = 244; sides 6 + 140 + 6 = 152, so the box is 152 + 2 x 6 = 164 deep.
    Walls 12 + 60 = 72 high. Lid 244 + 12 = 256 by 164 + 12 = 176. Battens 140 - 4 = 136 long, 216 over both, so
    (256 - 216) / 2 = 20 in from the ends. Bottom 220 + 12 - 1 = 231 long; across it is 151 mm at its dampest.
    """
    result = calc.answer("flat-lid-box", METRIC, **EXAMPLE)
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
    result = calc.answer("flat-lid-box", METRIC, **EXAMPLE)
    assert float(result["bottom_across"]) * (1 + 0.00274 * (13.13 - 9)) == pytest.approx(151, abs=0.01)


def test_outside_sizes_make_the_same_box() -> None:
    """244 x 164 x 84 mm over all is 220 x 140 x 60 inside."""
    over = {"width": "244 mm", "depth": "164 mm", "height": "84 mm", "measured": "outside"}
    one, other = (calc.answer("flat-lid-box", METRIC, **(EXAMPLE | more)) for more in ({}, over))
    for name in ("inside_wide", "inside_deep", "inside_high", "lid_long", "lid_wide", "wood_volume", "cost"):
        assert one[name] == other[name], name


@given(st.integers(120, 600), st.integers(80, 400), st.integers(20, 300), st.integers(8, 25), st.integers(6, 20))
def test_the_room_is_what_was_asked_and_the_lid_covers_it(wide: int, deep: int, high: int, wall: int, lid: int) -> None:
    """Whatever the sizes, the inside is as asked, the lid even all round, the parts within the stock and the weight."""
    sizes = {"width": wide, "depth": deep, "height": high, "wall_thickness": wall, "lid_thickness": lid}
    v = BOX.of(**{**_plain(), **{name: Fraction(size) for name, size in sizes.items()}})
    assert v["volume"] == wide * deep * high
    assert v["lid_long"] - v["outside_wide"] == v["lid_wide"] - v["outside_deep"] == 12
    assert v["batten_long"] + 2 * v["clearance"] == deep
    assert v["bottom_across"] < v["side_long"]
    assert float(v["weight"]) == pytest.approx(float(v["wood_volume"]) * float(v["density"]) / 1e9)
    for row in v["buy"]:
        parts = [part for part in v["parts"] if part["thickness"] == row["thickness"]]
        assert row["length"] * row["width"] >= sum(part["count"] * part["length"] * part["width"] for part in parts)


def _plain() -> dict[str, Any]:
    """The example as numbers, what is not given left to its default."""
    return {name: PLAIN.asked[name] for name in EXAMPLE}


def test_a_box_that_came_out_narrower_has_its_lid_follow() -> None:
    """Front cut to 242 mm instead of 244: inside 218, lid 254, bottom 229, battens 214 over all."""
    after = box(("front_long", "242"))
    assert not says(after)
    assert [after.values[name] for name in ("inside_wide", "lid_long", "bottom_long", "battens_over")] == [
        218, 254, 229, 214,
    ]  # fmt: skip
    assert after.took == {"width": "front_long"}


def test_a_lid_cut_already_hangs_less_far_over_and_then_leaves_the_sides_bare() -> None:
    """Lid 256 on a box of 250: 3 mm each end. On a box of 260 nothing hangs over, and 4 mm are missing."""
    assert box(("front_long", "250"), ("lid_long", "256")).values["end_overhang"] == 3
    after = box(("front_long", "260"), ("lid_long", "256"))
    assert says(after) == ["The lid leaves 4.00 mm of the sides bare, both together."]


def test_battens_on_the_lid_use_up_their_clearance_and_are_then_too_long() -> None:
    """136 mm long in 138 mm: 1 mm each end. In 136 mm the least, 0.5 mm each end, is 1 mm too much."""
    assert box(("side_long", "150"), ("batten_long", "136")).values["clearance"] == 1
    after = box(("side_long", "148"), ("batten_long", "136"))
    assert says(after) == ["The batten is 1.00 mm too long to go in between front and back."]


def test_walls_of_unlike_height_are_told() -> None:
    """A tenth is let pass, half a millimetre is not."""
    first = ("front_high", "72")
    assert not says(box(first, ("back_high", "71.9")))
    after = box(first, ("back_high", "71.5"))
    assert says(after) == ["The back is 0.50 mm less than the other."]
    assert [one.fits for one in alike(after)] == [False, True, True]


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


def test_across_the_grain_comes_before_along_it_and_no_glue_crosses_it() -> None:
    """Crosscuts and the corner rabbets before any ripping; battens and the bottom's ends are not glued."""
    result = calc.answer("flat-lid-box", METRIC, **EXAMPLE)
    tools = [row["tool"] for row in result["order"]]
    assert max(at for at, tool in enumerate(tools) if tool == "crosscut saw") < tools.index("rip saw, plane")
    assert tools.index("rabbet plane") < tools.index("rip saw, plane")
    glue = {row["joint"]: row["glue"].partition(":")[0] for row in result["joints"]}
    assert glue["Battens to lid"] == glue["Bottom to sides"] == "none"


def test_a_slot_lets_the_lid_move_as_far_as_it_goes_there() -> None:
    """The end screws of a 136 mm batten stand 68 - 25 = 43 mm from the middle: the lid goes 43/176 of its own way."""
    v = PLAIN.values
    assert v["slot_long"] == pytest.approx(0.138 * 25.4 + 2 * float(v["lid_moves"]) * 43 / 176)
    assert not math.isclose(float(v["lid_moves"]), 0)


@pytest.mark.parametrize(
    ("entry", "field", "words"),
    [
        ({"rabbet": "12 mm"}, "rabbet", "as deep as the walls"),
        ({"allowance": "10 mm", "rabbet": "4 mm"}, "rabbet", "not reach its rabbets"),
        ({"depth": "25 mm"}, "depth", "shorter than they are wide"),
        ({"width": "60 mm"}, "width", "no room side by side"),
        ({"height": "21 mm", "measured": "outside"}, "height", "too small"),
        ({"stock_width": "25 mm"}, "stock_width", "too narrow"),
        ({"humidity_dry": "80"}, "humidity_dry", "damper than the dampest"),
        ({"species": "own"}, "shrinkage", "another wood is chosen"),
    ],
)
def test_what_cannot_be_built_is_refused(entry: dict[str, str], field: str, words: str) -> None:
    """Each refusal names the field to change, and says what is wrong."""
    with pytest.raises(Refused) as refused:
        calc.answer("flat-lid-box", METRIC, **(EXAMPLE | entry))
    (refusal,) = refused.value.refusals
    assert (refusal.field, words in refusal.say) == (field, True), refusal
