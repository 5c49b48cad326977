"""Hinge: places laid out along the lid again, the gain by a circle, the screw against the wood there is."""

import re
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import Point, box
from shapely.ops import unary_union

import calc
from calc import Refused
from calc.discover import find

EXAMPLE = find("hinge").example.givens


@given(length=st.integers(150, 1500), size=st.integers(10, 120), count=st.integers(2, 6))
def test_hinges_stand_alike_from_either_end(length: int, size: int, count: int) -> None:
    """Drawn as intervals and turned end for end they are the same; none overlaps, and the gaps are equal."""
    assume(length >= (count + 2) * size)
    found = calc.answer("hinge", **{**EXAMPLE, "length": f"{length} mm", "size": f"{size} mm", "count": str(count)})
    marks = [(row["start"], row["end"]) for row in found["marks"]]
    assert [(length - b, length - a) for a, b in reversed(marks)] == marks
    assert all(b - a == size for a, b in marks)
    leaves = unary_union([box(float(a), 0, float(b), 1) for a, b in marks])
    assert leaves.area == pytest.approx(size * count)
    assert leaves.bounds[0] == pytest.approx(size)


@given(knuckle=st.integers(2, 60).map(lambda n: Fraction(n, 2)))
def test_the_knuckle_lies_half_in_the_face(knuckle: Fraction) -> None:
    """A circle resting on the bottom of the gain has half its area above the face."""
    found = calc.answer("hinge", **{**EXAMPLE, "knuckle": f"{float(knuckle)} mm", "thickness": "40 mm"})
    circle = Point(0, float(knuckle / 2 - found["gain"])).buffer(float(knuckle) / 2, 64)
    assert circle.intersection(box(-100, 0, 100, 100)).area == pytest.approx(circle.area / 2)


def test_the_first_hinge_is_its_own_length_from_the_end() -> None:
    """W. Noyes, Handwork in Wood (1910): on a box lid about the length of the hinge from the ends."""
    assert calc.answer("hinge", **EXAMPLE)["marks"][0]["start"] == 40
    assert calc.answer("hinge", **{**EXAMPLE, "inset": "25 mm"})["marks"][0]["start"] == 25


@given(thickness=st.integers(6, 60), number=st.integers(2, 10), margin=st.integers(0, 4))
def test_no_screw_comes_through(thickness: int, number: int, margin: int) -> None:
    """Leaf and wood together are longer than the screw, by the margin at least; or there is no screw."""
    more = {"thickness": f"{thickness} mm", "number": str(number), "margin": f"{margin} mm", "knuckle": "4 mm"}
    found = calc.answer("hinge", **{**EXAMPLE, **more})
    if found["screw_length"] is None:
        assert "No screw of this number" in found.text
    else:
        assert found["screw_length"] + margin <= Fraction(3, 2) + thickness - 2


def test_screws_are_those_of_the_sum_called_screw() -> None:
    """Asked for the leaf held and the wood under the gain, that sum says the same."""
    found = calc.answer("hinge", **EXAMPLE)
    there = find("screw").of(number=4, held=Fraction(3, 2), second=Fraction(27, 2), margin=Fraction(2))
    assert (found["screw_length"], found["pilot_hard"]) == (there["length"], there["pilot_hard"])


def test_without_a_number_nothing_is_said_of_screws() -> None:
    """Nothing is assumed of the holes in the leaf."""
    found = calc.answer("hinge", **{name: text for name, text in EXAMPLE.items() if name != "number"})
    assert found["screw"] is found["screw_length"] is None
    assert "brass breaks" not in found.text


def test_one_hinge_stands_in_the_middle() -> None:
    """Half of what is left at either side."""
    found = calc.answer("hinge", **{**EXAMPLE, "count": "1"})
    assert (found["inset"], found["between"]) == (112, None)


def test_one_hinge_may_stand_anywhere_on_the_lid() -> None:
    """One of 40 mm at 150 mm ends at 190 mm of 264: its inset counts once. At 224 mm it reaches the end."""
    found = calc.answer("hinge", **{**EXAMPLE, "count": "1", "inset": "150 mm"})
    assert [(row["start"], row["end"]) for row in found["marks"]] == [(150, 190)]
    with pytest.raises(Refused) as refused:
        calc.answer("hinge", **{**EXAMPLE, "count": "1", "inset": "225 mm"})
    (refusal,) = refused.value.refusals
    assert (refusal.field, refusal.instead) == ("inset", "give 224 mm or less")


@pytest.mark.parametrize(
    ("more", "field"),
    [({"inset": "110 mm"}, "inset"), ({"count": "5"}, "length"), ({"length": "50 mm", "inset": "5 mm"}, "length")],
)
def test_what_a_crowded_lid_is_told_to_type_is_enough(more: dict[str, str], field: str) -> None:
    """The size named is one for the field that is blamed, and typed there it is answered."""
    with pytest.raises(Refused) as refused:
        calc.answer("hinge", **{**EXAMPLE, **more})
    (refusal,) = refused.value.refusals
    named = re.search(r"give ([\d.]+ mm)", refusal.instead)
    assert refusal.field == field
    assert named
    assert calc.answer("hinge", **{**EXAMPLE, **more, field: named[1]})["gain"] > 0


def test_few_diameters_of_thread_in_the_wood_are_warned_of() -> None:
    """A No. 4 of 0.112 in wants 19.9 mm of thread (seven diameters, Wood Handbook 8-11): 16 mm of lid has less."""
    thin, thick = (calc.answer("hinge", **{**EXAMPLE, "thickness": size}) for size in ("16 mm", "60 mm"))
    assert float(thin["screw_into"]) < 7 * 0.112 * 25.4
    assert "Less than seven diameters" in thin.text
    assert "Less than seven diameters" not in thick.text


def test_a_leaf_thicker_than_half_its_knuckle_takes_more_wood() -> None:
    """Let in whole, 3 mm of plate leave 5 mm of 8, and the screw has no more than those."""
    found = calc.answer("hinge", **{**EXAMPLE, "plate": "3 mm", "knuckle": "4 mm", "thickness": "8 mm", "number": "2"})
    assert found["under"] == 5
    assert found["screw_into"] is None or found["screw_into"] <= 5 - 2


def test_a_thick_leaf_is_told_of() -> None:
    """Two millimetres of plate on a knuckle of three stand half a millimetre above the face."""
    found = calc.answer("hinge", **{**EXAMPLE, "plate": "2 mm", "knuckle": "3 mm"})
    assert found["stands"] == Fraction(1, 2)
    assert "will not shut" in found.text


@pytest.mark.parametrize(
    ("more", "field", "say"),
    [
        ({"knuckle": "30 mm", "thickness": "15 mm"}, "knuckle", "as deep as the wood"),
        ({"count": "5"}, "length", "side by side"),
        ({"inset": "110 mm"}, "inset", "side by side"),
    ],
)
def test_what_cannot_be_is_refused_by_name(more: dict[str, str], field: str, say: str) -> None:
    """Each refusal names the entry to change."""
    with pytest.raises(Refused, match=say) as refused:
        calc.answer("hinge", **{**EXAMPLE, **more})
    assert refused.value.refusals[0].field == field
