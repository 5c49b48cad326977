"""Formulas: the print says what is worked out, and nothing but the small notation is let in."""

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc import formula, trig

NAMES = {"rise": 3.5, "run": 7.25, "length of the lid": 2.0, "t": 0.5}
PYTHON = {name.replace(" ", "_"): value for name, value in NAMES.items()}
SIGNS = {
    "−": "-",
    "×": "*",
    "÷": "/",
    "√": "sqrt",
    "²": "**2",
    "³": "**3",
    "⁴": "**4",
    "length of the lid": "length_of_the_lid",
}

leaves = st.sampled_from(["rise", "run", "length_of_the_lid", "t", "2", "0.5", "10"])


def grown(inner: st.SearchStrategy[str]) -> st.SearchStrategy[str]:
    """Formulas one deeper: two joined by a sign, a power, a root, a minus in front."""
    pair = st.tuples(inner, st.sampled_from("+-*/"), inner).map(lambda parts: f"({parts[0]} {parts[1]} {parts[2]})")
    power = st.tuples(inner, st.sampled_from([2, 3])).map(lambda parts: f"({parts[0]} ** {parts[1]})")
    return pair | power | inner.map(lambda one: f"(-{one})") | inner.map(lambda one: f"sqrt({one})")


formulas = st.recursive(leaves, grown, max_leaves=8)


def value(text: str) -> float | None:
    """A formula worked out by Python itself, in floats; None where it has no value."""
    try:
        found = eval(text, {"__builtins__": {}, "sqrt": math.sqrt, **PYTHON})
    except (ZeroDivisionError, ValueError, OverflowError):
        return None
    return float(found) if abs(found) < 1e12 else None


def numbers(name: str, unit: str) -> str:
    """The value of a name, as it might be printed."""
    return f"{NAMES[name.replace('_', ' ')]} in"


@given(formulas)
def test_a_formula_is_worked_out_as_python_works_it(text: str) -> None:
    """The tree walked gives what Python's own evaluation of the same text gives."""
    expected = value(text)
    if expected is not None:
        assert float(formula.work(text, PYTHON)) == pytest.approx(expected, rel=1e-9, abs=1e-9)


def test_pi_is_the_circle_s_own_and_no_value_asked_for() -> None:
    """A formula with pi needs nothing but its other names, and works it out to the last bit of a float."""
    assert formula.names("pi * diameter") == {"diameter"}
    assert formula.work("pi * diameter", {"diameter": 2}) == math.tau


@given(formulas)
def test_the_print_means_what_is_worked_out(text: str) -> None:
    """Printed in letters and read back as Python, brackets and all, it has the same value."""
    expected = value(text)
    shown = formula.show(text, lambda name, unit: name.replace("_", " "))
    for sign, python in SIGNS.items():
        shown = shown.replace(sign, python)
    if expected is not None:
        found = value(shown)
        assert found is not None, shown
        assert found == pytest.approx(expected, rel=1e-9, abs=1e-9), shown


@given(formulas)
def test_the_print_with_numbers_means_the_same(text: str) -> None:
    """With 3.5 in put in for rise, the inches taken off again, it has the same value still."""
    expected = value(text)
    shown = formula.show(text, numbers).replace(" in", "")
    for sign, python in SIGNS.items():
        shown = shown.replace(sign, python)
    if expected is not None:
        assert value(shown) == pytest.approx(expected, rel=1e-9, abs=1e-9), shown


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("pi * a * angle / 180", "π × a × angle ÷ 180"),
        ("run * tan(angle)", "run × tan(angle)"),
        ("sqrt(rise ** 2 + run ** 2)", "√(rise² + run²)"),
        ("a - (b - c)", "a − (b − c)"),
        ("a / (b * c)", "a ÷ (b × c)"),
        ("(a ** 2) ** 2", "(a²)²"),
        ("(-a) ** 2", "(−a)²"),
        ("a * -b", "a × (−b)"),
        ("ceil(a / inch)", "round up(a in inches)"),
        ("a / b * foot", "a ÷ b × 1 foot"),
        ("min(a, b)", "least of(a, b)"),
    ],
)
def test_a_formula_is_printed_as_it_is_written_by_hand(text: str, shown: str) -> None:
    """No bracket too many, none too few."""
    labels = {name: name for name in ("run", "rise", "angle", "a", "b", "c")}
    assert formula.letters(text, labels) == shown


@pytest.mark.parametrize(
    "text",
    [
        "a if b else c",
        "a.b",
        "a[0]",
        "lambda: 1",
        "a < b",
        "'a'",
        "a := 1",
        "[a]",
        "a // b",
        "a % b",
        "+a",
        "not a",
        "f(*a)",
        "f(a=1)",
    ],
)
def test_nothing_but_the_notation_is_let_in(text: str) -> None:
    """Attributes, comparisons, text and the rest are refused before anything is worked out."""
    with pytest.raises((ValueError, SyntaxError)):
        formula.tree(text)


def test_the_trades_functions_stay_exact() -> None:
    """sin(30) is exactly a half inside a formula too."""
    found: Any = formula.work("sin(angle) * inch", {"angle": 30})
    assert trig.is_exact(found)
    assert found == formula.UNITS["inch"] / 2
