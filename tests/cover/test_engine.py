"""How a question is answered: every entry that cannot be used is named at once, with what to type instead."""

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction

import pytest
from smallest import SUM, double

import calc
from calc import Bench, Refusal, Refused, Result
from calc.declare import Sum
from calc.engine import reckon
from calc.errors import listed


def refusals(texts: Mapping[str, str], one: Sum = SUM) -> list[str]:
    """What is said when these entries are refused."""
    with pytest.raises(Refused) as refused:
        reckon(one, texts, Bench())
    return [str(each) for each in refused.value.refusals]


def test_an_answer_is_typed_exact_and_printed() -> None:
    """Values in millimetres, text on the maker's rule, working with the numbers put in, cautions that always stand."""
    result = reckon(SUM, {"size": "3 in"}, Bench())
    assert result["twice"] == Fraction(47, 8) * Fraction(254, 10)
    assert result.text == "Twice: 5 7/8 in (149.2 mm)\nTake care: Measure twice."
    assert [str(line) for line in result.working] == ["Twice = 2 × size − gap = 2 × 3 in − 1/8 in = 5 7/8 in"]


def test_a_default_is_taken_and_told() -> None:
    """What was not typed has an empty text and the reading of its default."""
    given = {one.name: (one.typed, one.read) for one in reckon(SUM, {"size": " 3 in "}, Bench()).givens}
    assert given == {"size": ("3 in", "3 in"), "gap": ("", "1/8 in")}


def test_what_may_be_left_out_is_handed_on_as_nothing() -> None:
    """An answer that needs it is not shown, and no line of working mentions it."""
    result = reckon(SUM, {"size": "3 in"}, Bench())
    assert [answer.name for answer in result.answers] == ["twice"]
    assert [answer.name for answer in reckon(SUM, {"size": "3 in", "more": "5 in"}, Bench()).answers] == [
        "twice",
        "rest",
    ]


def test_a_caution_stands_when_its_condition_holds() -> None:
    """The first only when the gap is over 5 mm, in the order declared."""
    assert reckon(SUM, {"size": "3 in", "gap": "6 mm"}, Bench()).text.endswith(
        "Mind the gap.\nTake care: Measure twice."
    )


def test_everything_wrong_is_said_at_once_in_the_order_of_the_form() -> None:
    """A missing entry, one outside its limit, and one that no field asks for."""
    assert refusals({"more": "2 m", "gap": "-1", "depht": "3"}) == [
        "Double: there is no “depht” here; use size, gap or more.",
        "Size: nothing is typed here; type it like 3 in.",
        "Gap: −1 in is too small; type a length from 0 in to 1 in.",
        "More: 2 m is too large; type a length from 0 in to 1 m.",
    ]


def test_what_could_be_read_is_kept_when_something_else_is_refused() -> None:
    """The page can still say how each other entry was understood."""
    with pytest.raises(Refused) as refused:
        reckon(SUM, {"size": "wide", "gap": "3 mm"}, Bench())
    assert [(one.name, one.read) for one in refused.value.givens] == [("gap", "3 mm")]


def test_a_refusal_from_the_work_names_its_field() -> None:
    """Only the work can know that two entries do not go together."""
    assert refusals({"size": "1 in", "gap": "1 in", "more": "1"}, replace(SUM, work=lambda **_: double(1, 2, 3))) == [
        "Gap: the gap is wider than the size; give a smaller gap."
    ]


def test_an_entry_of_many_pages_is_refused_before_it_is_read() -> None:
    """Six thousand characters are enough for any list."""
    assert refusals({"size": "1" * 6001}) == ["Size: this is 6001 characters long; type at most 6000."]


@pytest.mark.parametrize(
    ("texts", "field", "say"),
    [
        ({}, "rise", "two of “Rise”, “Run”, “Length along the slope” and “Angle from level” are wanted; fill in two."),
        ({"rise": "3"}, "run", "wanted, and one is given; fill in one more."),
        ({"run": "3"}, "rise", "wanted, and one is given; fill in one more."),
        ({"rise": "3", "run": "4", "angle": "9"}, "angle", "are enough, and three are given; clear one."),
    ],
)
def test_any_two_of_four_points_at_the_field_to_change(texts: dict[str, str], field: str, say: str) -> None:
    """The first empty one to fill in, or the last filled one to clear."""
    with pytest.raises(Refused) as refused:
        calc.answer("slope", **texts)
    (one,) = refused.value.refusals
    assert one.field == field
    assert str(one).endswith(say)


