"""Sloping-lid box: the example by hand, one box by any two of its measures, the order of work and the cautions."""

import math
from fractions import Fraction

import pytest
from building import METRIC
from examples import Example

import calc
from calc.bench import Bench
from calc.trig import is_exact

BOX = Example("sloping-lid-box")


def test_across_the_grain_comes_before_along_it() -> None:
    """The rabbet and every crosscut stand before the first plane or rip saw, and nailing comes after both."""
    tools = [row["tool"] for row in BOX.answer()["order"]]
    across = [at for at, tool in enumerate(tools) if tool in ("crosscut saw", "rabbet plane")]
    along = [at for at, tool in enumerate(tools) if tool in ("plane", "rip saw, plane", "rip saw")]
    assert max(across) < min(along)
    assert max(along) < tools.index("hammer, punch")


def test_no_glue_across_the_grain() -> None:
    """The joints that say no glue are those where the grain of the two parts crosses or one shows its end."""
    glue = {row["joint"]: row["glue"].partition(":")[0] for row in BOX.answer()["joints"]}
    assert glue["Front to sides"] == glue["Battens to moving lid"] == glue["Strip to sides"] == "none"
    assert glue["Back to sides"] == "yes"


def test_the_example_by_hand() -> None:
    """16 mm ash, 50 in 150: worked by hand with tan 1/3 and sec √10/3."""
    result = BOX.answer()
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
    result = BOX.answer(**entry)
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
    rest = {name: text for name, text in BOX.givens.items() if name not in ("back_height", "front_height")}
    one, other = (calc.answer("sloping-lid-box", **rest, **told) for told in (heights, pick(BOX.givens)))
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
    assert any(words in caution.say for caution in BOX.answer(**entry).cautions)
    assert not any(words in caution.say for caution in BOX.answer().cautions)
