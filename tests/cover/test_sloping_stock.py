"""Sloping-lid box: every part can be cut out of the stock, the board and the nails bought suffice, none comes out."""

import math
from fractions import Fraction
from typing import Any

from examples import covered
from hypothesis import given
from sloping import BOXES, built, lid, values


@given(BOXES)
def test_every_part_can_be_cut(givens: dict[str, Any]) -> None:
    """Each part is there in every direction, its shorter face too, and no shorter than nothing."""
    for part in values(givens)["parts"]:
        for size in ("length", "width", "thickness", "count"):
            assert part[size] > 0, part
        assert part["strips"] > 0 if part["blank"] else part["strips"] is None, part
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
    covered(v)
    inches = sum(row["thickness"] * row["width"] * row["length"] for row in v["buy"]) / Fraction("25.4") ** 3
    assert v["board_feet"] == inches / 144 * Fraction(5, 4)


@given(BOXES)
def test_nails_stay_inside_and_are_all_bought(givens: dict[str, Any]) -> None:
    """No nail is longer than the wood it is driven into, and the shopping list has every one that fits."""
    v = values(givens)
    behind = {"Battens to moving lid": v["lid_thickness"], "Back to strip, down the slope": v["strip_under"]}
    nailed = [row for row in v["joints"] if row["by"] == "nails"]
    for joint in (row for row in nailed if row["length"] is not None):
        assert joint["held"] < joint["length"]
        assert joint["length"] < joint["held"] + behind.get(joint["joint"], 10**4)
    fits = [row["count"] for row in nailed if row["length"] is not None]
    assert sum(row["count"] for row in v["nail_list"]) == sum(fits) == v["nail_count"]


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
