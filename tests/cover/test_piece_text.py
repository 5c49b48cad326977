"""A piece as it is told on the terminal and on the sheet: what is wrong, what to do, what to take care of."""

from typing import Any

from building import built, done
from toys import TRAY as TOY

from calc.building.changes import changes
from calc.building.piece import Piece
from calc.building.piece_text import changed, sheet, shown
from calc.building.settle import settle
from calc.discover import find

TRAY = {
    "long": "300 mm",
    "wide": "200 mm",
    "height": "60 mm",
    "lean": "15",
    "stock_width": "150 mm",
    "stock_thickness": "10 mm",
    "species": "white ash",
}


def low_tray(**more: str) -> Any:
    """A splayed tray too low for the hand holes that are usual."""
    piece = find("splayed-tray")
    assert isinstance(piece, Piece)
    return built(piece, {}, **TRAY | more)


def test_what_cannot_be_made_says_what_to_do_instead() -> None:
    """The field as the maker sees it, what is wrong, and what to give; the same on the sheet."""
    say = "Height: the ends are too low for hand holes; give more height, or choose no handles."
    assert f"  {say}" in shown(low_tray()).splitlines()
    assert f"  {say}" in sheet(low_tray()).splitlines()


def test_a_caution_stands_as_soon_as_what_it_hangs_on_is_known() -> None:
    """A tray whose hand holes cannot be made has sides just as small and as thin as one without."""
    cautions = sheet(low_tray()).split("Take care: ")[1:]
    assert [" ".join(one.split()) for one in cautions] == [
        " ".join(one.split()) for one in sheet(low_tray(handles="none")).split("Take care: ")[1:]
    ]
    assert any(one.startswith("Parts this small") for one in cautions)


def test_a_caution_that_hangs_on_what_is_not_known_is_left_out() -> None:
    """Without its height nothing is known of how small the sides are; what always stands is said."""
    told = sheet(low_tray(height="?"))
    assert "Take care: Keep edges sharp" in told
    assert "Take care: Parts this small" not in told
    assert "Take care: Sides or bottom are wider than your stock" not in told


def test_where_it_counts_which_cut_came_first_it_is_asked_and_how_to_say_it() -> None:
    """Beside the misfit, when it comes up and as long as it stands; what is typed turns the question round."""
    before, after = built(TOY, {"front_long": "322"}), built(TOY, {"front_long": "322", "back_long": "320"})
    say = "  If the back long was cut first, the rest follows it instead: then first back_long"
    assert say in changed(changes(before, after), before, after).splitlines()
    assert say in shown(after).splitlines()
    turned = settle(TOY, done(TOY, after.record, [("first", "back_long")]))
    assert say.replace("back", "front") in shown(turned).splitlines()
    assert say not in shown(turned).splitlines()


def test_where_nothing_misfits_it_is_not_asked() -> None:
    """Two that agree may have come in any order."""
    assert "first" not in shown(built(TOY, {"front_long": "322", "back_long": "322"}))


def test_what_must_be_given_yet_is_told_by_the_names_to_type() -> None:
    """No given that may be left out but the one left open on purpose; of any two of three what is wanted yet."""
    assert shown(low_tray(long="", species="?")).splitlines()[-1] == "To give: long and species."
    box = find("sloping-lid-box")
    assert isinstance(box, Piece)
    given = {"stock_width": "150 mm", "stock_thickness": "16 mm", "inside_width": "230 mm", "depth": "100 mm"}
    assert "To give: two of back_height, front_height or angle." in shown(built(box, {}, **given))
    assert "To give: one of back_height or angle." in shown(built(box, {}, **given, front_height="120 mm"))
    assert "To give" not in shown(built(box, {}, **given, front_height="120 mm", angle="14"))


def test_what_is_given_after_a_cut_it_gives_way_to_is_said_to_stand_as_it_did() -> None:
    """The front is cut, so the width follows it, whatever is given for it afterwards."""
    box = find("sliding-lid-box")
    assert isinstance(box, Piece)
    before = built(box, {"front_long": "100 mm"}, **box.example.givens)
    after = settle(box, done(box, before.record, [("give", "width", "120 mm")]))
    (line,) = changed(changes(before, after), before, after).splitlines()
    assert line.startswith("Width: stands at ")
    assert line.endswith("; gave way to the front, from 120 mm")
