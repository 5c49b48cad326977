"""What came out of the saw stays; what depends on it follows; the rest gives way in the order declared, or is a gap."""

import math
from dataclasses import replace
from fractions import Fraction
from itertools import permutations
from typing import Any

import pytest
import sympy
from building import begun, built, done, numbers
from hypothesis import given, settings
from hypothesis import strategies as st
from toys import REST, TRAY, length, size

from calc.building.gaps import alike, gaps
from calc.building.piece import Piece
from calc.building.settle import Settled, settle
from calc.building.size import Yield
from calc.declare import Example


def says(settled: Settled) -> list[str]:
    """What does not fit, in words."""
    return [gap.say for gap in gaps(settled)]


def test_with_nothing_cut_it_is_the_sum() -> None:
    """The same sizes and tables as the piece answers with no record at all."""
    settled = built(TRAY, {})
    assert {name: settled.values[name] for name in TRAY.sizes} == {
        name: TRAY.of(width=Fraction(300), depth=Fraction(200))[name] for name in TRAY.sizes
    }
    assert settled.whole


def test_a_cut_size_stays_and_what_depends_on_it_follows() -> None:
    """The bottom sits between the sides: cut the left one short and the bottom is to be made to it."""
    settled = built(TRAY, {"left_deep": "198"})
    assert settled.values["left_deep"] == 198
    assert settled.values["bottom_deep"] == 197
    assert settled.state("left_deep") == "cut"
    assert settled.state("bottom_deep") == "open"


def test_the_given_that_may_yield_takes_up_the_difference_exactly() -> None:
    """The depth yields to the left side, and the right side, not cut yet, follows it."""
    settled = built(TRAY, {"left_deep": "198.7"})
    assert settled.givens["depth"] == Fraction(1987, 10)
    assert settled.values["right_deep"] == Fraction(1987, 10)
    assert settled.took == {"depth": "left_deep"}
    assert settled.state("depth") == "yielded"
    assert not says(settled)


def test_the_first_that_may_yield_goes_as_far_as_it_may_then_the_next() -> None:
    """A cover 7 mm long of it: the lip, 5 mm, grows by 3.5; 40 mm long: by 15, to its limit, and the width takes 10."""
    some, much = built(TRAY, {"cover_wide": "337"}), built(TRAY, {"cover_wide": "370"})
    assert (some.givens["lip"], some.givens["width"]) == (Fraction(17, 2), 300)
    assert (much.givens["lip"], much.givens["width"]) == (20, 310)
    assert not says(some) + says(much)


def test_what_cannot_be_taken_up_is_a_gap_with_what_to_do() -> None:
    """The slack gives 1 mm; the rest stands proud: take it off, or make the side deeper, or leave it."""
    settled = built(TRAY, {"bottom_deep": "205"})
    (gap,) = gaps(settled)
    assert (gap.name, gap.amount, gap.say) == ("bottom_deep", 5, "The bottom stands 5.00 mm proud.")
    assert [choice.say for choice in gap.choices] == [
        "Take 5.00 mm off the bottom",
        "Make the left deep 205 mm",
        "Leave it as it is",
    ]
    assert settled.values["bottom_deep"] == 205


@pytest.mark.parametrize("which", [0, 1])
def test_doing_what_a_gap_offers_closes_it(which: int) -> None:
    """Each choice is an entry that can be recorded, and then the part fits."""
    record = done(TRAY, begun(TRAY), [("cut", "bottom_deep", "205")])
    choice = gaps(settle(TRAY, record))[0].choices[which]
    assert not gaps(settle(TRAY, done(TRAY, record, [("cut", choice.name, choice.text)])))


def test_a_part_made_already_is_only_offered_for_trimming() -> None:
    """Too small a bottom cannot be mended by adding wood to a side; it is made again with the slack as it was given.

    By hand: the side is 200 mm, the slack usually 1, so the bottom is 199; the 190 had stretched the slack to its 3.
    """
    settled = built(TRAY, {"left_deep": "200", "bottom_deep": "205"})
    assert [choice.say for choice in gaps(settled)[0].choices] == ["Take 5.00 mm off the bottom", "Leave it as it is"]
    small = built(TRAY, {"left_deep": "200", "bottom_deep": "190"})
    assert [choice.say for choice in gaps(small)[0].choices] == [
        "Make the bottom again, with the bottom deep 199 mm",
        "Take 7.00 mm off the left deep",
        "Leave it as it is",
    ]


def test_a_difference_too_small_for_the_rule_says_so() -> None:
    """Two tenths of a millimetre are less than half of its mark."""
    assert says(built(TRAY, {"bottom_deep": "200.2"})) == ["The bottom stands 0.20 mm (less than half a mark) proud."]


