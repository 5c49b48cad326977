"""Splayed tray: the example by another road, printed compound angles, the room inside, and what the saw makes of it."""

import csv
import math
from fractions import Fraction
from itertools import permutations
from pathlib import Path
from typing import Any

import manifold3d
import numpy as np
import pytest
from building import METRIC, begun, done
from drawings import nothing_cut_off, words_apart
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from randomly import cuts_of, entries, near, walked
from wood import body

import calc
from calc.backwards import backwards
from calc.bench import Bench
from calc.discover import find
from calc.errors import Refusal, Refused
from calc.gaps import gaps
from calc.piece import Piece
from calc.probe import of_piece
from calc.settle import Settled, settle
from calc.solid import volume

FOUND = find("splayed-tray")
assert isinstance(FOUND, Piece)
TRAY: Piece = FOUND
EXAMPLE = dict(TRAY.example.givens)
TABLE = Path("tests/published/data/hopper_square_box_bevels.csv")
ROWS = csv.DictReader(TABLE.read_text("utf-8").splitlines())
HOPPERS = [row for row in ROWS if 3 <= float(row["tilt_from_vertical_deg"]) <= 45]
PLAIN = settle(TRAY, begun(TRAY, **EXAMPLE))


def sized(low: int, high: int) -> st.SearchStrategy[Fraction]:
    """Lengths in millimetres, in quarters."""
    return st.integers(low * 4, high * 4).map(lambda quarters: Fraction(quarters, 4))


TRAYS = st.fixed_dictionaries(
    {
        "stock_width": sized(120, 300),
        "stock_thickness": sized(6, 20),
        "long": sized(150, 500),
        "wide": sized(150, 400),
        "height": sized(80, 160),
        "lean": st.integers(3, 40).map(Fraction),
        "corners": st.sampled_from(["butt", "mitre"]),
        "edges": st.sampled_from(["level", "square"]),
        "handles": st.sampled_from(["holes", "none"]),
        "bottom_up": sized(0, 8),
        "species": st.just("ash-white"),
    }
)


def values(givens: dict[str, Any]) -> Any:
    """The piece's values; a tray that cannot be built is set aside."""
    try:
        return TRAY.of(**givens)
    except Refusal:
        assume(False)
        raise


def tray(*cuts: tuple[str, str]) -> Settled:
    """The example with these cuts."""
    return settle(TRAY, done(TRAY, begun(TRAY, **EXAMPLE), [("cut", *cut) for cut in cuts]))


def as_worked_out(*names: str) -> list[tuple[str, str]]:
    """These parts cut just as they were worked out."""
    return [(name, f"{float(PLAIN.values[name]):.9f} mm") for name in names]


def says(settled: Settled) -> list[str]:
    """What does not fit, in words."""
    return [gap.say for gap in gaps(settled)]


def test_the_example_by_hand() -> None:
    """12 mm sides leaning 15°, 90 high, 260 by 170 on the floor, which lies 3 + 12 above the bench.

    By hand with tan 15° = 2 - √3 and cos 15° = (√6 + √2)/4: over 75 mm each side leans out by 75 (2 - √3); a side is
    12/cos 15° through, level. The ends stand between; the long sides reach over both of them.
    """
    result = calc.answer("splayed-tray", METRIC, **EXAMPLE)
    tan, cos = 2 - math.sqrt(3), (math.sqrt(6) + math.sqrt(2)) / 4
    assert result["end_side"] == pytest.approx(170 + 150 * tan)
    assert result["long_side"] == pytest.approx(260 + 150 * tan + 24 / cos)
    assert result["side_wide"] == pytest.approx(90 / cos)
    assert result["blank_wide"] == pytest.approx(90 / cos + 12 * tan)
    assert [float(result[name]) for name in ("inside_deep", "floor_up", "bottom_long", "bottom_wide")] == pytest.approx(
        [75, 15, 260, 170]
    )
    assert result["bottom_under"] == pytest.approx(260 - 24 * tan)


@pytest.mark.parametrize("row", HOPPERS, ids=lambda row: row["tilt_from_vertical_deg"])
@pytest.mark.parametrize("corners", ["butt", "mitre"])
def test_its_settings_are_those_of_a_drawn_hopper(row: dict[str, str], corners: str) -> None:
    """Face, edge and bevel as the construction of The Building Trades Pocketbook (source S23) gives them."""
    entry = {"lean": row["tilt_from_vertical_deg"], "corners": corners, "handles": "none"}
    result = calc.answer("splayed-tray", METRIC, **EXAMPLE | entry)
    edge = {"butt": "butt_off_square_deg", "mitre": "miter_off_square_deg"}[corners]
    assert float(result["face_cut"]) == pytest.approx(float(row["face_cut_off_square_deg"]), abs=0.00005)
    assert float(result["square_mark"]) == pytest.approx(float(row[edge]), abs=0.00005)
    assert float(result["dihedral"]) == pytest.approx(float(row["dihedral_between_sides_deg"]), abs=0.00005)
    if corners == "mitre":
        assert float(result["bevel"]) == pytest.approx(float(row["blade_tilt_for_miter_deg"]), abs=0.00005)


