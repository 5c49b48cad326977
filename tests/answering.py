"""Every sum and every given, for tests that are made from the declarations; and asking a sum."""

from collections.abc import Iterator

import pytest

from calc import discover
from calc.answers import Result
from calc.bench import Bench
from calc.declare import Sum
from calc.engine import reckon
from calc.errors import Refused
from calc.given import Given
from calc.rows import Rows

SUMS = discover.everything()
every_sum = pytest.mark.parametrize("name", [one.id for one in SUMS])
every_given = pytest.mark.parametrize(("name", "field"), [(one.id, asked.name) for one in SUMS for asked in one.givens])


def answered(one: Sum, texts: dict[str, str], bench: Bench | None = None) -> Result | None:
    """The answer, or None where the sum refuses; every refusal is whole."""
    try:
        return reckon(one, texts, bench or Bench())
    except Refused as refused:
        for refusal in refused.refusals:
            assert refusal.say, texts
            assert refusal.instead, str(refusal)
            assert refusal.field in ("", *(asked.name for asked in one.givens)), str(refusal)
        return None


def cells(one: Sum) -> Iterator[Given]:
    """Every given of a sum, and every column of its rows."""
    for given in one.givens:
        yield from given.columns if isinstance(given, Rows) else (given,)
