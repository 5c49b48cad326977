"""Wall shelf: the example by another road, the beam formula, the curves as circles, and what the saw makes of it."""

import math
from fractions import Fraction
from itertools import permutations
from typing import Any

import pytest
from building import METRIC, begun, done
from drawings import nothing_cut_off, words_apart
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from randomly import cuts_of, entries, near, walked
from shapely.geometry import Point, box

import calc
from calc.bench import Bench
from calc.discover import find
from calc.errors import Refusal, Refused
from calc.gaps import gaps
from calc.piece import Piece
from calc.settle import Settled, settle
from calc.solid import volume

FOUND = find("wall-shelf")
assert isinstance(FOUND, Piece)
SHELF: Piece = FOUND
EXAMPLE = dict(SHELF.example.givens)
PLAIN = settle(SHELF, begun(SHELF, **EXAMPLE))


def sized(low: int, high: int) -> st.SearchStrategy[Fraction]:
    """Lengths in millimetres, in quarters."""
    return st.integers(low * 4, high * 4).map(lambda quarters: Fraction(quarters, 4))


SHELVES = st.fixed_dictionaries(
    {
        "stock_width": sized(100, 300),
        "stock_thickness": sized(10, 30),
        "inside_width": sized(200, 900),
        "depth": sized(100, 300),
        "drop": st.none() | sized(70, 250),
        "rise": sized(10, 150),
        "radius": sized(10, 90),
        "species": st.sampled_from(["ash-white", "oak-white", "cherry-black"]),
        "load": st.integers(1, 30).map(Fraction),
    }
)


def values(givens: dict[str, Any]) -> Any:
    """The piece's values; a shelf that cannot be built is set aside."""
    try:
        return SHELF.of(**givens)
    except Refusal:
        assume(False)
        raise


def shelf(*cuts: tuple[str, str]) -> Settled:
    """The example with these cuts."""
    return settle(SHELF, done(SHELF, begun(SHELF, **EXAMPLE), [("cut", *cut) for cut in cuts]))


def says(settled: Settled) -> list[str]:
    """What does not fit, in words."""
    return [gap.say for gap in gaps(settled)]


def test_the_example_by_hand() -> None:
    """19 mm ash, 600 between the ends, 180 deep.

    By hand: housings 19/3 deep, so the shelf is 600 + 38/3; ends 120 + 19 + 60; outside 600 + 38. The lower curve is a
    whole quarter of the saucer; above, 60 - 6 of its edge have room, and √(60² - 54²) = √684 of depth is left to it.
    Screws: 600 - 80 is 520, parted in two.
    """
    result = calc.answer("wall-shelf", METRIC, **EXAMPLE)
    assert result["shelf_long"] == 600 + Fraction(38, 3)
    assert [result[name] for name in ("end_high", "outside", "foot_deep", "screws", "screw_gap")] == [
        199, 638, 120, 3, 260,
    ]  # fmt: skip
    assert result["top_deep"] == pytest.approx(120 + math.sqrt(684))


def test_it_sags_as_the_formula_of_a_beam_says() -> None:
    """5 w L⁴ / (384 E I), Wood Handbook table 9-1 and any book of beams, by other numbers than the sum's own.

    White ash, 1.74 million psi (source S08), a psi being 6894.757 Pa; 18 kg and the board's own 600 · 180 · 19 mm at
    its answered density, spread over 600 mm; I = b h³/12. Twice that in the long run.
    """
    result = calc.answer("wall-shelf", METRIC, **EXAMPLE)
    own = 600 * 180 * 19 / 1e9 * float(result["density"])
    spread = (18 + own) * 9.80665 / 600
    sag = 5 * spread * 600**4 / (384 * 1.74 * 6894.757 * 180 * 19**3 / 12)
    assert result["sag_later"] == pytest.approx(2 * sag, rel=1e-6)
    assert result["allowed"] == Fraction(600, 384)


