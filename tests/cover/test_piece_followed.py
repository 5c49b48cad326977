"""A size that follows another cut, sawn just as it is told, fits; and what is advised does what it says.

The sizes are those of the examples; that a part made to the size asked for must fit is common practice, no source.
"""

from typing import Any

import pytest
from test_piece_advice import example

from calc.building.contest import contested
from calc.building.gaps import Gap, gaps

FOLLOWED = [
    ("flat-lid-box", ("front_long", "245.5 mm"), "bottom_long"),
    ("flat-lid-box", ("back_long", "242.8 mm"), "bottom_long"),
    ("sliding-lid-box", ("side_long", "-1.2"), "bottom_long"),
    ("sloping-lid-box", ("front_long", "+1.2"), "bottom_wide"),
    ("sloping-lid-box", ("back_wide", "-1.2"), "bottom_wide"),
]


@pytest.mark.parametrize(("piece", "cut", "follower"), FOLLOWED)
def test_a_bottom_cut_as_it_is_told_fits(piece: str, cut: tuple[str, str], follower: str) -> None:
    """A wall came out otherwise, the room followed it, and the bottom is made to that room."""
    name, text = cut
    if not text.endswith("mm"):
        text = f"{float(example(piece).values[name]) + float(text):.3f} mm"
    settled = example(piece, (name, text))
    assert not gaps(settled)
    told = settled.values[follower]
    again = example(piece, (name, text), (follower, f"{float(told):.6f} mm"))
    assert not gaps(again)
    assert again.values[name] == settled.values[name]


def test_a_bottom_that_fits_is_kept_by_what_comes_after() -> None:
    """The bottom fits and nothing yields to it; a front too long is then the front's own fault, and is sawn off."""
    planned = example("flat-lid-box")
    front, bottom = (float(planned.values[name]) for name in ("front_long", "bottom_long"))
    settled = example("flat-lid-box", ("bottom_long", f"{bottom} mm"), ("front_long", f"{front + 1.5} mm"))
    (gap,) = gaps(settled)
    assert (gap.name, gap.choices[0].say) == ("front_long", "Take 1.50 mm off the front")


def test_advice_followed_comes_to_rest() -> None:
    """A bottom too short beside a front too long is made again for the longer box; then all is well."""
    planned = example("flat-lid-box")
    front, bottom = (float(planned.values[name]) for name in ("front_long", "bottom_long"))
    cuts = {"front_long": f"{front + 1.5} mm", "bottom_long": f"{bottom - 1.5} mm"}
    (gap,) = gaps(example("flat-lid-box", *cuts.items()))
    assert gap.name == "bottom_long"
    assert not gaps(example("flat-lid-box", *{**cuts, gap.name: gap.choices[0].text}.items()))


@pytest.mark.parametrize(("piece", "name"), [("splayed-tray", "bevel"), ("splayed-tray", "face_cut")])
def test_an_angle_cut_as_it_is_told_fits(piece: str, name: str) -> None:
    """Told to a tenth of a degree, so a tenth's half is no misfit, and a side sawn short is still taken up."""
    planned = example(piece).values
    angle = (name, f"{float(planned[name]):.1f}°")
    assert not gaps(example(piece, angle))
    assert not contested(example(piece, angle, ("long_side", f"{float(planned['long_side'])} mm")))
    short = ("long_side", f"{float(planned['long_side']) - 2:.2f} mm")
    assert not gaps(example(piece, angle, short))


def test_the_slope_of_a_box_cut_as_it_is_told_fits() -> None:
    """Both edges are cut, and the slope to the tenth of a degree that follows from them."""
    planned = example("sloping-lid-box").values
    edges = [(name, f"{float(planned[name])} mm") for name in ("back_height", "front_height")]
    assert not gaps(example("sloping-lid-box", *edges, ("angle", f"{float(planned['angle']):.1f}°")))


SENSELESS = [
    ("sloping-lid-box", ("front_long", "-0.6"), ("back_wide", "+0.9")),
    ("sloping-lid-box", ("front_long", "23.2 mm")),
    ("wall-shelf", ("housing_wide", "190 mm")),
    ("wall-shelf", ("rail_long", "600 mm"), ("shelf_long", "600 mm")),
    ("wall-shelf", ("rail_long", "600 mm"), ("shelf_long", "598 mm")),
]


@pytest.mark.parametrize("cuts", SENSELESS)
def test_no_advice_is_senseless(cuts: Any) -> None:
    """Nothing of no size or less, nothing outside its limit, nothing that leaves the gap as it was."""
    piece, *made = cuts
    planned = example(piece).values
    texts = {n: t if t.endswith("mm") else f"{float(planned[n]) + float(t):.3f} mm" for n, t in made}
    found = gaps(example(piece, *texts.items()))
    assert found
    for gap in found:
        for choice in gap.choices:
            if choice.name:
                _mends(piece, texts, gap, choice.name, choice.text)


def _mends(piece: str, texts: dict[str, str], gap: Gap, name: str, text: str) -> None:
    after = example(piece, *{**texts, name: text}.items())
    assert name not in after.broken
    assert gap.name not in {one.name for one in gaps(after)}, (gap.name, name, text)
    assert after.values[name] > 0
