"""Sloping-lid box: the parts are laid together again by coordinates, and must meet without gap or overlap."""

import math
from fractions import Fraction
from itertools import combinations
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import affinity
from shapely.geometry import Point, Polygon, box
from shapely.ops import unary_union

import calc
from calc.bench import Bench
from calc.declare import Values
from calc.discover import find
from calc.errors import Refusal, Refused
from calc.trig import is_exact

BOX = find("sloping-lid-box")
EXAMPLE = dict(BOX.example.givens)
METRIC = Bench(unit="mm", mark="mm")
Shapes = dict[str, Polygon]


def sized(low: int, high: int) -> st.SearchStrategy[Fraction]:
    """Lengths in millimetres, in quarters."""
    return st.integers(low * 4, high * 4).map(lambda quarters: Fraction(quarters, 4))


THICK = sized(6, 30)
BOXES = st.fixed_dictionaries(
    {
        "stock_width": sized(90, 300),
        "stock_thickness": THICK,
        "inside_width": sized(180, 600),
        "depth": sized(110, 350),
        "front_height": sized(60, 300),
        "angle": st.integers(1, 60).map(Fraction),
        "rabbet": st.none() | sized(1, 5),
        "front_overhang": sized(0, 30),
        "side_overhang": sized(0, 30),
        "crest": sized(0, 80),
        "tail": sized(0, 80),
        "allowance": sized(0, 3),
        "kerf": sized(0, 3),
        "clearance": sized(1, 5),
        "leaf": sized(6, 20),
        "knuckle": sized(2, 6),
        "halved": st.integers(0, 2),
    },
    optional={f"{part}_thickness": THICK for part in ("side", "front", "lid", "back", "bottom", "batten")},
)


def built(givens: dict[str, Any]) -> dict[str, float]:
    """Every size as a float, the tables left out; a box that cannot be built is set aside."""
    v = values(givens)
    return {name: float(size) for name, size in v.items() if not isinstance(size, str | list) and size is not None}


def values(givens: dict[str, Any]) -> Values:
    """The piece's values; a box that cannot be built is set aside."""
    try:
        return BOX.of(back_height=None, **givens)
    except Refusal:
        assume(False)
        raise


def lid(m: dict[str, float]) -> tuple[Polygon, Any]:
    """The whole lid, from two points of the slope and no angle; where a point lies along and below its upper face."""
    fall = m["back_height"] - m["front_height"]
    long = math.hypot(m["depth"], fall)
    down, square = (m["depth"] / long, -fall / long), (fall / long, m["depth"] / long)
    crown = m["back_height"] + m["lid_thickness"] * long / m["depth"]
    end = m["depth"] + m["front_thickness"] - m["rabbet"] + m["front_overhang"]
    toe = end, m["back_height"] - end * fall / m["depth"]
    nose = toe[0] + m["lid_thickness"] * square[0], toe[1] + m["lid_thickness"] * square[1]

    def at(along: float, deep: float) -> tuple[float, float]:
        return along * down[0] - deep * square[0], crown + along * down[1] - deep * square[1]

    return Polygon([(0, m["back_height"]), toe, nose, (0, crown)]), at


def lids(m: dict[str, float]) -> Shapes:
    """The lid sawn in two: what lies before the kerf and what lies behind it, and the kerf itself."""
    whole, at = lid(m)
    far = 3 * m["lid_long"]

    def piece(begin: float, end: float) -> Polygon:
        return whole.intersection(Polygon([at(begin, -far), at(end, -far), at(end, far), at(begin, far)]))

    cut = m["strip"] + m["kerf"]
    return {"strip": piece(-far, m["strip"]), "kerf": piece(m["strip"], cut), "moving": piece(cut, far)}


def back(m: dict[str, float]) -> Polygon:
    """The back, as high as it is cut, hung by its tail."""
    return box(-m["back_thickness"], -m["tail"], 0, m["back_high"] - m["tail"])


