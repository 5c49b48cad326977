"""Hinge-strip: the section is laid out again by coordinates, and nothing is left over or missing."""

import math
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely.geometry import Point, Polygon

import calc
from calc.declare import Values
from calc.discover import find
from calc.errors import Refusal, Refused

EXAMPLE = {"leaf": "14 mm", "knuckle": "5 mm", "angle": "1 in 3", "length": "200 mm", "thickness": "16 mm"}


def sized(low: int, high: int) -> st.SearchStrategy[Fraction]:
    """Lengths in millimetres, in quarters."""
    return st.integers(low * 4, high * 4).map(lambda quarters: Fraction(quarters, 4))


STRIPS = st.fixed_dictionaries(
    {
        "leaf": sized(5, 60),
        "knuckle": sized(1, 12),
        "angle": sized(0, 60),
        "length": sized(150, 900),
        "thickness": sized(3, 40),
        "kerf": sized(0, 4),
        "nail": sized(1, 4),
        "edge": sized(2, 8),
        "strip": st.none() | sized(20, 250),
    }
)


def answered(strip: dict[str, Fraction | None]) -> Values:
    """The sum's values; a case the sum refuses is set aside."""
    try:
        return find("hinge-strip").of(**strip)
    except Refusal:
        assume(False)
        raise


def section(v: Values) -> tuple[Polygon, Polygon]:
    """The whole lid and the strip cut from it, laid out by coordinates: the back's face is x = 0."""
    turn = math.radians(float(v["angle"]))
    down, under = (math.cos(turn), -math.sin(turn)), (-math.sin(turn), -math.cos(turn))
    thick = float(v["thickness"])

    def at(along: float, deep: float) -> tuple[float, float]:
        return along * down[0] + deep * under[0], along * down[1] + deep * under[1]

    plumb = -thick / math.cos(turn)
    lid = Polygon([(0, 0), at(float(v["length"]), 0), at(float(v["length"]), thick), (0, plumb)])
    cut = float(v["strip"])
    return lid, Polygon([(0, 0), at(cut, 0), at(cut, thick), (0, plumb)])


@given(STRIPS)
def test_the_under_face_is_what_the_bevel_leaves(strip: dict[str, Fraction | None]) -> None:
    """The strip's under face, drawn from the plumb back to the square cut, is as long as answered."""
    v = answered(strip)
    _, piece = section(v)
    corners = list(piece.exterior.coords)
    assert math.dist(corners[2], corners[3]) == pytest.approx(float(v["strip_under"]), abs=1e-6)


@given(STRIPS)
def test_strip_kerf_and_moving_lid_use_up_the_lid(strip: dict[str, Fraction | None]) -> None:
    """By area: what the strip leaves of the whole section is the kerf and the moving lid, each as thick as the lid."""
    v = answered(strip)
    lid, piece = section(v)
    left = float((v["moving"] + v["kerf"]) * v["thickness"])
    assert lid.difference(piece).area == pytest.approx(left, rel=1e-9)
    assert piece.difference(lid).area == pytest.approx(0, abs=1e-6)


@given(STRIPS)
def test_a_nail_keeps_its_distance_from_every_edge(strip: dict[str, Fraction | None]) -> None:
    """Driven square to the face, the nail keeps its edge distance from back and cut all the way through."""
    v = answered(strip)
    turn, thick = math.radians(float(v["angle"])), float(v["thickness"])
    line, room = float(v["nail_line"]), float(v["edge"] * v["nail"])
    assume(v["strip"] >= v["least"])
    for deep in (0, thick):
        along_the_face = line - deep * math.tan(turn)
        assert along_the_face >= room - 1e-6
        assert float(v["strip"]) - line >= room - 1e-6