def test_a_given_recorded_as_cut_stays_and_yields_no_more() -> None:
    """The thickness as planed is what it is; the lip that was cut leaves the width to yield alone."""
    settled = built(TRAY, {"lip": "6", "cover_wide": "340", "thickness": "9"})
    assert (settled.values["lip"], settled.values["thickness"]) == (6, 9)
    assert settled.givens["width"] == 340 - 12 - 18
    assert settled.state("lip") == "cut"


def test_two_cuts_that_want_the_same_given_are_settled_together() -> None:
    """The bottom took the slack; the front then needs the width, so the bottom's slack gives way anew: 302 - 300."""
    settled = built(TRAY, {"bottom_wide": "300", "front_long": "322"})
    assert (settled.givens["width"], settled.givens["slack"]) == (302, 2)
    assert not says(settled)


def test_where_no_given_is_left_the_later_one_keeps_what_remains() -> None:
    """Front and back both hang on the width: they cannot both be right, and the one worked out first is."""
    settled = built(TRAY, {"front_long": "322", "back_long": "320"})
    assert settled.givens["width"] == 302
    assert says(settled) == ["The back leaves a gap of 2.00 mm."]


def test_who_came_first_has_the_first_call() -> None:
    """Said of the back, the front is the one that is wrong; the last word counts, and opening it again ends it."""
    acts = [("cut", "front_long", "322"), ("cut", "back_long", "320"), ("first", "back_long")]
    record = done(TRAY, begun(TRAY), acts)
    assert says(settle(TRAY, record)) == ["The front stands 2.00 mm proud."]
    assert says(settle(TRAY, done(TRAY, record, [("first", "front_long")]))) == ["The back leaves a gap of 2.00 mm."]
    again = [("uncut", "back_long"), ("cut", "back_long", "320")]
    assert says(settle(TRAY, done(TRAY, record, again))) == ["The back leaves a gap of 2.00 mm."]


def test_a_curved_relation_is_closed_in_on() -> None:
    """Board of 250 on a depth of 200: overhang to its limit of 30, then the front sinks until 230 secants are 250."""
    settled = built(REST, {"board_long": "250"})
    rise = 200 * math.sqrt((250 / 230) ** 2 - 1)
    assert settled.givens["overhang"] == 30
    assert settled.givens["front_height"] == pytest.approx(200 - rise, abs=1e-8)
    assert isinstance(settled.givens["front_height"], float)
    assert not says(settled)


def test_curved_relations_are_settled_together() -> None:
    """Slope and board both cut: the front follows the slope, and the depth the board."""
    settled = built(REST, {"board_long": "250", "angle": "17"})
    slope = math.radians(17)
    depth = 250 * math.cos(slope) - 30
    assert settled.givens["depth"] == pytest.approx(depth, abs=1e-8)
    assert settled.givens["front_height"] == pytest.approx(200 - depth * math.tan(slope), abs=1e-8)


def test_what_is_not_decided_leaves_the_rest_alone() -> None:
    """Without a height there is no slope, but the board is as thick as it is; a question mark undoes a default."""
    settled = built(REST, {}, depth="200", back_height="200", thickness="?")
    assert {name for name in REST.sizes if settled.state(name) == "undecided"} == {
        "front_height", "angle", "board_long", "secant", "bevel", "board_thickness",
    }  # fmt: skip
    assert not settled.whole
    assert not settled.refused


def test_a_cut_stands_where_its_own_function_cannot_be_worked_out() -> None:
    """Nothing is known that contradicts it."""
    settled = built(REST, {"board_long": "250"}, depth="200", back_height="200")
    assert settled.values["board_long"] == 250
    assert not gaps(settled)


def test_a_cut_outside_its_limit_is_kept_and_named() -> None:
    """Nothing is lost and nothing refused; what is broken is said."""
    settled = built(TRAY, {"back_long": "1600"})
    assert settled.values["back_long"] == 1600
    assert settled.broken == {"back_long": "is too large; it must be from 20 mm to 1.5 m"}


def test_an_open_size_pushed_out_of_its_limit_is_named() -> None:
    """The front out at 1.6 m takes the back along, which may be 1.5 m."""
    settled = built(TRAY, {"front_long": "1600"})
    assert settled.broken == {"back_long": "is too large; it must be from 20 mm to 1.5 m"}
    assert settled.values["back_long"] == 1600


def test_what_cannot_be_worked_out_is_said_of_that_size_alone() -> None:
    """A refusal or an impossible root in one size leaves the others as they are."""
    curious = replace(TRAY, answers=(*TRAY.answers, size("gone", lambda width: math.sqrt(300 - width), part="front")))
    settled = settle(curious, begun(TRAY, width="301", depth="200"))
    assert settled.state("gone") == "impossible"
    assert settled.values["front_long"] == 321