def front(m: dict[str, float], inner: float) -> Polygon:
    """The front from a plane of it outwards, its top edge planed from the inner height to the outer."""
    face, tongue = m["depth"] + m["front_thickness"] - m["rabbet"], m["depth"] - m["rabbet"]
    slant = Polygon([(tongue, 0), (face, 0), (face, m["front_outer"]), (tongue, m["front_inner"])])
    return slant.intersection(box(inner, -1, face + 1, m["front_inner"] + 1))


def at_the_side(m: dict[str, float]) -> Shapes:
    """The box cut through one of its sides, where the front is rabbeted."""
    side = Polygon([(0, 0), (m["depth"], 0), (m["depth"], m["front_height"]), (0, m["back_height"])])
    return {"side": side, "front": front(m, m["depth"]), "back": back(m), **lids(m)}


def in_the_middle(m: dict[str, float]) -> Shapes:
    """The box cut through its middle, the bottom pushed back as far as it goes."""
    bottom = box(0, 0, m["bottom_deep"] + m["allowance"], m["bottom_thickness"])
    return {"bottom": bottom, "front": front(m, 0), "back": back(m), **lids(m)}


@given(BOXES)
def test_no_part_runs_into_another(givens: dict[str, Any]) -> None:
    """In both sections no two parts share any wood."""
    m = built(givens)
    for shapes in (at_the_side(m), in_the_middle(m)):
        for (one, first), (other, second) in combinations(shapes.items(), 2):
            assert first.intersection(second).area < 1e-6, (one, other)


@given(BOXES)
def test_parts_meet_without_a_gap(givens: dict[str, Any]) -> None:
    """Through a side, the parts and the kerf are one piece without a hole; through the middle they close one inside."""
    m = built(givens)
    solid, ring = (closed(shapes) for shapes in (at_the_side(m), in_the_middle(m)))
    assert solid.geom_type == ring.geom_type == "Polygon"
    assert not solid.interiors
    (inside,) = ring.interiors
    assert Polygon(inside).area * m["inside_width"] == pytest.approx(m["volume"], rel=1e-6)


def closed(shapes: Shapes) -> Polygon:
    """The parts as one shape; seams thinner than a millionth of a millimetre are rounding."""
    return unary_union([shape.buffer(1e-7, join_style="mitre") for shape in shapes.values() if shape.area])


@given(BOXES)
def test_the_lid_is_as_long_as_its_corners_are_apart(givens: dict[str, Any]) -> None:
    """The faces of the lid, drawn from points of the slope, are as long as answered; so are those of strip and lid."""
    m = built(givens)
    under, toe, nose, crown, *_ = list(lid(m)[0].exterior.coords)
    assert math.dist(under, toe) == pytest.approx(m["lid_under"], rel=1e-9)
    assert math.dist(crown, nose) == pytest.approx(m["lid_long"], rel=1e-9)
    assert crown[1] + m["crest"] == pytest.approx(m["back_high"] - m["tail"], rel=1e-9)
    pieces = lids(m)
    assert pieces["strip"].area == pytest.approx((m["strip"] + m["strip_under"]) / 2 * m["lid_thickness"], rel=1e-7)
    assert pieces["moving"].area == pytest.approx(m["moving"] * m["lid_thickness"], rel=1e-7)


@given(BOXES)
def test_the_front_is_bevelled_to_the_slope(givens: dict[str, Any]) -> None:
    """From the two heights of the front and its thickness comes the angle of the lid; so it does from the sides."""
    m = built(givens)
    for fall, run in (
        (m["front_inner"] - m["front_outer"], m["front_thickness"]),
        (m["back_height"] - m["front_height"], m["depth"]),
        (m["lid_bevel"], m["lid_thickness"]),
    ):
        assert math.degrees(math.atan2(fall, run)) == pytest.approx(m["angle"], abs=1e-6)


