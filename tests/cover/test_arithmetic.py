"""Reckonings over lengths, against an independent unit library working in fractions, and at their edges."""

from fractions import Fraction
from typing import Any, NamedTuple

import pint
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from spellings import decimal, mixed

from calc.errors import Refusal
from calc.typed.arithmetic import DEEPEST, reckon
from calc.typed.reckoning import LENGTH, NUMBER

WORLD: Any = pint.UnitRegistry(non_int_type=Fraction, cache_folder=None)
"""pint's own full registry and its own inch, foot and yard: nothing of ours."""
DEFINED = {"in": "inch", '"': "inch", "ft": "foot", "'": "foot", "yd": "yard", "mm": "millimetre", "cm": "centimetre"}
SIGN = {"+": "+", "−": "-", "-": "-"}


class Typed(NamedTuple):
    """A reckoning as text, what it comes to by other means, and what it is: "size", "product" or "total"."""

    text: str
    value: Any
    shape: str


SIXTEENTHS = st.integers(1, 600).map(lambda n: Fraction(n, 16))
TENTHS = st.integers(1, 9000).map(lambda n: Fraction(n, 10))
NUMBERS = SIXTEENTHS.map(lambda n: Typed(mixed(n), n, "size")) | TENTHS.map(lambda n: Typed(decimal(n), n, "size"))


def measured(unit: str, numbers: st.SearchStrategy[Typed] = NUMBERS) -> st.SearchStrategy[Typed]:
    """A number with a unit behind it."""
    gap = "" if unit in "\"'" else " "
    return numbers.map(lambda n: Typed(f"{n.text}{gap}{unit}", n.value * WORLD(DEFINED[unit]), "size"))


def feet_and_inches(feet: int, inches: Typed) -> Typed:
    """Feet and inches in one size."""
    return Typed(f"{feet}' {inches.text}\"", feet * WORLD.foot + inches.value * WORLD.inch, "size")


LENGTHS = st.one_of(measured(unit) for unit in DEFINED) | st.builds(feet_and_inches, st.integers(1, 20), NUMBERS)


def bracketed(one: Typed, *shapes: str) -> str:
    """Its text, in brackets where it is one of these shapes."""
    return f"({one.text})" if one.shape in shapes else one.text


def added(sign: str, left: Typed, right: Typed) -> Typed:
    """Two terms with a sign between them, spaces about it."""
    value = left.value + right.value if sign == "+" else left.value - right.value
    return Typed(f"{left.text} {sign} {bracketed(right, 'total')}", value, "total")


def multiplied(sign: str, left: Typed, right: Typed) -> Typed:
    """Two factors."""
    text = f"{bracketed(left, 'total')} {sign} {bracketed(right, 'total', 'product')}"
    return Typed(text, left.value * right.value, "product")


def divided(left: Typed, right: Typed) -> Typed:
    """Two factors, the second not nothing."""
    assume(right.value != 0)
    text = f"{bracketed(left, 'total')} ÷ {bracketed(right, 'total', 'product')}"
    return Typed(text, left.value / right.value, "product")


PLUS, TIMES = st.sampled_from(["+", "−", "-"]), st.sampled_from(["×", "x", "*"])


def longer(lengths: st.SearchStrategy[Typed], numbers: st.SearchStrategy[Typed]) -> st.SearchStrategy[Typed]:
    """Lengths made of lengths: added, taken away, multiplied or divided by numbers."""
    return st.one_of(
        st.builds(added, PLUS, lengths, lengths),
        st.builds(multiplied, TIMES, lengths, numbers),
        st.builds(multiplied, TIMES, numbers, lengths),
        st.builds(divided, lengths, numbers),
    )


BARE = st.recursive(
    NUMBERS,
    lambda inner: st.one_of(
        st.builds(added, PLUS, inner, inner),
        st.builds(multiplied, TIMES, inner, inner),
        st.builds(divided, inner, inner),
    ),
    max_leaves=5,
)
TREES = st.recursive(LENGTHS, lambda inner: longer(inner, BARE), max_leaves=5)


@given(tree=TREES)
def test_a_reckoning_comes_to_what_another_library_says(tree: Typed) -> None:
    """Lengths in any mix of units, added, taken away, multiplied and divided, are exactly what pint makes of them."""
    assume(len(tree.text) <= 200)
    found, _ = reckon(tree.text, "mm")
    assert found.measure == LENGTH
    assert found.value == Fraction(tree.value.to("millimetre").magnitude)


@given(left=TREES, right=TREES)
def test_a_length_by_a_length_is_a_plain_number(left: Typed, right: Typed) -> None:
    """How many times one length goes into another, exactly."""
    tree = divided(left, right)
    assume(len(tree.text) <= 200)
    found, _ = reckon(tree.text, "in")
    assert (found.measure, found.value) == (NUMBER, Fraction(tree.value.to("dimensionless").magnitude))


@given(tree=BARE, unit=st.sampled_from(["in", "ft", "mm", "cm"]))
def test_without_any_unit_the_maker_s_is_taken_once(tree: Typed, unit: str) -> None:
    """Bare numbers reckon as they would on paper, and the answer is in the maker's unit."""
    assume(len(tree.text) <= 200)
    found, _ = reckon(tree.text, unit)
    assert found.measure == LENGTH
    assert found.value == Fraction((tree.value * WORLD(DEFINED[unit])).to("millimetre").magnitude)


