"""Formulas as they are shown: read once by Python's own parser, printed in letters, printed in numbers, and worked out.

The notation is arithmetic on names: + - * / **, pi, and the functions of TRADE. `thickness / inch` is the thickness
in inches. Nothing is ever compiled or run: the tree is walked.
"""

import ast
import math
import operator
from collections.abc import Callable, Mapping
from fractions import Fraction
from functools import cache
from typing import Any

from calc import trig
from calc.units import MM_PER_INCH

UNITS = {"inch": MM_PER_INCH, "foot": 12 * MM_PER_INCH, "mm": 1, "metre": 1000}
PI = "pi"
PLURAL = {"inch": "inches", "foot": "feet", "mm": "mm", "metre": "metres"}
TRADE: dict[str, Callable[..., Any]] = {
    "sqrt": trig.sqrt,
    "sin": trig.sin,
    "cos": trig.cos,
    "tan": trig.tan,
    "asin": trig.asin,
    "acos": trig.acos,
    "atan": trig.atan,
    "ceil": math.ceil,
    "floor": math.floor,
    "round": round,
    "abs": abs,
    "min": min,
    "max": max,
}
_WORK: dict[type, Callable[[Any, Any], Any]] = {
    ast.Add: operator.add,
    ast.Sub: operator.sub,
    ast.Mult: operator.mul,
    ast.Div: operator.truediv,
    ast.Pow: operator.pow,
}
_SIGN = {ast.Add: " + ", ast.Sub: " − ", ast.Mult: " × ", ast.Div: " ÷ ", ast.Pow: " to the power "}
_RANK = {ast.Add: 1, ast.Sub: 1, ast.Mult: 2, ast.Div: 2, ast.Pow: 4}
Say = Callable[[str, str], str]
_POWERS = {2: "²", 3: "³", 4: "⁴"}
_NOTATION = (ast.BinOp, *_WORK, ast.UnaryOp, ast.USub, ast.Call, ast.Name, ast.Load, ast.Constant)


@cache
def tree(text: str) -> ast.expr:
    """The formula as a tree; ValueError when it uses more than the notation allows."""
    made = ast.parse(text, mode="eval").body
    for node in ast.walk(made):
        if not isinstance(node, _NOTATION) or (
            isinstance(node, ast.Constant) and not isinstance(node.value, int | float)
        ):
            raise ValueError(f"{text!r} uses {type(node).__name__}")
    return made


@cache
def names(text: str) -> frozenset[str]:
    """The values a formula needs."""
    found = {node.id for node in ast.walk(tree(text)) if isinstance(node, ast.Name)}
    return frozenset(found - TRADE.keys() - UNITS.keys() - {PI})


def work(text: str, values: Mapping[str, Any]) -> Any:
    """The formula worked out on numbers.

    >>> work("sqrt(rise ** 2 + run ** 2)", {"rise": 3, "run": 4})
    Fraction(5, 1)
    """
    return _work(tree(text), values)


def _work(node: ast.expr, values: Mapping[str, Any]) -> Any:
    match node:
        case ast.Constant(value=value):
            return Fraction(str(value))
        case ast.Name(id=name) if name == PI:
            return math.pi
        case ast.Name(id=name):
            return UNITS[name] if name in UNITS else values[name]
        case ast.UnaryOp(operand=inner):
            return -_work(inner, values)
        case ast.BinOp(left=left, op=sign, right=right):
            return _WORK[type(sign)](_work(left, values), _work(right, values))
        case ast.Call(func=ast.Name(id=name), args=args):
            return TRADE[name](*(_work(one, values) for one in args))
    raise ValueError(f"cannot work out {ast.dump(node)}")


def show(text: str, say: Say) -> str:
    """The formula as print, every value as `say(name, unit)` puts it: by its label, or by its number.

    >>> show("sqrt(rise ** 2 + run ** 2)", lambda name, unit: name)
    '√(rise² + run²)'
    """
    return _show(tree(text), say)


def letters(text: str, labels: Mapping[str, str]) -> str:
    """The formula with every value by its label.

    >>> letters("thickness / inch", {"thickness": "board thickness"})
    'board thickness in inches'
    """
    return _lettered(text, tuple((name, labels[name]) for name in names(text)))


@cache
def _lettered(text: str, labels: tuple[tuple[str, str], ...]) -> str:
    called = dict(labels)
    return show(text, lambda name, unit: f"{called[name]} in {PLURAL[unit]}" if unit else called[name])


def _show(node: ast.expr, say: Say, rank: int = 0) -> str:
    match node:
        case ast.Constant(value=value):
            return str(value)
        case ast.Name(id=name) if name == PI:
            return "π"
        case ast.Name(id=name):
            return f"1 {name}" if name in UNITS else _shut(say(name, ""), rank > 3)
        case ast.UnaryOp(operand=inner):
            return _shut("−" + _show(inner, say, 3), rank > 1)
        case ast.Call(func=ast.Name(id=name), args=args):
            inside = ", ".join(_show(one, say) for one in args)
            return f"√({inside})" if name == "sqrt" else f"{_NAMES.get(name, name)}({inside})"
        case ast.BinOp(left=ast.Name(id=name), op=ast.Div(), right=ast.Name(id=unit)) if unit in UNITS:
            return _shut(say(name, unit), rank > 3)
        case ast.BinOp(left=left, op=ast.Pow(), right=ast.Constant(value=int(power))):
            raised = _show(left, say, 4) + _POWERS[power]
            return f"({raised})" if rank > 3 else raised
        case ast.BinOp(left=left, op=sign, right=right):
            mine = _RANK[type(sign)]
            return _shut(_show(left, say, mine) + _SIGN[type(sign)] + _show(right, say, mine + 1), rank > mine)
    raise ValueError(f"cannot show {ast.dump(node)}")


_NAMES = {
    "ceil": "round up",
    "floor": "round down",
    "round": "nearest whole",
    "min": "least of",
    "max": "greatest of",
    "abs": "size of",
}


def _shut(text: str, shut: bool) -> str:
    return f"({text})" if shut and (" " in text or text.startswith("−")) else text