@given(BOXES)
def test_battens_swing_clear_of_the_front(givens: dict[str, Any]) -> None:
    """Turned about the pin, step by step to upright, a batten keeps its clearance from the front and hits nothing."""
    m = built(givens)
    _, at = lid(m)
    begin, high, low = m["strip"] + m["kerf"] + m["clearance"], m["lid_thickness"], m["batten_thickness"]
    end, low = begin + m["batten_long"], high + low
    batten = Polygon([at(begin, high), at(end, high), at(end, low), at(begin, low)])
    pin, stays = at(m["strip"] + m["kerf"] / 2, 0), unary_union([front(m, 0), lids(m)["strip"]])
    for turn in range(0, 91, 3):
        turned = affinity.rotate(batten, turn, origin=Point(pin))
        assert turned.distance(stays) >= m["clearance"] - 1e-6, turn


@given(BOXES)
def test_widths_add_up_across_the_box(givens: dict[str, Any]) -> None:
    """Across the front: overhangs, sides, clearances, battens and the space between; the slot midway in it."""
    m = built(givens)
    inside = m["slot_room"] + 2 * (m["batten_width"] + m["clearance"])
    assert inside == pytest.approx(m["inside_width"])
    assert inside + 2 * (m["side_thickness"] + m["side_overhang"]) == pytest.approx(m["lid_wide"])
    beside = m["slot_begins"] - m["batten_in"] - m["batten_width"]
    assert beside >= -1e-9
    assert 2 * beside + m["slot_length"] == pytest.approx(m["slot_room"])


@given(BOXES)
def test_the_slot_opens_into_the_box(givens: dict[str, Any]) -> None:
    """Cut square through the lid, the slot comes out behind the front's inner face and clear of the hinge leaf."""
    m = built(givens)
    _, at = lid(m)
    middle = m["strip"] + m["kerf"] + m["slot_down"]
    low, high = (middle + way * m["slot_width"] / 2 for way in (1, -1))
    assert at(low, m["lid_thickness"])[0] < m["depth"] - m["rabbet"]
    assert high > m["strip"] + m["kerf"] / 2 + m["leaf"] - 1e-9


@given(BOXES)
def test_every_part_can_be_cut(givens: dict[str, Any]) -> None:
    """Each part is there in every direction, its shorter face too, and no shorter than nothing."""
    for part in values(givens)["parts"]:
        for size in ("length", "width", "thickness", "count", "strips"):
            assert part[size] > 0, part
        if part["short"] is not None:
            assert 0 < part["short"] <= max(part["length"], part["width"]), part
            assert 1 <= part["bevel"] <= 60


@given(BOXES)
def test_glued_up_strips_are_wide_enough_and_not_one_too_many(givens: dict[str, Any]) -> None:
    """So many widths of stock, less what the joints take, cover the part; one fewer does not."""
    v = values(givens)
    for part in (row for row in v["parts"] if row["blank"]):
        widths = [n * v["stock_width"] - (n - 1) * v["joint"] for n in (part["strips"], part["strips"] - 1)]
        assert widths[0] >= part["width"]
        assert widths[1] < part["width"]


@given(BOXES)
def test_the_board_to_buy_covers_the_parts(givens: dict[str, Any]) -> None:
    """Face by face, thickness by thickness, the board is at least what the parts come to, and it is priced as it is."""
    v = values(givens)
    for row in v["buy"]:
        parts = [part for part in v["parts"] if part["blank"] and part["thickness"] == row["thickness"]]
        assert row["length"] * row["width"] >= sum(part["count"] * part["length"] * part["width"] for part in parts)
    inches = sum(row["thickness"] * row["width"] * row["length"] for row in v["buy"]) / Fraction("25.4") ** 3
    assert v["board_feet"] == inches / 144 * Fraction(5, 4)


@given(BOXES)
def test_nails_stay_inside_and_are_all_bought(givens: dict[str, Any]) -> None:
    """No nail is longer than the wood it is driven into, and the shopping list has every one that fits."""
    v = values(givens)
    behind = {"Battens to moving lid": v["lid_thickness"], "Back to strip, down the slope": v["strip_under"]}
    for joint in (row for row in v["joints"] if row["length"] is not None):
        assert joint["held"] < joint["length"]
        assert joint["length"] < joint["held"] + behind.get(joint["joint"], 10**4)
    fits = [row["count"] for row in v["joints"] if row["length"] is not None]
    assert sum(row["count"] for row in v["nail_list"]) == sum(fits)


