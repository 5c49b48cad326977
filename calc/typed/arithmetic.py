"""Adding, taking away, multiplying and dividing lengths as typed: one exact answer with its tape, or a refusal."""

from collections import deque
from fractions import Fraction
from typing import NamedTuple

from calc.errors import Refusal
from calc.show import MINUS
from calc.typed.reckoning import BARE, LENGTH, SIGN, Leaf, Part, Product, Shut, Total
from calc.typed.terms import LIKE, signs_and_sizes

DEEPEST = 20
"""Brackets within brackets that are followed: far more than anyone can check by eye."""


class Term(NamedTuple):
    """One term of the tape: its sign, 1 or -1, how it was read, and what it comes to (millimetres, or a number)."""

    sign: int
    read: str
    value: Fraction


class Reckoned(NamedTuple):
    """A reckoning worked out: millimetres where `measure` is LENGTH, else a plain number; and its terms, in order."""

    value: Fraction
    measure: str
    terms: tuple[Term, ...]


def reckon(text: str, unit: str) -> tuple[Reckoned, str]:
    """The exact value with its tape, and how it was read, units everywhere; bare numbers in `unit`. Raises Refusal.

    >>> reckon("5 - 3/8", "in")[1]
    '5 in − 3/8 in'
    """
    rest = deque(signs_and_sizes(text))
    tree = _total(rest, 0)
    if rest:
        raise Refusal("a bracket is shut that was never opened", "take it out, or open one before it")
    want = LENGTH if tree.kind == BARE else tree.kind
    parts = tree.parts if isinstance(tree, Total) else (("+", tree),)
    terms = tuple(Term(SIGN[sign], part.said(want, unit), part.value(want, unit)) for sign, part in parts)
    return Reckoned(tree.value(want, unit), want, terms), tree.said(want, unit)


def _total(rest: deque[str | Leaf], depth: int) -> Part:
    parts = [("+", _product(rest, depth))]
    while rest and rest[0] in ("+", "-"):
        parts.append((str(rest.popleft()), _product(rest, depth)))
    return Total(tuple(parts)) if len(parts) > 1 else parts[0][1]


def _product(rest: deque[str | Leaf], depth: int) -> Part:
    parts = [("x", _factor(rest, depth))]
    while rest and rest[0] in ("x", "÷"):
        parts.append((str(rest.popleft()), _factor(rest, depth)))
    if rest and rest[0] not in ("+", "-", ")"):
        raise Refusal("two sizes stand side by side with no sign between them", "put + − × or ÷ between them")
    return Product(tuple(parts)) if len(parts) > 1 else parts[0][1]


def _factor(rest: deque[str | Leaf], depth: int) -> Part:
    first = rest.popleft() if rest else ""
    if isinstance(first, Leaf):
        return first
    if first in ("-", "+") and rest and (rest[0] == "(" or isinstance(rest[0], Leaf)):
        inner = _factor(rest, depth)
        return Shut(inner, MINUS) if first == "-" else inner
    if first != "(":
        raise Refusal(f"a size is missing {f'before “{first}”' if first else 'at the end'}", LIKE)
    return _shut(rest, depth + 1)


def _shut(rest: deque[str | Leaf], depth: int) -> Part:
    if depth > DEEPEST:
        raise Refusal(f"there are more than {DEEPEST} brackets within brackets", "work it out in steps")
    inner = _total(rest, depth)
    if not rest:
        raise Refusal("a bracket is never shut", "put ) where it ends")
    rest.popleft()
    return Shut(inner)
