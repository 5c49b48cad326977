"""Price: the same money by the decimal module, for one and for a batch."""

from decimal import ROUND_HALF_EVEN, Decimal, localcontext
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused
from calc.bench import Bench
from calc.discover import find

EXAMPLE = find("price").example.givens
PENCE = st.integers(0, 50000).map(lambda pence: Decimal(pence) / 100)
HOURS = st.integers(0, 400).map(lambda quarters: Decimal(quarters) / 4)


def to_the_penny(amount: Decimal) -> str:
    """Two places, ties to even, by the decimal module."""
    return str(amount.quantize(Decimal("0.01"), ROUND_HALF_EVEN))


@given(stock=st.integers(1, 50000).map(lambda p: Decimal(p) / 100), hinges=PENCE, hours=HOURS, rate=PENCE, once=PENCE,
       overhead=st.integers(0, 60), batch=st.integers(1, 40))  # fmt: skip
def test_money_agrees_with_the_decimal_module(
    stock: Decimal, hinges: Decimal, hours: Decimal, rate: Decimal, once: Decimal, overhead: int, batch: int
) -> None:
    """The batch reckoned whole in decimals of sixty figures, and one of it, print to the same penny."""
    found = calc.answer(
        "price", stock=str(stock), hinges=str(hinges), hours=str(hours), rate=str(rate), once=str(once),
        overhead=str(overhead), batch=str(batch),
    )  # fmt: skip
    with localcontext() as context:
        context.prec = 60
        whole = (batch * (stock + hinges + hours * rate) + once) * (100 + overhead) / 100
        assert Fraction(whole) == found["all"]
        printed = {line.split(": ")[0]: line.split(": ")[1] for line in found.text.split("\n")[:2]}
        assert printed["Price of all"] == to_the_penny(whole)
        tie = found["each"] * 1000 % 10 == 5
        assert tie or printed["Price of one"] == to_the_penny(whole / batch)


def test_the_example_by_hand() -> None:
    """19.85 of goods, 3.5 h and a sixth of 2 h at 18 are 69 of work, a tenth on top: 97.735 (worked by hand)."""
    found = calc.answer("price", **EXAMPLE)
    assert found["goods"] == Fraction("19.85")
    assert found["labour"] == 69
    assert found["cost"] == Fraction("97.735")
    assert found["all"] == Fraction("586.41")


def test_what_is_done_once_is_shared_among_the_batch() -> None:
    """Ninety for a jig is ninety on one, and nine on each of ten."""
    one, ten = (calc.answer("price", stock="10", once="90", batch=str(batch)) for batch in (1, 10))
    assert (one["each"], ten["each"], ten["all"]) == (100, 19, 190)


def test_the_currency_is_the_makers_own_label() -> None:
    """The label stands before every amount, whatever it says; without one there is none."""
    assert "Price of one: guineas 12.00" in calc.answer("price", Bench(currency="guineas"), stock="12", gain="0").text
    assert "Price of one: 12.00" in calc.answer("price", stock="12").text


def test_a_price_asked_tells_what_an_hour_brings() -> None:
    """Sold at fifty with twenty of goods, five hours bring six each; sold under its goods, it says so."""
    found = calc.answer("price", stock="20", hours="5", rate="10", asked="50")
    assert (found["left"], found["earned"]) == (30, 6)
    assert "does not even pay" in calc.answer("price", stock="20", hours="5", asked="15").text


def test_the_price_asked_at_the_rate_itself_brings_the_rate() -> None:
    """Asked for what it costs, the work earns what was charged for it, overheads and all."""
    found = calc.answer("price", stock="20", hours="5", rate="10", overhead="25")
    again = calc.answer("price", stock="20", hours="5", rate="10", overhead="25", asked=str(float(found["cost"])))
    assert again["earned"] == 10


def test_pennies_lost_in_a_batch_are_told() -> None:
    """Ten shared by three is 3.33 each, and a penny is left over."""
    found = calc.answer("price", once="10", batch="3")
    assert (found["lost"], found["won"]) == (Fraction(1, 100), None)
    assert "not quite" in found.text
    even = calc.answer("price", once="9", batch="3")
    assert even["lost"] is even["won"] is None


def test_pennies_won_in_a_batch_are_not_told_as_lost() -> None:
    """Twenty shared by three is 6.67 each, which brings a penny more than twenty."""
    found = calc.answer("price", once="20", batch="3")
    assert (found["lost"], found["won"]) == (None, Fraction(1, 100))
    assert "not quite" in found.text


def test_a_price_that_pays_for_the_goods_but_not_the_overheads_says_just_that() -> None:
    """Twenty of goods and a tenth on top are 22: 21 pays for the goods alone, 19 not even for those."""
    goods, neither = (calc.answer("price", stock="20", overhead="10", asked=asked).text for asked in ("21", "19"))
    assert "but not for the overheads" in goods
    assert "does not even pay" not in goods
    assert "does not even pay" in neither
    assert "but not for the overheads" not in neither


def test_nothing_is_assumed() -> None:
    """Stock alone costs what it costs; no hour, no overhead, no gain is added."""
    found = calc.answer("price", stock="7.35")
    assert found["each"] == found["cost"] == Fraction("7.35")
    assert "No work is counted" in found.text


def test_nothing_at_all_is_refused() -> None:
    """A thing that takes neither money nor time has no price."""
    with pytest.raises(Refused, match="costs anything") as refused:
        calc.answer("price", hours="3")
    assert refused.value.refusals[0].field == "stock"