@given(BOXES)
def test_nails_of_the_strip_stay_in_the_wood(givens: dict[str, Any]) -> None:
    """Through the strip, square to it, no point comes out behind the back; from the back, none through the strip."""
    v = values(givens)
    m = built(givens)
    _, at = lid(m)
    nails = {row["joint"]: row["length"] for row in v["joints"] if row["length"] is not None}
    if long := nails.get("Strip to sides"):
        assert at(m["nail_line"], float(long))[0] > -m["back_thickness"]
    if long := nails.get("Back to strip, down the slope"):
        turn = math.radians(m["angle"])
        assert float(long) - m["back_thickness"] / math.cos(turn) < m["strip_under"]


def test_across_the_grain_comes_before_along_it() -> None:
    """The rabbet and every crosscut stand before the first plane or rip saw, and nailing comes after both."""
    tools = [row["tool"] for row in calc.answer("sloping-lid-box", **EXAMPLE)["order"]]
    across = [at for at, tool in enumerate(tools) if tool in ("crosscut saw", "rabbet plane")]
    along = [at for at, tool in enumerate(tools) if tool in ("plane", "rip saw, plane", "rip saw")]
    assert max(across) < min(along)
    assert max(along) < tools.index("hammer, punch")


def test_no_glue_across_the_grain() -> None:
    """The joints that say no glue are those where the grain of the two parts crosses or one shows its end."""
    glue = {row["joint"]: row["glue"].partition(":")[0] for row in calc.answer("sloping-lid-box", **EXAMPLE)["joints"]}
    assert glue["Front to sides"] == glue["Battens to moving lid"] == glue["Strip to sides"] == "none"
    assert glue["Back to sides"] == "yes"


def test_the_example_by_hand() -> None:
    """16 mm ash, 50 in 150: worked by hand with tan 1/3 and sec √10/3."""
    result = calc.answer("sloping-lid-box", METRIC, **EXAMPLE)
    assert [result[name] for name in ("proud", "outside", "lid_wide", "bottom_deep", "bottom_wide")] == [
        8,
        232,
        244,
        141,
        199,
    ]
    assert result["front_inner"] == Fraction(518, 3)
    assert result["front_outer"] == Fraction(502, 3)
    assert result["lid_bevel"] == Fraction(16, 3)
    assert result["lid_under"] == pytest.approx(170 * math.sqrt(10) / 3)
    assert result["back_high"] == pytest.approx(40 + 220 + 16 * math.sqrt(10) / 3 + 40)
    assert result["volume"] == 200 * 142 * (Fraction(220 + Fraction(518, 3), 2) - 16)
    assert result["set_run"] == 3 * result["set_rise"]


def test_a_slope_of_three_four_five_is_exact() -> None:
    """Where the slope's own triangle is whole, so is every length: 90 in 120 makes 150."""
    entry = {"depth": "120 mm", "back_height": "250 mm", "front_height": "160 mm"}
    result = calc.answer("sloping-lid-box", METRIC, **(EXAMPLE | entry))
    assert result["lid_under"] == Fraction(120 + 8 + 12) * Fraction(5, 4) == 175
    assert result["lid_long"] == 175 + 12
    assert result["back_high"] == 40 + 250 + 16 * Fraction(5, 4) + 40
    for name in ("lid_under", "lid_long", "back_high", "front_inner", "front_outer", "volume", "bottom_deep"):
        assert is_exact(result[name]), name


@pytest.mark.parametrize(
    "heights",
    [
        {"back_height": "220 mm", "angle": "1 in 3"},
        {"front_height": "170 mm", "angle": "50 in 150"},
        {"back_height": "22 cm", "front_height": "17 cm"},
    ],
)
def test_any_two_of_heights_and_slope_give_one_box(heights: dict[str, str]) -> None:
    """Two heights, or one and the slope, say the same."""
    rest = {name: text for name, text in EXAMPLE.items() if name not in ("back_height", "front_height")}
    one, other = (calc.answer("sloping-lid-box", **rest, **told) for told in (heights, pick(EXAMPLE)))
    for name in ("back_height", "front_height", "angle", "lid_long", "back_high", "batten_long", "slot_down"):
        assert float(one[name]) == pytest.approx(float(other[name]), rel=1e-12), name