def test_sizes_that_must_be_alike_say_how_nearly() -> None:
    """From the start; and when they differ by more, by how much."""
    fits, not_fits = (built(TRAY, {"left_deep": "200", "right_deep": cut}) for cut in ("200.3", "200.4"))
    told = "must be alike within 0.3 mm so that it stands square."
    assert [one.say for one in alike(fits)][1] == f"“Left deep” and “Right deep” {told}"
    assert [one.fits for one in alike(fits)] == [True, True]
    assert alike(not_fits)[1].say.endswith(f"“Right deep” differ by 0.40 mm (less than half a mark), and {told}")
    assert not alike(not_fits)[1].fits


def easy(**more: Any) -> Piece:
    """The tray with a bottom that nothing yields to, said otherwise."""
    bottom = replace(TRAY.sizes["bottom_wide"], yields=Yield(**more))
    return replace(TRAY, answers=tuple(bottom if one.name == "bottom_wide" else one for one in TRAY.answers))


def test_a_difference_that_does_no_harm_is_no_gap() -> None:
    """Nothing is said on the side where it does not matter, nor of what is within its play; beyond it, all of it."""
    harmless, loose = easy(over="", under="is {} short"), easy(play="slack")
    told = {cut: says(built(harmless, {"bottom_wide": cut})) for cut in ("305", "297")}
    assert told == {"305": [], "297": ["The bottom is 2.00 mm short."]}
    told = {cut: says(built(loose, {"bottom_wide": cut})) for cut in ("300", "298", "300.1", "301")}
    assert (told["300"], told["298"], told["301"]) == ([], [], ["The bottom is 2.00 mm too large."])
    assert built(loose, {"bottom_wide": "301"}).values["bottom_wide"] == 301
    assert not built(loose, {"bottom_wide": "301"}).took


MEASURED = {"tray": ["300", "302", "318", "321"], "rest": ["150", "221", "230"]}


@pytest.mark.parametrize("piece", [TRAY, REST], ids=["tray", "rest"])
@settings(max_examples=20)
@given(data=st.data())
def test_the_order_of_entry_does_not_matter(piece: Piece, data: st.DataObject) -> None:
    """Up to four cuts in every order give one and the same settling, to the last bit."""
    names = [name for name, one in piece.sizes.items() if one.can_be_cut]
    chosen = data.draw(st.lists(st.sampled_from(names), min_size=2, max_size=4, unique=True))
    sizes = {name: st.sampled_from(["17", "18"] if name == "angle" else MEASURED[piece.id]) for name in chosen}
    entered = [("cut", name, data.draw(size)) for name, size in sizes.items()]
    settled = [settle(piece, done(piece, begun(piece), order)) for order in permutations(entered)]
    assert all(numbers(one) == numbers(settled[0]) for one in settled)
    assert all(one.took == settled[0].took for one in settled)
    assert all(says(one) == says(settled[0]) for one in settled)


GIVEN = ("first", "second", "third")


def straight(table: list[list[int]]) -> Piece:
    """A piece of sizes that are sums of three givens, so many times each, any of which may yield."""

    def times(row: list[int]) -> Any:
        return lambda first, second, third: row[0] * first + row[1] * second + row[2] * third

    sizes = tuple(size(f"size_{at}", times(row), "first", "part", GIVEN) for at, row in enumerate(table))
    givens = tuple(length(name, high="20 m") for name in GIVEN)
    return replace(TRAY, givens=givens, answers=sizes, matches=(), example=Example({}, "None."))


def heavy(at: int) -> st.SearchStrategy[list[int]]:
    """A row of a table whose own column weighs more than the others together, so that there is one answer."""
    return st.lists(st.integers(-1, 1), min_size=3, max_size=3).map(
        lambda row: [one + 4 * (at == column) for column, one in enumerate(row)]
    )


TABLES = st.tuples(heavy(0), heavy(1), heavy(2))


@given(
    table=TABLES,
    started=st.lists(st.integers(9_000, 9_100), min_size=3, max_size=3),
    meant=st.lists(st.integers(8_950, 9_150), min_size=3, max_size=3),
)
def test_straight_relations_together_are_solved_as_by_linear_algebra(
    table: list[list[int]], started: list[int], meant: list[int]
) -> None:
    """Three cuts that hang on three givens each: the one answer there is, exactly, as sympy's elimination finds it."""
    wanted = sympy.Matrix(table) * sympy.Matrix(meant)
    cuts = {f"size_{at}": str(cut) for at, cut in enumerate(wanted)}
    settled = built(straight(table), cuts, **dict(zip(GIVEN, map(str, started), strict=True)))
    assert [settled.givens[name] for name in GIVEN] == meant == list(sympy.Matrix(table).LUsolve(wanted))
    assert all(isinstance(settled.givens[name], Fraction) for name in GIVEN)