@given(TRAYS)
def test_the_room_inside_is_a_prismatoid_and_a_mesh(givens: dict[str, Any]) -> None:
    """h/6 (floor + 4 · middle + rim), and the hull that manifold3d finds about the corners of floor and rim."""
    v = values(givens)
    sizes = [[float(v[name]) for name in pair] for pair in (("long", "wide"), ("top_long", "top_wide"))]
    (long, wide), (top_long, top_wide) = sizes
    deep = float(v["inside_deep"])
    middle = (long + top_long) * (wide + top_wide) / 4
    assert deep / 6 * (long * wide + 4 * middle + top_long * top_wide) == pytest.approx(float(v["volume"]))
    corners = [
        (x * b / 2, y * a / 2, z) for (a, b), z in zip(sizes, (0, deep), strict=True) for x in (-1, 1) for y in (-1, 1)
    ]
    assert manifold3d.Manifold.hull_points(np.array(corners)).volume() == pytest.approx(float(v["volume"]), rel=1e-6)


@given(TRAYS)
def test_the_wood_is_that_of_its_solids_and_weighs_as_much(givens: dict[str, Any]) -> None:
    """The solids come to the wood answered, hand holes not taken out; times density, to the weight."""
    v = values(givens)
    assert TRAY.solids
    wood = sum(volume(one) for one in TRAY.solids(v))
    assert wood == pytest.approx(float(v["wood_volume"]), rel=1e-9)
    assert float(v["weight"]) == pytest.approx(wood / 1e9 * float(v["density"]), rel=1e-9)


@given(TRAYS)
def test_the_corners_of_neighbours_meet(givens: dict[str, Any]) -> None:
    """Of each end two faces' worth of corners lie on the long sides: no gap, and no wood in common."""
    v = values(givens)
    assert TRAY.solids
    bodies = [body(one) for one in TRAY.solids(v)]
    for at, one in enumerate(bodies):
        for other in bodies[at + 1 :]:
            assert (one ^ other).volume() < 1e-6 * min(one.volume(), other.volume())
    swelled = [one.scale([1 + 1e-6] * 3) for one in bodies]
    apart = [one.min_gap(other, 10.0) for one in swelled[:2] for other in swelled[2:]]
    assert max(apart) < 1e-3


@given(TRAYS)
def test_hand_holes_have_wood_all_round(givens: dict[str, Any]) -> None:
    """Beside a hole there are 15 mm of the inner face, and the floor lies below it."""
    v = values(givens | {"handles": "holes"})
    lean = math.radians(float(v["lean"]))
    low = float(v["hand_down"] + v["hand_wide"]) * math.cos(lean)
    there = float(v["top_wide"]) - 2 * low * math.tan(lean)
    assert there - float(v["hand_long"]) >= 30 - 1e-9
    assert float(v["inside_deep"]) - low >= 5 * math.cos(lean) - 1e-9


def test_an_outside_asked_for_is_found_backwards() -> None:
    """A maker who knows the outside at the top has the inside at the bottom worked out."""
    wanted = float(PLAIN.values["outside_long"]) + 10
    found = backwards(of_piece(PLAIN, "outside_long"), f"{wanted:.6f} mm", "long")
    assert found.reached
    assert float(found.found.value) == pytest.approx(270, abs=1e-4)


def test_across_the_grain_comes_before_along_it_and_nothing_is_glued() -> None:
    """Ends are sawn and holes bored before edges are planed, nails after; no joint of a tray holds by glue."""
    result = calc.answer("splayed-tray", METRIC, **EXAMPLE)
    tools = [row["tool"] for row in result["order"]]
    assert max(tools.index("crosscut saw"), tools.index("bit, coping saw")) < tools.index("plane, bevel gauge")
    assert tools.index("plane, bevel gauge") < tools.index("hammer, punch")
    assert all(row["glue"].startswith("none") for row in result["joints"])


