"""Every sum, asked with what its own declaration allows: answered or refused in words, proved, as its formulas say."""

import json
import math
from fractions import Fraction
from typing import Any

from answering import answered, every_sum
from forms import forms
from hypothesis import assume, given
from hypothesis import strategies as st
from strategies import benches

from calc import discover, formula
from calc.answers import Result
from calc.bench import Bench
from calc.declare import Sum


def some_answer(one: Sum, data: st.DataObject, bench: Bench | None = None) -> Result:
    """An answer to some form; forms that are refused are drawn again, and hypothesis fails when nearly all are."""
    result = answered(one, data.draw(forms(one)), bench)
    assume(result)
    assert result
    return result


@every_sum
@given(data=st.data())
def test_it_returns_what_it_declares(name: str, data: st.DataObject) -> None:
    """Every answer declared is returned, and nothing else but the givens; a given goes through unchanged."""
    one = discover.find(name)
    result = some_answer(one, data)
    names = {asked.name for asked in one.givens} | {answer.name for answer in one.answers}
    assert set(result.values) == names
    for name, reading in result.readings.items():
        assert result[name] == reading.value, name


@every_sum
@given(data=st.data())
def test_its_proof_holds(name: str, data: st.DataObject) -> None:
    """The identities that the answers must satisfy are missed by less than a thousand millionth."""
    one = discover.find(name)
    result = some_answer(one, data)
    misses = one.proof(result.values)
    assert misses
    for identity, miss in misses.items():
        assert abs(miss) < 1e-9, identity


@every_sum
@given(data=st.data())
def test_the_formulas_shown_give_its_answers(name: str, data: st.DataObject) -> None:
    """Each formula whose parts are known, worked out as it is printed, gives what `work` gave."""
    one = discover.find(name)
    result = some_answer(one, data)
    for line in one.formulas:
        if all(result.values.get(name) is not None for name in (line.name, *formula.names(line.text))):
            shown, worked = formula.work(line.text, result.values), result[line.name]
            assert math.isclose(shown, worked, rel_tol=1e-9, abs_tol=line.within), line.text


@every_sum
@given(data=st.data())
def test_it_can_be_read_on_any_bench(name: str, data: st.DataObject) -> None:
    """The answer as text, and as JSON without NaN; every number finite; an exact one with its fraction."""
    one = discover.find(name)
    result = some_answer(one, data, data.draw(benches))
    assert result.text
    assert [str(line) for line in result.working] or not one.formulas
    for answer in json.loads(json.dumps(result.to_dict(), allow_nan=False))["answers"]:
        for cell in [each for row in answer.get("rows", []) for each in row] or [answer]:
            whole(cell)


def whole(cell: dict[str, Any]) -> None:
    """A cell says its value exactly when it says that it is exact."""
    if cell.get("exact") and isinstance(cell.get("value"), int | float):
        assert math.isclose(Fraction(cell["fraction"]), cell["value"], rel_tol=1e-12, abs_tol=1e-12), cell