@given(tree=TREES | BARE, unit=st.sampled_from(["in", "mm"]))
def test_what_is_said_to_be_read_reads_the_same(tree: Typed, unit: str) -> None:
    """The reading has every unit in it: typed in again on any bench it has the same value, terms and reading."""
    assume(len(tree.text) <= 200)
    found, said = reckon(tree.text, unit)
    assume(len(said) <= 200)
    again, said_again = reckon(said, "m")
    assert (again, said_again) == (found, said)


@given(tree=TREES)
def test_the_tape_adds_up(tree: Typed) -> None:
    """The terms, each with its sign, make the whole."""
    assume(len(tree.text) <= 200)
    found, _ = reckon(tree.text, "in")
    assert sum(term.sign * term.value for term in found.terms) == found.value


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("5-3/8", "5 3/8 in"),
        ("5 - 3/8", "5 in − 3/8 in"),
        ("12 - 5-3/8", "12 in − 5 3/8 in"),
        ("5⅜ + 2½", "5 3/8 in + 2 1/2 in"),
        ("10-3", "10 in − 3 in"),
        ("5/8-3/8", "5/8 in − 3/8 in"),
        ("5'-3 1/2\" - 2", "5 ft 3 1/2 in − 2 in"),
        ("5' - 3\"", "5 ft − 3 in"),
        ("5'-3-1/2\"", "5 ft 3 1/2 in"),
        ("2×3in", "2 × 3 in"),
        ("2 x 3", "2 in × 3"),
        ("2 * (3 + 4)", "2 in × (3 + 4)"),
        ("(3 + 4) x 2", "(3 in + 4 in) × 2"),
        ("(3 + 4) x 2 mm", "(3 + 4) × 2 mm"),
        ("12 in / 3", "12 in ÷ 3"),
        ("(1 + 2)/2", "(1 in + 2 in) ÷ 2"),
        ("10 / 4", "2 1/2 in"),
        ("12 in ÷ 3/4", "12 in ÷ 3/4"),
        ("12 in / 3/4 in", "12 in ÷ 3/4 in"),
        ("4 ft ÷ 1 3/4 in × 2", "4 ft ÷ 1 3/4 in × 2"),
        ("(4 ft ÷ 2 in) + 1", "(4 ft ÷ 2 in) + 1"),
        ("6 - -2", "6 in − −2 in"),
        ("-3 + 5", "−3 in + 5 in"),
        ("2 × -3 mm", "2 × −3 mm"),
        ("9 3/4 + 2 × 16 mm", "9 3/4 in + 2 × 16 mm"),
    ],
)
def test_each_is_read_as_it_would_be_at_the_bench(text: str, read: str) -> None:
    """Bare numbers get the maker's unit where they are sizes and none where they count; the reading says which."""
    assert reckon(text, "in")[1] == read


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("5 -3/8", "could mean two things; type 5 3/8 for one size, or 5 - 3/8 to take away"),
        ("5- 3/8", "could mean two things"),
        ("12+5-3/8", "could mean two things"),
        ("2x5-3/8", "could mean two things"),
        ("5' -3\"", "could mean two things"),
        ("12 ÷ 6 / 2", "could mean two things"),
        ("1 ft 6 / 2", "could mean two things"),
        ("8/2/2", "could mean two things"),
        ("1,500 + 2", "could mean 1500 or 1.500"),
        ("3 in × 4 in", "an area, not a length"),
        ("3 in × 4 in ÷ 2 in", "an area, not a length"),
        ("12 ÷ 3 in", "put a unit to the first"),
        ("3 in + 4 in ÷ 2 in", "add lengths to lengths"),
        ("1 in ÷ 0", "nothing divides"),
        ("1 in ÷ (3 − 3)", "nothing divides"),
        ("2(3)", "no sign between them"),
        ("(3) 2", "no sign between them"),
        ("3 +", "missing at the end"),
        ("× 3", "missing before"),
        ("3 ÷ ÷ 2", "missing before"),
        ("- - 3", "missing before"),
        ("()", "missing before"),
        ("(3", "never shut"),
        ("3)", "never opened"),
        ("3 plus 4", "for a unit"),
        ("3 = 4", "not understood"),
        ("3 4 + 1", "could mean two things; type it like"),
        ("", "nothing is typed"),
        ("1" * 201, "201 characters long"),
        ("٣ + 1", "type the digits 0 to 9"),
    ],
)
def test_what_could_mean_two_things_or_nothing_is_refused(text: str, words: str) -> None:
    """A sentence, with what to type instead."""
    with pytest.raises(Refusal) as refused:
        reckon(text, "in")
    assert words.lower() in str(refused.value).lower()
    assert refused.value.instead


def test_brackets_are_followed_so_deep_and_no_deeper() -> None:
    """Twenty within each other are read, one more is refused in words; nothing overflows."""
    assert reckon("(" * DEEPEST + "1" + ")" * DEEPEST, "mm")[0].value == 1
    with pytest.raises(Refusal, match="more than 20 brackets"):
        reckon("(" * 90 + "1" + ")" * 90, "mm")


def ends_well(text: str) -> bool:
    """True for an answer, and for a refusal that says what to type instead."""
    try:
        return reckon(text, "in")[0].value > 0
    except Refusal as refusal:
        return bool(refusal.instead)


@pytest.mark.parametrize("text", ["1+" * 99 + "1", "9x" * 99 + "9", "1÷" * 99 + "9", "-" * 200, "(" * 200, "9" * 200])
def test_the_longest_entries_are_answered_or_refused(text: str) -> None:
    """Two hundred signs of anything end in a number or a sentence."""
    assert ends_well(text)