@given(SHELVES)
def test_what_would_do_just_does(givens: dict[str, Any]) -> None:
    """Asked again with the least thickness it stays within the limit, a hair thinner it does not."""
    v = values(givens)
    for off, over in ((1.0001, False), (0.9999, True)):
        found = values(givens | {"shelf_thickness": Fraction(v["shelf_least"] * off)})
        assert (found["sag_later"] > found["allowed"]) == over


def test_too_much_sag_is_warned_of_with_what_would_do() -> None:
    """A span of 1 m of the same board is answered, with a caution the example does not have."""
    long = calc.answer("wall-shelf", METRIC, **EXAMPLE | {"inside_width": "1 m"})
    assert long["span_most"] < 1000
    assert long["shelf_least"] > 19
    assert any("sags more than the limit" in one.say for one in long.cautions)
    assert not any("sags more" in one.say for one in calc.answer("wall-shelf", METRIC, **EXAMPLE).cautions)


@given(SHELVES)
def test_an_end_is_a_board_less_two_corners_of_a_circle(givens: dict[str, Any]) -> None:
    """Cut out of shapely's rectangle with shapely's circles, the end has the area that is answered."""
    v = values(givens)
    deep, high, radius = (float(v[name]) for name in ("depth", "end_high", "radius"))
    end = box(0, 0, deep, high)
    for name, level in (("curve_low", 0.0), ("curve_up", high)):
        along = float(v[name])
        middle = along if level == 0 else high - along
        corner = box(deep - radius, min(level, middle), deep, max(level, middle))
        end = end.difference(corner.difference(Point(deep - radius, middle).buffer(radius, quad_segs=2000)))
    assert end.area == pytest.approx(float(v["end_area"]), rel=1e-6)


@given(SHELVES)
def test_the_wood_is_that_of_its_solids_and_weighs_as_much(givens: dict[str, Any]) -> None:
    """The solids come to the volume answered, and that times the density to the weight."""
    v = values(givens)
    assert SHELF.solids
    wood = sum(volume(one) for one in SHELF.solids(v))
    assert wood == pytest.approx(float(v["wood_volume"]), rel=1e-9)
    assert float(v["weight"]) == pytest.approx(wood / 1e9 * float(v["density"]), rel=1e-9)


@given(SHELVES)
def test_the_board_to_buy_covers_the_parts(givens: dict[str, Any]) -> None:
    """Thickness by thickness, the board is at least what the parts come to."""
    v = values(givens)
    for row in v["buy"]:
        parts = [part for part in v["parts"] if part["thickness"] == row["thickness"]]
        assert row["length"] * row["width"] >= sum(part["count"] * part["length"] * part["width"] for part in parts)


def test_across_the_grain_comes_before_along_it_and_no_glue_crosses_it() -> None:
    """Crosscuts and housings stand before planes, nails after; only the shelf on its rail is glued."""
    result = calc.answer("wall-shelf", METRIC, **EXAMPLE)
    tools = [row["tool"] for row in result["order"]]
    assert max(tools.index("crosscut saw"), tools.index("tenon saw, chisel")) < tools.index("rip saw, plane")
    assert tools.index("rip saw, plane") < tools.index("hammer, punch")
    assert [row["joint"] for row in result["joints"] if row["glue"].startswith("yes")] == ["Shelf to rail"]


@pytest.mark.parametrize(
    ("entry", "field", "words"),
    [
        ({"housing_deep": "19 mm"}, "housing_deep", "as deep as the end"),
        ({"radius": "200 mm", "drop": "300 mm"}, "radius", "would leave less"),
        ({"drop": "50 mm"}, "drop", "wider than the ends reach"),
        ({"screw_in": "300 mm"}, "screw_in", "no room side by side"),
        ({"inside_width": "2.4 m", "shelf_thickness": "6 mm", "load": "200 kg"}, "inside_width", "tenth of its span"),
    ],
)
def test_what_cannot_be_built_is_refused(entry: dict[str, str], field: str, words: str) -> None:
    """Each refusal names the field to change, says what is wrong, and what to type instead."""
    with pytest.raises(Refused) as refused:
        calc.answer("wall-shelf", METRIC, **(EXAMPLE | entry))
    assert [one.field for one in refused.value.refusals] == [field]
    assert words in refused.value.refusals[0].say
    assert refused.value.refusals[0].instead


