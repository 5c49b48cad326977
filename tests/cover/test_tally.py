"""Tally's answers: the mark and what is left over, the tape, how many times, and a result below nothing."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Bench, Refused


def tallied(text: str, **bench: str) -> calc.Result:
    """The answer to one reckoning."""
    return calc.answer("tally", Bench(**bench), reckoning=text)


def test_a_mix_of_units_comes_to_one_exact_length() -> None:
    """Inches and millimetres together: the nearest mark, what is left over, and the length itself."""
    answer = tallied("9 3/4 in + 2 x 16 mm")
    assert answer["result"] == Fraction("279.65")
    assert "Comes to: 11 in, strong by 0.25 mm (279.6 mm)" in answer.text
    assert answer["exactly"] == "11 5/508 in, or 279.65 mm"


def test_the_tape_shows_each_term_and_the_running_total() -> None:
    """One row a term, as it was read, with its sign and where the total stands after it."""
    rows = tallied("3 ft - 5 3/8 - 16 mm")["tape"]
    assert [row["term"] for row in rows] == ["3 ft", "− 5 3/8 in", "− 16 mm"]
    assert [row["total"] for row in rows] == [Fraction("914.4"), Fraction("777.875"), Fraction("761.875")]


def test_a_product_is_one_term_of_the_tape() -> None:
    """What is multiplied is not taken apart."""
    assert [row["term"] for row in tallied("10 + 2 x 3/8")["tape"]] == ["10 in", "+ 2 in × 3/8"]


def test_a_length_by_a_length_is_how_many_times() -> None:
    """No length is answered, the exact number is, and the whole times that fit."""
    answer = tallied("4 ft ÷ 1 3/4 in")
    assert (answer["result"], answer["tape"]) == (None, None)
    assert (answer["ratio"], answer["whole"], answer["exactly"]) == (Fraction(192, 7), 27, "27 3/7")


def test_a_third_of_a_length_stays_exact() -> None:
    """Thirds have no decimal and no mark; they are said as a fraction, never rounded on the way."""
    answer = tallied("100 mm ÷ 3 + 100 mm ÷ 3 + 100 mm ÷ 3", mark="mm")
    assert answer["result"] == 100
    assert tallied("100 mm ÷ 3")["exactly"] == "1 119/381 in, or 33 1/3 mm"


def test_bare_numbers_take_the_bench_s_unit_and_the_reading_says_so() -> None:
    """The same text means inches on one bench and millimetres on another, and each is told."""
    inch, metric = tallied("5 + 3"), tallied("5 + 3", unit="mm", mark="mm")
    assert (inch["result"], inch.givens[0].read) == (Fraction("203.2"), "5 in + 3 in")
    assert (metric["result"], metric.givens[0].read) == (8, "5 mm + 3 mm")


@given(sixty_fourths=st.integers(12 * 64, 100 * 12 * 64))
def test_feet_and_inches_read_back_as_the_same_length(sixty_fourths: int) -> None:
    """On the sixty-fourths nothing is left over, and what is said is the length itself."""
    answer = tallied(f"{sixty_fourths // 64} in + {sixty_fourths % 64}/64 in")
    assert tallied(answer["feet_inches"])["result"] == answer["result"]


def test_less_than_a_foot_is_not_told_in_feet() -> None:
    """0 ft 5 in helps nobody."""
    assert tallied("5 in")["feet_inches"] is None


def test_a_result_below_nothing_is_answered_with_a_caution() -> None:
    """Legal, but surely unmeant: the number, and a sentence."""
    answer = tallied("3 in - 5 in")
    assert answer["result"] == Fraction("-50.8")
    assert answer.cautions


@pytest.mark.parametrize(
    ("text", "warned"),
    [
        ("3 in - 5 in", True),
        ("2 x (3 in - 5 in)", True),
        ("(3 in - 5 in) / 2 in", True),
        ("-3 in", False),
        ("5 - 3", False),
    ],
)
def test_the_caution_is_for_what_was_taken_away(text: str, warned: bool) -> None:
    """A length typed as below nothing was meant so, and nothing was taken away."""
    assert ("More is taken away" in tallied(text).text) is warned


def test_below_nothing_there_are_no_whole_times() -> None:
    """−3 in holds 2 in not once: by hand it goes −1 1/2 times, and neither −1 nor −2 of them are whole."""
    answer = tallied("-3 in / 2 in")
    assert (answer["ratio"], answer["whole"]) == (Fraction(-3, 2), None)
    assert "Whole" not in answer.text


def test_a_refusal_names_the_field() -> None:
    """What could mean two things is asked back, at the reckoning."""
    with pytest.raises(Refused, match="could mean two things") as refused:
        tallied("5 -3/8")
    assert refused.value.refusals[0].field == "reckoning"


def test_many_terms_are_drawn_as_a_few_strips_and_the_rest() -> None:
    """Twenty terms do not crowd the drawing: seven strips, and one for what is left."""
    answer = tallied(" + ".join(["1 in"] * 20))
    nodes = str(answer.to_dict()["figure"]["nodes"])
    assert nodes.count("polygon") == 8
    assert "and the rest" in nodes
