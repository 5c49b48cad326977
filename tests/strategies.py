"""What people might type into a sum, made from its declaration: inside its limits, and anything at all."""

from collections.abc import Callable, Mapping
from fractions import Fraction
from functools import partial
from math import ceil, floor
from typing import Any

from hypothesis import strategies as st
from hypothesis.strategies import SearchStrategy
from measured import MEASURED, measured
from spellings import angles, inches, metric, numbers

from calc.bench import MARKS, Bench
from calc.kinds import Choice, Given, Length, Limit
from calc.rows import Rows
from calc.rule import OWN, Mark
from calc.typed import reader
from calc.typed.arithmetic import Reckoned, Term
from calc.typed.reckoning import LENGTH
from calc.units import MM_PER_INCH

FAR = Fraction(10**6)
benches = st.builds(
    Bench,
    unit=st.sampled_from(["in", "mm", "cm"]),
    mark=st.sampled_from(list(MARKS)),
    angles=st.sampled_from(["tenths", "minutes"]),
    currency=st.sampled_from(["", "£"]),
)
keys = "0123456789 /-.,'\"°%:;x×½⅜infmcdegto\n"
junk = st.text(max_size=40) | st.text(keys, max_size=30)
"""What nobody meant to type, and what a thumb makes of what somebody did."""


def ends(given: Given) -> tuple[Fraction, Fraction]:
    """The least and the greatest value the limit names, in millimetres, degrees or plain numbers."""
    low, high = given.limit.low, given.limit.high
    plain = Bench()
    return (
        Fraction(given.parse(low, plain).value) if low else -FAR,
        Fraction(given.parse(high, plain).value) if high else FAR,
    )


def within(given: Given, step: Fraction) -> SearchStrategy[Fraction]:
    """Whole steps inside the limit, small ones more often than large, never nothing when that is outside."""
    low, high = ends(given)
    first = floor(low / step) + 1 if given.limit.above else ceil(low / step)
    last = ceil(high / step) - 1 if given.limit.below else floor(high / step)
    if first > last:
        return within(given, step / 100)
    near = min(last, first + 40 * ceil(1 / step) if step < 1 else first + 400)
    return (st.integers(first, near) | st.integers(first, last)).map(lambda n: n * step)


def spelled(value: Fraction, spell: Callable[[Fraction], list[str]]) -> SearchStrategy[tuple[str, Fraction]]:
    """One of the spellings of a value, and the value; a minus in front of what is below nothing."""
    sign = "−" if value < 0 else ""
    texts = [text for text in spell(abs(value)) if not sign or (text.lstrip() == text and text[0] != "+")]
    return st.sampled_from(texts).map(lambda text: (sign + text, value))


def lengths(given: Given) -> SearchStrategy[tuple[str, Fraction]]:
    """Lengths with their units, on a rule's marks or in half millimetres; the value in millimetres."""
    inch = within(given, MM_PER_INCH / 64).flatmap(lambda mm: spelled(mm, lambda size: inches(size / MM_PER_INCH)))
    return inch | within(given, Fraction(1, 2)).flatmap(lambda mm: spelled(mm, metric))


def angled(given: Given) -> SearchStrategy[tuple[str, Fraction]]:
    """Angles to the minute or the hundredth of a degree."""
    steps = st.sampled_from([Fraction(1, 60), Fraction(1, 100), Fraction(1)])
    return steps.flatmap(lambda step: within(given, step)).flatmap(lambda value: spelled(value, angles))


def numbered(given: Given) -> SearchStrategy[tuple[str, Fraction]]:
    """Plain numbers to the hundredth, the quarter or the whole, whichever the limit has any of."""
    low, high = ends(given)
    steps = st.sampled_from(
        [step for step in (Fraction(1), Fraction(1, 100), Fraction(1, 4)) if low // step < high // step]
    )
    return steps.flatmap(lambda step: within(given, step)).flatmap(lambda value: spelled(value, numbers))


def counted(given: Given) -> SearchStrategy[tuple[str, Fraction]]:
    """Whole numbers."""
    return within(given, Fraction(1)).map(lambda value: (str(value).replace("-", "−"), value))


def chosen(given: Given) -> SearchStrategy[tuple[str, Any]]:
    """A choice by its key or its label, in any case."""
    assert isinstance(given, Choice)
    words = [word for option in given.options for word in (option.key, option.label, option.key.upper())]
    return st.sampled_from(words).map(lambda word: (word, _key(given, word)))


def _key(given: Choice, word: str) -> str:
    key = next(option.key for option in given.options if word.lower() in (option.key.lower(), option.label.lower()))
    return Bench().mark if isinstance(given, Mark) and key == OWN else key


def worded(given: Given) -> SearchStrategy[tuple[str, Any]]:
    """A few words, an x among them."""
    words = st.lists(st.sampled_from(["jar", "Box", "tin", "x", "½", "No. 2", "(old)"]), min_size=1, max_size=5)
    return words.map(lambda parts: ("  ".join(parts), " ".join(parts)))


def listed(given: Given) -> SearchStrategy[tuple[str, Any]]:
    """A few rows, each cell inside its column's limit."""
    assert isinstance(given, Rows)
    row = st.tuples(*(typed(column) for column in given.columns)).map(
        lambda cells: (" x ".join(text for text, _ in cells), [value for _, value in cells])
    )
    return st.lists(row, min_size=1, max_size=4).map(
        lambda rows: ("; ".join(text for text, _ in rows), [values for _, values in rows])
    )


def reckoned(given: Given) -> SearchStrategy[tuple[str, Any]]:
    """A few lengths added up and taken away, with the tape they must be read as."""
    size = Length(name="size", label="Size", help="A term.", limit=Limit("1 mm", "5 m"))
    terms = st.lists(st.tuples(st.sampled_from([1, -1]), lengths(size)), max_size=4)
    return st.tuples(lengths(size), terms).map(lambda drawn: _tape([(1, drawn[0]), *drawn[1]]))


def _tape(drawn: list[tuple[int, tuple[str, Fraction]]]) -> tuple[str, Reckoned]:
    terms = tuple(Term(sign, reader.length(text).read, mm) for sign, (text, mm) in drawn)
    text = " ".join(f"{'+' if sign > 0 else '-'} {text}" for sign, (text, _) in drawn)
    return text.removeprefix("+ "), Reckoned(sum(sign * mm for sign, (_, mm) in drawn), LENGTH, terms)


KINDS: Mapping[str, Callable[[Given], SearchStrategy[tuple[str, Any]]]] = {
    "length": lengths,
    "angle": angled,
    "number": numbered,
    "money": numbered,
    "count": counted,
    "choice": chosen,
    "rows": listed,
    "text": worded,
    "reckoning": reckoned,
    "percent": numbered,
    **{kind: partial(measured, kind, within) for kind in MEASURED},
}


def typed(given: Given) -> SearchStrategy[tuple[str, Any]]:
    """What may be typed for a given, with the value it must be read as."""
    return KINDS[given.kind](given)
