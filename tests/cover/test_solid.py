"""Solids: closed, the right way out, of the volume that their measures give, and where they are put."""

from collections import Counter
from fractions import Fraction

import pytest

from calc.drawing.solid import Solid, block, moved, prism, volume

UP = (0.0, 0.0, 1.0)
ELL = [(0, 0), (30, 0), (30, 10), (10, 10), (10, 20), (0, 20)]


def edges(solid: Solid) -> Counter[tuple]:
    """Every edge as its faces run along it, from corner to corner."""
    return Counter(edge for face in solid.faces for edge in zip(face, [*face[1:], face[0]], strict=True))


@pytest.mark.parametrize("axis", "xyz")
@pytest.mark.parametrize("outline", [ELL, ELL[::-1]], ids=["one way round", "the other"])
def test_a_prism_has_the_volume_of_its_outline_times_its_length(axis: str, outline: list) -> None:
    """An L of 400 square millimetres, 50 long, whichever way its outline runs and whichever axis it lies along."""
    assert volume(prism("Rail", outline, axis, -20, 30, UP)) == pytest.approx(400 * 50, rel=1e-12)


@pytest.mark.parametrize("axis", "xyz")
def test_a_prism_is_closed(axis: str) -> None:
    """Each edge is run along once either way, so that no face is missing and all look outwards."""
    found = edges(prism("Rail", ELL, axis, 0, 50, UP))
    assert set(found.values()) == {1}
    assert all((b, a) in found for a, b in found)


def test_a_sloping_end_is_the_mean_of_its_heights() -> None:
    """A side 100 deep and 10 thick, 80 high at the back and 50 at the front: 100 x 10 x 65."""
    side = prism("Side", [(0, 0), (100, 0), (100, 10), (0, 10)], "z", 0, lambda x, y: 80 - 0.3 * x, UP)
    assert volume(side) == pytest.approx(65_000, rel=1e-12)


def test_a_block_stands_between_its_corners() -> None:
    """From its lowest corner to its highest, exact sizes taken as they are."""
    found = block("Bottom", (0, Fraction(1, 2), 0), (100, 200, 12), UP)
    assert {x for face in found.faces for x, _, _ in face} == {0.0, 100.0}
    assert {y for face in found.faces for _, y, _ in face} == {0.5, 200.0}
    assert volume(found) == pytest.approx(100 * 199.5 * 12, rel=1e-12)


def test_the_axes_make_a_right_handed_frame() -> None:
    """The face to the front, where x is greatest, runs from left to right along its lower edge, as seen from there."""
    front = next(face for face in block("Bit", (0, 0, 0), (1, 2, 3), UP).faces if all(x == 1 for x, _, _ in face))
    start = front.index((1.0, 0.0, 0.0))
    assert front[(start + 1) % 4] == (1.0, 2.0, 0.0)


def test_a_solid_moved_is_the_same_wood_elsewhere() -> None:
    """Its volume stays, each corner goes the whole way."""
    found = moved(block("Bit", (0, 0, 0), (1, 2, 3), UP), (1000, -50, 7))
    assert volume(found) == pytest.approx(6, rel=1e-9)
    assert max(x for face in found.faces for x, _, _ in face) == 1001
    assert min(y for face in found.faces for _, y, _ in face) == -50


def test_a_solid_inside_out_has_a_volume_below_nought() -> None:
    """So that a low end above the high one is found."""
    assert volume(block("Bit", (0, 0, 3), (1, 2, 0), UP)) < 0
