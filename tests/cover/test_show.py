"""The printer: to the nearest mark, ties to even, and nothing printed further off than it says."""

import decimal
import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc import show
from calc.answer_kinds import as_answer
from calc.bench import MARKS, Bench
from calc.cells import printed
from calc.discover import find
from calc.typed import reader

INCH = Fraction(254, 10)
CENT = Fraction(1, 100)
marks = pytest.mark.parametrize("mark", MARKS)
sizes = st.fractions(-3000, 3000, max_denominator=10**6) | st.floats(-3000, 3000)
LEFT = re.compile(r"(strong|scant) by (under )?(\d+\.\d\d) mm")


def half_even(value: Fraction | float, places: int) -> str:
    """Python's decimal module, rounding half to even, as an independent printer."""
    with decimal.localcontext(prec=1000):
        whole = Fraction(value)
        exact = decimal.Decimal(whole.numerator) / decimal.Decimal(whole.denominator)
        text = f"{exact.quantize(decimal.Decimal(1).scaleb(-places), decimal.ROUND_HALF_EVEN):f}"
    return text.replace("-", "−") if float(text) else text.removeprefix("-")


def left(text: str) -> tuple[Fraction, Fraction]:
    """What a printed left-over stands for, and how far off that may be: half its last digit."""
    if not text:
        return Fraction(0), show.NOISE
    found = LEFT.fullmatch(text)
    assert found, text
    sign = 1 if found[1] == "strong" else -1
    return (Fraction(0), CENT / 2) if found[2] else (sign * Fraction(found[3]), CENT / 2)


@pytest.mark.parametrize(
    ("value", "places", "printed"),
    [("1.655000", 2, "1.66"), ("1.625000", 2, "1.62"), ("60.25132", 1, "60.3"), ("2.5", 0, "2"), ("3.5", 0, "4")],
)
def test_a_tie_goes_to_the_even_digit(value: str, places: int, printed: str) -> None:
    """ASME A112.18.1-2018/CSA B125.1-18, annex A (first three, read); the whole numbers follow the same rule."""
    assert show.decimal(Fraction(value), places) == printed


@pytest.mark.parametrize(("inches", "places", "printed"), [("36", 0, "91"), ("40.1", 1, "101.9")])
def test_inches_in_centimetres_as_published(inches: str, places: int, printed: str) -> None:
    """NIST Metric Style Guide (LC 1137), as quoted on a stored page: 36 in is 91 cm, 40.1 in is 101.9 cm."""
    assert show.decimal(Fraction(inches) * INCH / 10, places) == printed


@given(st.fractions(-(10**6), 10**6, max_denominator=10**4) | st.floats(-(10**6), 10**6), st.integers(0, 6))
def test_decimals_round_as_the_decimal_module_does(value: Fraction | float, places: int) -> None:
    """Exact values and floats alike, to the last bit; nought is never negative."""
    assert show.decimal(value, places) == half_even(value, places)


@pytest.mark.parametrize("places", range(4))
@pytest.mark.parametrize("sign", [1, -1])
def test_every_tie_goes_to_even(places: int, sign: int) -> None:
    """n and a half of the last place, exact, for n to 200."""
    for n in range(201):
        value = sign * Fraction(2 * n + 1, 2 * 10**places)
        assert show.decimal(value, places) == half_even(value, places)
        last = int(show.decimal(value, places)[-1])
        assert last % 2 == 0


def test_a_float_is_rounded_as_the_number_it_is() -> None:
    """0.015 is kept a little under, though a hundred times it comes out on the tie, which would go up."""
    assert Fraction(0.015) < Fraction(15, 1000)
    assert round(0.015 * 100) == 2
    assert show.decimal(0.015, 2) == "0.01"


@given(sizes)
@marks
def test_nothing_printed_is_further_off_than_it_says(mark: str, mm: Fraction | float) -> None:
    """The mark read back, and what is left over added, are the length to half a hundredth of a millimetre."""
    shown = show.length(mm, Bench(mark=mark))
    printed = reader.length(shown.text).mm
    over, off = left(shown.left)
    assert abs(Fraction(mm) - printed - (over if printed >= 0 else -over)) <= off + show.NOISE * isinstance(mm, float)


@given(sizes)
@marks
def test_the_other_unit_is_off_by_half_its_last_digit_at_most(mark: str, mm: Fraction | float) -> None:
    """Tenths of a millimetre beside inches, thousandths of an inch beside millimetres."""
    shown = show.length(mm, Bench(mark=mark))
    half = Fraction(1, 20) if shown.text.endswith("in") else INCH / 2000
    assert abs(Fraction(mm) - reader.length(shown.also).mm) <= half


@given(sizes)
@marks
def test_the_mark_printed_is_the_nearest(mark: str, mm: Fraction | float) -> None:
    """No mark of the rule is nearer, and a printed fraction is one that stands on the rule in lowest terms."""
    bench = Bench(mark=mark)
    step = bench.step * (INCH if bench.system == "in" else 1)
    text = show.length(mm, bench).text
    assert abs(Fraction(mm) - reader.length(text).mm) <= step / 2
    for top, bottom in re.findall(r"(\d+)/(\d+)", text):
        assert int(top) < int(bottom)
        assert int(top) % 2 == 1
        assert bench.step.denominator % int(bottom) == 0


@marks
def test_half_way_between_two_marks_the_even_one_is_printed(mark: str) -> None:
    """n and a half marks go to the even one of n and n + 1, for n to 200."""
    bench = Bench(mark=mark)
    step = bench.step * (INCH if bench.system == "in" else 1)
    for n in range(201):
        printed = reader.length(show.length((n + Fraction(1, 2)) * step, bench).text).mm / step
        assert printed in (n, n + 1)
        assert printed % 2 == 0


@pytest.mark.parametrize("mark", ["1/8", "1/16", "1/32", "1/64"])
def test_every_sixty_fourth_to_a_hundred_inches_is_printed_and_read_back(mark: str) -> None:
    """n/64 in for n to 6400: exact on the 1/64 mark, and on the others off by what is said."""
    bench = Bench(mark=mark)
    for n in range(6401):
        mm = Fraction(n, 64) * INCH
        shown = show.length(mm, bench)
        over, off = left(shown.left)
        assert abs(reader.length(shown.text).mm + over - mm) <= off
        assert not shown.left or n % int(64 * bench.step), n


def test_what_is_left_over_of_a_negative_length_belongs_to_its_size() -> None:
    """Five and three eighths strong is longer than five and three eighths, whichever way it is counted."""
    assert str(show.length(Fraction(-137), Bench())) == "−5 3/8 in, strong by 0.48 mm (−137 mm)"


@pytest.mark.parametrize("value", [Fraction(0), 0, -0.0, -1e-9, Fraction(-1, 10**9)])
def test_nothing_is_never_negative(value: Fraction | float) -> None:
    """−0 is printed nowhere: not as a decimal, an amount, an angle or a length."""
    texts = [show.decimal(value, 2), show.plain(value), show.minutes(value), show.angle(value, Bench()).text]
    texts += [
        show.length(value, Bench()).text,
        show.length(value, Bench(mark="mm")).text,
        show.money(value, Bench()).text,
    ]
    assert not any(text.startswith("−") for text in texts)


def test_a_given_in_percent_prints_as_a_percentage() -> None:
    """A piece tells its givens as its answers are told."""
    (waste,) = (one for one in find("wall-shelf").givens if one.name == "waste")
    assert str(printed(as_answer(waste), Fraction(25), Bench())) == "25%"