@pytest.mark.parametrize(
    ("entry", "field", "words"),
    [
        ({"height": "25 mm", "bottom_up": "20 mm"}, "height", "fills all of the height"),
        ({"lean": "45", "wide": "50 mm", "bottom_thickness": "30 mm"}, "wide", "meet under the bottom"),
        ({"hand_long": "180 mm"}, "hand_long", "too short for this hand hole"),
        ({"hand_long": "20 mm"}, "hand_long", "wider than it is long"),
        ({"hand_wide": "60 mm", "hand_down": "40 mm"}, "height", "too low for hand holes"),
    ],
)
def test_what_cannot_be_built_is_refused(entry: dict[str, str], field: str, words: str) -> None:
    """Each refusal names the field to change, says what is wrong, and what to type instead."""
    with pytest.raises(Refused) as refused:
        calc.answer("splayed-tray", METRIC, **(EXAMPLE | entry))
    assert [one.field for one in refused.value.refusals] == [field]
    assert words in refused.value.refusals[0].say
    assert refused.value.refusals[0].instead


def test_a_side_sawn_short_makes_the_bottom_shorter() -> None:
    """2 mm off both long sides before the bottom is cut: the floor is 258 long, and nothing else moves."""
    after = tray(("long_side", f"{float(PLAIN.values['long_side']) - 2:.9f} mm"))
    assert not says(after)
    assert float(after.values["bottom_long"]) == pytest.approx(258, abs=1e-6)
    assert float(after.values["bottom_wide"]) == pytest.approx(170, abs=1e-6)


def test_a_bottom_planed_small_sinks_and_then_leaves_a_gap() -> None:
    """The sides nailed up, the bottom comes out 1 mm short: by hand it sinks 0.5/tan 15° = 1.866 mm of its 3, and is
    1 mm narrower too; 2 mm short it would have to sink 3.73, and only 3 are there."""
    made = as_worked_out("long_side", "end_side", "side_wide")
    after = tray(*made, ("bottom_long", "259"))
    assert not says(after)
    assert float(after.givens["bottom_up"]) == pytest.approx(3 - 0.5 / math.tan(math.radians(15)), abs=1e-4)
    assert float(after.values["bottom_wide"]) == pytest.approx(169, abs=1e-4)
    assert any("leaves gaps at the ends" in say for say in says(tray(*made, ("bottom_long", "258"))))


def test_ends_sawn_at_another_angle_make_the_sides_lean_as_they_were_sawn() -> None:
    """tan(face) = sin(lean): sawn at 14° the sides lean by asin(tan 14°) = 14.44°."""
    after = tray(("face_cut", "14°"))
    assert not says(after)
    assert float(after.givens["lean"]) == pytest.approx(math.degrees(math.asin(math.tan(math.radians(14)))), abs=1e-6)


def test_a_second_side_unlike_the_first_says_so() -> None:
    """With the first cut, 0.4 mm is let pass and 1 mm is not."""
    first = as_worked_out("long_side")
    longer = [("second_long", f"{float(PLAIN.values['long_side']) + off:.9f} mm") for off in (0.4, 1)]
    assert not says(tray(*first, longer[0]))
    assert says(tray(*first, ("long", "260"), longer[1])) == ["The second long side is 1.00 mm longer than the first."]


@settings(max_examples=25)
@given(data=st.data())
def test_anything_may_come_out_of_the_saw(data: st.DataObject) -> None:
    """Entries, sensible or not: cuts stay, all can be told, and undone to the first it is the same piece."""
    walked(TRAY, EXAMPLE, data.draw(st.lists(entries(TRAY, PLAIN), max_size=6)))


@settings(max_examples=10)
@given(data=st.data())
def test_the_order_of_entry_does_not_matter(data: st.DataObject) -> None:
    """Up to three cuts in every order give one and the same tray."""
    chosen = data.draw(st.lists(st.sampled_from(cuts_of(TRAY)), min_size=2, max_size=3, unique=True))
    cuts = [(name, data.draw(near(TRAY, PLAIN, name))) for name in chosen]
    first, *others = [tray(*order) for order in permutations(cuts)]
    assert all(one.givens == first.givens and says(one) == says(first) for one in others)


BENCHES = {"inch": Bench(), "mm": METRIC, "fine": Bench(mark="1/64")}
SHAPES: dict[str, dict[str, str]] = {
    "example": {},
    "mitred, square": {"corners": "mitre", "edges": "square", "lean": "30"},
    "long": {"long": "30 in", "wide": "8 in", "height": "4 in", "lean": "8"},
    "flat": {"long": "300 mm", "wide": "300 mm", "height": "30 mm", "lean": "45", "handles": "none"},
}


@pytest.mark.parametrize("bench", BENCHES.values(), ids=list(BENCHES))
@pytest.mark.parametrize("changed", SHAPES.values(), ids=list(SHAPES))
def test_the_drawing_can_be_read(changed: dict[str, str], bench: Bench) -> None:
    """No word over another, and nothing cut off."""
    drawn = calc.answer("splayed-tray", bench, **EXAMPLE | changed).to_dict()["figure"]
    words_apart(drawn)
    nothing_cut_off(drawn)