@pytest.mark.parametrize(
    ("name", "texts", "say"),
    [
        ("dressed", {}, "“Called” or “Thickness wanted” is wanted; fill in one."),
        (
            "dressed",
            {"size": "2x4", "finished": "1"},
            "“Called” or “Thickness wanted” alone is enough, and two are given; clear one.",
        ),
        ("taper", {"length": "9", "start": "2"}, "are wanted, and two are given; fill in one more."),
        ("taper", {"length": "9"}, "are wanted, and one is given; fill in two more."),
        (
            "mitre",
            {"side": "9", "across_flats": "9"},
            "“Side, long edge”, “Across flats” or “Across corners” alone is enough",
        ),
    ],
)
def test_how_many_are_wanted_is_said_in_good_grammar(name: str, texts: dict[str, str], say: str) -> None:
    """One is, two are; of one wanted the others are joined by or; each label as it stands on the page."""
    with pytest.raises(Refused) as refused:
        calc.answer(name, **texts)
    assert say in str(refused.value.refusals[-1])


def test_the_same_question_has_the_same_answer() -> None:
    """Nothing is kept between two questions: asked in between with another bench, the first comes out the same."""
    texts = {"rise": "3 in", "run": "1 ft"}
    before = calc.answer("slope", **texts).to_dict()
    calc.answer("slope", Bench(unit="mm", mark="mm", angles="minutes"), rise="75", run="310")
    assert calc.answer("slope", **texts).to_dict() == before


def test_a_rounded_answer_never_enters_the_next_sum_as_exact() -> None:
    """The angle of 3 in 12 is carried on as ≈ 14.04°, and nothing worked out from it says that it is exact."""
    carried = calc.answer("slope", rise="3 in", run="1 ft").to_dict()["carry_on"][0]["givens"]["angle"]
    assert carried == "≈ 14.036243"
    told = reckon(SUM, {"size": "≈ 3 in"}, Bench())
    assert told.givens[0].read == "≈ 3 in"
    assert [answer["exact"] for answer in told.to_dict()["answers"]] == [False]
    assert [answer["exact"] for answer in reckon(SUM, {"size": "3 in"}, Bench()).to_dict()["answers"]] == [True]


def test_an_exact_answer_is_carried_on_exactly() -> None:
    """45° comes of a rise as long as its run, and is no rounded figure."""
    carried = calc.answer("slope", rise="3 in", run="3 in").to_dict()["carry_on"][0]["givens"]
    assert carried["angle"] == "45"


def test_numbers_may_be_handed_over_as_they_are() -> None:
    """Whole numbers and Fractions in the bench's unit, an answer of one sum as the given of the next."""
    first: Result = calc.answer("slope", rise=3, run=Fraction(43, 8))
    assert first["rise"] == Fraction(762, 10)
    assert first["run"] == Fraction(43, 8) * Fraction(254, 10)
    assert calc.answer("slope", Bench(unit="mm"), rise=first["rise"], run=first["run"])["one_in"] == first["one_in"]


@pytest.mark.parametrize(
    ("name", "say"), [("slop", "perhaps slope"), ("zzz", "choose one of"), ("x" * 99, "choose one of")]
)
def test_an_unknown_sum_is_refused_with_one_that_is_near(name: str, say: str) -> None:
    """A slip of the finger gets the sum that was meant."""
    with pytest.raises(Refusal, match=say):
        calc.answer(name)


def test_sums_and_pieces_are_told_apart() -> None:
    """Both are found by their files; a piece belongs to the moment called piece."""
    assert {one.moment for one in calc.pieces()} == {"piece"}
    assert "piece" not in {one.moment for one in calc.sums()}
    assert len(calc.sums()) >= 9


@pytest.mark.parametrize(
    ("words", "text"), [([], ""), (["a"], "a"), (["a", "b"], "a or b"), (["a", "b", "c"], "a, b or c")]
)
def test_words_are_listed_as_a_sentence_lists_them(words: list[str], text: str) -> None:
    """None, one, two and three."""
    assert listed(words, "or") == text