@given(STRIPS)
def test_the_hinge_clears_the_nail_head_and_ends_on_the_wood(strip: dict[str, Fraction | None]) -> None:
    """On a strip wide enough the leaf stops one and a half diameters short of the nail; it always ends on the strip."""
    v = answered(strip)
    pin = float(v["strip"] + v["kerf"] / 2)
    leaf_end = pin - float(v["leaf"])
    assert -1e-9 <= leaf_end <= float(v["strip"])
    if v["strip"] >= v["least"]:
        assert leaf_end - float(v["nail_line"]) >= 1.5 * float(v["nail"]) - 1e-6


@given(STRIPS)
def test_half_the_knuckle_puts_the_pin_level_with_the_faces(strip: dict[str, Fraction | None]) -> None:
    """A barrel resting on the bottom of the gain has its middle on the line of the upper faces."""
    v = answered(strip)
    barrel = Point(0, float(v["knuckle"]) / 2 - float(v["gain"])).buffer(float(v["knuckle"]) / 2, 256)
    assert barrel.centroid.y == pytest.approx(0, abs=1e-9)
    assert barrel.bounds[1] == pytest.approx(-float(v["gain"]), rel=1e-3)


def test_a_level_lid_is_answered_exactly() -> None:
    """Without a slope there is no tangent, and every answer stays a Fraction."""
    result = calc.answer("hinge-strip", **(EXAMPLE | {"angle": "0"}))
    assert [result[name] for name in ("strip", "strip_under", "moving", "gain")] == [
        Fraction(105, 4),
        Fraction(105, 4),
        Fraction(689, 4),
        Fraction(5, 2),
    ]


def test_a_level_lid_of_the_example_by_hand() -> None:
    """1 in 3 on 16 mm takes 5 1/3 mm: 13.25 of leaf, 3 of head, 10 of edge and that make 31.58 mm (worked by hand)."""
    result = calc.answer("hinge-strip", **EXAMPLE)
    assert float(result["strip"]) == pytest.approx(13.25 + 3 + 10 + 16 / 3, abs=1e-9)
    assert float(result["strip_under"]) == pytest.approx(26.25, abs=1e-9)
    assert float(result["moving"]) == pytest.approx(200 - 1.5 - 31.583333333, abs=1e-6)


@pytest.mark.parametrize(
    ("entry", "field", "words"),
    [
        ({"strip": "10 mm"}, "strip", "leaf is wider"),
        ({"strip": "20 mm"}, "strip", "no place for a nail"),
        ({"length": "44 mm"}, "length", "too short"),
        ({"knuckle": "12 mm", "thickness": "6 mm"}, "knuckle", "as deep as the lid"),
        ({"angle": "70"}, "angle", "too large"),
    ],
)
def test_what_cannot_be_made_is_refused(entry: dict[str, str], field: str, words: str) -> None:
    """Each refusal names its field, says what is wrong and what to type instead."""
    with pytest.raises(Refused) as refused:
        calc.answer("hinge-strip", **(EXAMPLE | entry))
    (refusal,) = refused.value.refusals
    assert refusal.field == field
    assert words in refusal.say
    assert refusal.instead


def test_what_a_refusal_asks_for_is_then_accepted() -> None:
    """The widths and lengths named in the refusals are rounded up, so that typing them is enough."""
    assert calc.answer("hinge-strip", **(EXAMPLE | {"strip": "25.4 mm"}))["strip"] == Fraction(254, 10)
    with pytest.raises(Refused, match=r"give 25\.4 mm or more"):
        calc.answer("hinge-strip", **(EXAMPLE | {"strip": "24 mm"}))


@pytest.mark.parametrize(
    ("entry", "words"),
    [({"strip": "28 mm"}, "nails land under the leaf"), ({"thickness": "4 mm"}, "more than half the lid's thickness")],
)
def test_what_is_unwise_is_answered_with_a_caution(entry: dict[str, str], words: str) -> None:
    """A strip too narrow for leaf and nails, or a gain too deep, is answered and warned of."""
    result = calc.answer("hinge-strip", **(EXAMPLE | entry))
    assert any(words in caution.say for caution in result.cautions)
    assert not any(words in caution.say for caution in calc.answer("hinge-strip", **EXAMPLE).cautions)