def pick(givens: dict[str, str]) -> dict[str, str]:
    """The two heights of a form."""
    return {name: givens[name] for name in ("back_height", "front_height")}


def test_inch_and_metric_benches_build_the_same_box() -> None:
    """The same measurements in inches and in millimetres give the same numbers, each printed on its own rule."""
    inches = {"stock_width": "8", "stock_thickness": "3/4", "inside_width": "10", "depth": "8", "back_height": "11"}
    metric = {"stock_width": "203,2", "stock_thickness": "19.05", "inside_width": "254", "depth": "203,2"}
    one = calc.answer("sloping-lid-box", Bench(), **inches, front_height="7 1/2")
    other = calc.answer("sloping-lid-box", METRIC, **metric, back_height="279,4", front_height="190.5")
    for name in ("lid_long", "strip", "moving", "batten_long", "volume", "board_feet"):
        assert one[name] == other[name], name
    assert "in" in one.text.splitlines()[3]
    assert "mm" in other.text.splitlines()[3]


@pytest.mark.parametrize(
    ("entry", "field", "words"),
    [
        ({"front_height": "230 mm"}, "front_height", "hardly slope"),
        ({"back_height": "600 mm"}, "front_height", "steeper than 60°"),
        ({"front_height": None, "angle": "58"}, "back_height", "no height"),
        ({"rabbet": "16 mm"}, "rabbet", "as deep as the front"),
        ({"back_height": "40 mm", "front_height": "18 mm", "bottom_thickness": "20 mm"}, "front_height", "nothing"),
        ({"depth": "60 mm", "back_height": "190 mm"}, "depth", "too short"),
        ({"depth": "100 mm", "leaf": "40 mm", "back_height": "200 mm"}, "depth", "too short to carry battens"),
        ({"inside_width": "60 mm"}, "inside_width", "no room side by side"),
        ({"inside_width": "120 mm"}, "inside_width", "the battens leave"),
        ({"stock_width": "25 mm"}, "stock_width", "too narrow"),
        ({"stock_width": "30 mm", "inside_width": "500 mm"}, "stock_width", "strips of this stock"),
        ({"note": "own"}, "note_length", "nothing is typed"),
        ({"note": "gbp-coin-1p"}, "halved", "does not fold"),
        ({"knuckle": "30 mm", "lid_thickness": "12 mm"}, "knuckle", "as deep as the lid"),
        ({"depth": "41 mm", "rabbet": "40 mm", "front_thickness": "50 mm", "back_height": "190 mm"}, "depth",
         "nothing is left for the bottom"),
    ],
)  # fmt: skip
def test_what_cannot_be_built_is_refused(entry: dict[str, str | None], field: str, words: str) -> None:
    """Each refusal names the field to change, says what is wrong, and what to type instead."""
    with pytest.raises(Refused) as refused:
        calc.answer("sloping-lid-box", METRIC, **(EXAMPLE | entry))
    (refusal,) = refused.value.refusals
    assert refusal.field == field, refusal
    assert words in refusal.say, refusal
    assert refusal.instead


@pytest.mark.parametrize(
    ("entry", "words"),
    [
        ({"stock_width": "140 mm"}, "wider than your stock"),
        ({"rabbet": "12 mm"}, "Less than 5 mm"),
        ({"batten_thickness": "6 mm", "lid_thickness": "6 mm"}, "no nail of this kind"),
        ({"depth": "105 mm", "back_height": "200 mm", "leaf": "30 mm"}, "within 10 mm of the hinge leaf"),
    ],
)
def test_what_is_unwise_is_built_and_warned_of(entry: dict[str, str], words: str) -> None:
    """The box is answered, with a caution that the example does not need."""
    assert any(words in caution.say for caution in calc.answer("sloping-lid-box", METRIC, **(EXAMPLE | entry)).cautions)
    assert not any(words in caution.say for caution in calc.answer("sloping-lid-box", METRIC, **EXAMPLE).cautions)
