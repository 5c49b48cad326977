"""What cannot be built, piece by piece: each refusal names the field to change and what to type instead."""

import pytest
from building import METRIC

import calc
from calc.discover import find
from calc.errors import Refused

REFUSED: list[tuple[str, dict[str, str | None], str, str]] = [
    ("flat-lid-box", {"rabbet": "12 mm"}, "rabbet", "as deep as the walls"),
    ("flat-lid-box", {"allowance": "10 mm", "rabbet": "4 mm"}, "rabbet", "not reach its rabbets"),
    ("flat-lid-box", {"depth": "25 mm"}, "depth", "shorter than they are wide"),
    ("flat-lid-box", {"width": "60 mm"}, "width", "no room side by side"),
    ("flat-lid-box", {"height": "21 mm", "measured": "outside"}, "height", "too small"),
    ("flat-lid-box", {"stock_width": "25 mm"}, "stock_width", "too narrow"),
    ("flat-lid-box", {"humidity_dry": "80"}, "humidity_dry", "damper than the dampest"),
    ("flat-lid-box", {"species": "own"}, "shrinkage", "another wood is chosen"),
    ("sliding-lid-box", {"rabbet": "12 mm"}, "rabbet", "as deep as the walls"),
    ("sliding-lid-box", {"groove": "12 mm"}, "groove", "above the grooves"),
    ("sliding-lid-box", {"groove_deep": "12 mm"}, "groove_deep", "as deep as the walls"),
    ("sliding-lid-box", {"groove": "2 mm", "play": "2 mm"}, "play", "lid's edge"),
    ("sliding-lid-box", {"groove_deep": "1 mm", "spare": "2 mm"}, "groove_deep", "leave its grooves"),
    ("sliding-lid-box", {"length": "30 mm", "measured": "outside"}, "length", "too small"),
    ("sliding-lid-box", {"species": "own"}, "shrinkage", "another wood is chosen"),
    ("sloping-lid-box", {"front_height": "230 mm"}, "front_height", "hardly slope"),
    ("sloping-lid-box", {"back_height": "600 mm"}, "front_height", "steeper than 60°"),
    ("sloping-lid-box", {"front_height": None, "angle": "58"}, "back_height", "no height"),
    ("sloping-lid-box", {"rabbet": "16 mm"}, "rabbet", "as deep as the front"),
    ("sloping-lid-box", {"back_height": "40 mm", "front_height": "18 mm", "bottom_thickness": "20 mm"},
     "front_height", "nothing"),
    ("sloping-lid-box", {"depth": "60 mm", "back_height": "190 mm"}, "depth", "too short"),
    ("sloping-lid-box", {"depth": "100 mm", "leaf": "40 mm", "back_height": "200 mm"},
     "depth", "too short to carry battens"),
    ("sloping-lid-box", {"inside_width": "60 mm"}, "inside_width", "no room side by side"),
    ("sloping-lid-box", {"inside_width": "120 mm"}, "inside_width", "the battens leave"),
    ("sloping-lid-box", {"stock_width": "25 mm"}, "stock_width", "too narrow"),
    ("sloping-lid-box", {"stock_width": "30 mm", "inside_width": "500 mm"}, "stock_width", "strips of this stock"),
    ("sloping-lid-box", {"note": "own"}, "note_length", "nothing is typed"),
    ("sloping-lid-box", {"note": "gbp-coin-1p"}, "halved", "does not fold"),
    ("sloping-lid-box", {"knuckle": "30 mm", "lid_thickness": "12 mm"}, "knuckle", "as deep as the lid"),
    ("sloping-lid-box", {"depth": "41 mm", "rabbet": "40 mm", "front_thickness": "50 mm", "back_height": "190 mm"},
     "depth", "nothing is left for the bottom"),
    ("splayed-tray", {"height": "25 mm", "bottom_thickness": "23 mm"}, "height", "fills all of the height"),
    ("splayed-tray", {"lean": "45", "wide": "50 mm", "bottom_thickness": "30 mm"}, "wide", "meet under the bottom"),
    ("splayed-tray", {"hand_long": "180 mm"}, "hand_long", "too short for this hand hole"),
    ("splayed-tray", {"hand_long": "20 mm"}, "hand_long", "wider than it is long"),
    ("splayed-tray", {"hand_wide": "60 mm", "hand_down": "40 mm"}, "height", "too low for hand holes"),
    ("splayed-tray", {"lean": "45", "side_thickness": "40 mm", "hand_down": "60 mm"}, "height", "too low for"),
    ("splayed-tray", {"lean": "45", "side_thickness": "40 mm", "hand_long": "190 mm"}, "hand_long", "too short for"),
    ("wall-shelf", {"housing_deep": "19 mm"}, "housing_deep", "as deep as the end"),
    ("wall-shelf", {"radius": "200 mm", "drop": "300 mm"}, "radius", "would leave less"),
    ("wall-shelf", {"drop": "50 mm"}, "drop", "wider than the ends reach"),
    ("wall-shelf", {"screw_in": "300 mm"}, "screw_in", "no room side by side"),
    ("wall-shelf", {"inside_width": "2.4 m", "shelf_thickness": "6 mm", "load": "200 kg"},
     "inside_width", "tenth of its span"),
]  # fmt: skip


@pytest.mark.parametrize(("piece", "entry", "field", "words"), REFUSED)
def test_what_cannot_be_built_is_refused(piece: str, entry: dict[str, str | None], field: str, words: str) -> None:
    """One refusal, which names the field to change, says what is wrong, and what to type instead."""
    with pytest.raises(Refused) as refused:
        calc.answer(piece, METRIC, **({**find(piece).example.givens} | entry))
    (refusal,) = refused.value.refusals
    assert refusal.field == field, refusal
    assert words in refusal.say, refusal
    assert refusal.instead
