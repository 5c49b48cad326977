"""Boxes drawn by a geometry library about their contents, and capacities by pint's own registry."""

from fractions import Fraction

import pint
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import box

import calc
from calc import Bench, Refused

NAMES = ("length", "width", "height")
SIZES = st.tuples(*[st.integers(20, 900)] * 3)
WALLS = st.integers(2, 30)
AIRS = st.integers(0, 12)


def boxed(known: str, sizes: tuple[int, ...], thickness: int, **more: object) -> calc.Result:
    """A box from three sizes in millimetres; other entries in millimetres too."""
    texts = {name: f"{size} mm" for name, size in zip(NAMES, sizes, strict=True)}
    others = {name: f"{size} mm" for name, size in more.items()}
    return calc.answer("inside-out", known=known, thickness=f"{thickness} mm", **texts, **others)


def told(answer: calc.Result, what: str) -> list[Fraction]:
    """The three sizes of the outside, the inside or the contents."""
    return [answer[f"{what}_{name}"] for name in NAMES]


@given(sizes=SIZES, thickness=WALLS, air=AIRS, top=AIRS, bottom=WALLS, lid=AIRS)
def test_walls_are_drawn_about_the_contents(
    sizes: tuple[int, ...], thickness: int, air: int, top: int, bottom: int, lid: int
) -> None:
    """From above, shapely swells the contents by the clearance, then by the wood; upright, the layers are stacked."""
    answer = boxed("contents", sizes, thickness, clearance=air, headroom=top, bottom=bottom, lid=lid)
    inside = box(0, 0, sizes[0], sizes[1]).buffer(air, join_style="mitre")
    outside = inside.buffer(thickness, join_style="mitre")
    for what, shape in (("inside", inside), ("outside", outside)):
        left, foot, right, head = shape.bounds
        assert (float(answer[f"{what}_length"]), float(answer[f"{what}_width"])) == pytest.approx(
            (right - left, head - foot)
        )
    assert answer["outside_height"] == sum((bottom, sizes[2], top, lid))


@given(sizes=SIZES, thickness=WALLS, air=AIRS, top=AIRS, lid=AIRS)
def test_outwards_and_back_again_is_the_same_box(
    sizes: tuple[int, ...], thickness: int, air: int, top: int, lid: int
) -> None:
    """The outside answered, typed in as what is known, leads back to the same inside and the same contents."""
    first = boxed("contents", sizes, thickness, clearance=air, headroom=top, lid=lid)
    for known in ("inside", "outside"):
        again = boxed(known, told(first, known), thickness, clearance=air, headroom=top, lid=lid)
        assert told(again, "inside") == told(first, "inside")
        assert told(again, "contents") == list(sizes)
        assert again["capacity"] == first["capacity"]


@given(sizes=SIZES)
def test_it_holds_what_the_units_library_says(sizes: tuple[int, ...]) -> None:
    """The inside's volume in litres and cubic inches, by pint's own registry."""
    quantity = pint.get_application_registry().Quantity
    answer = boxed("inside", sizes, 10)
    volume = quantity(1.0, "mm^3") * float(answer["capacity"])
    shown = calc.cells.printed(next(a for a in answer.answers if a.name == "capacity"), answer["capacity"], Bench())
    inches, other = float(shown.text.split()[0]), shown.also.split()
    assert inches == pytest.approx(volume.to("inch^3").magnitude, rel=0.006, abs=0.5)
    assert float(other[0]) == pytest.approx(volume.to(other[1]).magnitude, rel=0.006)


def test_one_litre_is_a_cube_of_a_hand_s_breadth() -> None:
    """100 mm each way inside: exactly a litre, 61.0 cubic inches."""
    answer = boxed("inside", (100, 100, 100), 12)
    assert answer["capacity"] == 10**6
    assert "Capacity: 61 in³ (1 l)" in answer.text


def test_a_bottom_is_as_thick_as_the_sides_unless_it_is_told() -> None:
    """An empty field is not a bottom of nothing; an empty lid is none."""
    plain, thin = boxed("inside", (100, 100, 100), 12), boxed("inside", (100, 100, 100), 12, bottom=0)
    assert (plain["outside_height"], thin["outside_height"]) == (112, 100)


@given(sizes=st.tuples(*[st.integers(20, 80)] * 3), thickness=st.integers(15, 40))
def test_walls_that_leave_nothing_are_refused_by_name(sizes: tuple[int, ...], thickness: int) -> None:
    """The side that is too small for the wood is the one named, and nothing at all inside is refused as well."""
    small = [name for name, size in zip(NAMES, sizes, strict=True) if size <= 2 * thickness]
    assume(small)
    with pytest.raises(Refused, match="all of it") as refused:
        boxed("outside", sizes, thickness, lid=thickness)
    assert refused.value.refusals[0].field == small[0]


def test_no_contents_are_told_where_none_fit() -> None:
    """A slit of 4 mm has no room for 3 mm of air on each side: the inside is told, the contents are not."""
    answer = boxed("inside", (100, 4, 50), 10, clearance=3)
    assert answer["contents_length"] is answer["contents_width"] is None
    assert answer.cautions
    assert not boxed("inside", (100, 40, 50), 10, clearance=3).cautions


def test_what_the_walls_take_too_much_is_said_in_both_units() -> None:
    """By hand: twice 16 mm is 6.6 mm more than an inch, 0.26 in."""
    with pytest.raises(Refused, match=r"all of it, and 6\.6 mm, 0\.26 in more"):
        calc.answer("inside-out", known="outside", length="1 in", width="5 in", height="5 in", thickness="16 mm")