def test_a_shelf_sawn_short_brings_the_ends_nearer_until_the_rail_is_cut() -> None:
    """2 mm short: the rail follows, 598 long. With the rail sawn to 600 it stands 2 mm short in its housings."""
    short = ("shelf_long", "610 2/3 mm")
    after = shelf(short)
    assert not says(after)
    assert after.values["rail_long"] == 598
    assert says(shelf(short, ("rail_long", "600"), ("inside_width", "600"))) == [
        "The shelf is 2.00 mm short of the floors of its housings, both ends together."
    ]


def test_an_end_sawn_short_is_shorter_above_the_shelf() -> None:
    """3 mm short of 199: the rise gives way, 57 instead of 60, and the upper curve with it."""
    after = shelf(("end_high", "196"))
    assert not says(after)
    assert after.values["rise"] == 57
    assert after.values["curve_up"] == 51


def test_a_housing_cut_too_narrow_asks_for_a_thinner_shelf() -> None:
    """18.5 for a board of 19: half a millimetre off the shelf is offered, and closes it."""
    after = shelf(("housing_wide", "18.5"))
    assert says(after) == ["The end has its housing 0.50 mm narrower than the shelf is thick."]
    assert not says(shelf(("housing_wide", "18.5"), ("shelf_thickness", "18.5")))


def test_a_second_end_unlike_the_first_says_so() -> None:
    """Half a millimetre is let pass, one is not."""
    assert not says(shelf(("drop", "120"), ("second_drop", "120.4")))
    assert says(shelf(("drop", "120"), ("second_drop", "121"))) == [
        "The second end has its housing 1.00 mm higher than the first."
    ]


@settings(max_examples=30)
@given(data=st.data())
def test_anything_may_come_out_of_the_saw(data: st.DataObject) -> None:
    """Entries, sensible or not: cuts stay, all can be told, and undone to the first it is the same piece."""
    walked(SHELF, EXAMPLE, data.draw(st.lists(entries(SHELF, PLAIN), max_size=7)))


@given(data=st.data())
def test_the_order_of_entry_does_not_matter(data: st.DataObject) -> None:
    """Up to three cuts in every order give one and the same shelf."""
    chosen = data.draw(st.lists(st.sampled_from(cuts_of(SHELF)), min_size=2, max_size=3, unique=True))
    cuts = [(name, data.draw(near(SHELF, PLAIN, name))) for name in chosen]
    first, *others = [shelf(*order) for order in permutations(cuts)]
    assert all(one.givens == first.givens and says(one) == says(first) for one in others)


BENCHES = {"inch": Bench(), "mm": METRIC, "fine": Bench(mark="1/64")}
SHAPES: dict[str, dict[str, str]] = {
    "example": {},
    "long": {"inside_width": "40 in", "depth": "6 in", "stock_thickness": "1 in", "radius": "8 in", "drop": "6 in"},
    "narrow": {"inside_width": "150 mm", "depth": "400 mm", "rise": "20 mm"},
}


@pytest.mark.parametrize("bench", BENCHES.values(), ids=list(BENCHES))
@pytest.mark.parametrize("changed", SHAPES.values(), ids=list(SHAPES))
def test_the_drawing_can_be_read(changed: dict[str, str], bench: Bench) -> None:
    """No word over another, nothing cut off, and each size that can be touched is asked or answered."""
    drawn = calc.answer("wall-shelf", bench, **EXAMPLE | changed).to_dict()["figure"]
    words_apart(drawn)
    nothing_cut_off(drawn)
