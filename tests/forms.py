"""Whole forms filled in, made from the declaration of a sum."""

from collections.abc import Callable, Mapping
from fractions import Fraction
from math import ceil, floor

from hypothesis import strategies as st
from hypothesis.strategies import SearchStrategy
from spellings import angles, metric, numbers
from strategies import ends, spelled, typed

from calc.bench import Bench
from calc.declare import Sum
from calc.given import Given

Form = dict[str, str]
SPELLINGS: Mapping[str, tuple[Fraction, Callable[[Fraction], list[str]]]] = {
    "length": (Fraction(1, 2), metric),
    "angle": (Fraction(1, 100), angles),
    "number": (Fraction(1, 100), numbers),
    "money": (Fraction(1, 100), numbers),
    "count": (Fraction(1), lambda value: [str(value)]),
}


def about(given: Given, text: str) -> SearchStrategy[str]:
    """What is typed in an example, a fifth less or a quarter more, inside the limit; any choice, any rows."""
    if given.kind not in SPELLINGS:
        return typed(given).map(lambda pair: pair[0])
    (step, spell), value = SPELLINGS[given.kind], Fraction(given.parse(text, Bench()).value)
    low, high = ends(given)
    first = max(ceil(value * 4 / 5 / step), floor(low / step) + 1 if given.limit.above else ceil(low / step))
    last = min(floor(value * 5 / 4 / step), ceil(high / step) - 1 if given.limit.below else floor(high / step))
    sizes = st.integers(first, max(first, last)).map(lambda n: n * step)
    return st.just(text) | sizes.flatmap(lambda size: spelled(size, spell)).map(lambda pair: pair[0])


def text(given: Given) -> SearchStrategy[str]:
    """What may be typed for a given, anywhere inside its limit."""
    return typed(given).map(lambda pair: pair[0])


def anywhere(one: Sum) -> SearchStrategy[Form]:
    """What must be given, as many of `any_of` as are wanted, some of what may be left out, anywhere."""
    some = one.any_of.names if one.any_of else ()
    optional = {
        each.name: text(each) for each in one.givens if (each.default or each.optional) and each.name not in some
    }
    required = {each.name: text(each) for each in one.givens if each.name not in (*optional, *some)}
    picks = st.permutations(some).map(lambda order: order[: one.any_of.count]) if one.any_of else st.just([])
    return picks.flatmap(
        lambda names: st.fixed_dictionaries(
            required | {name: text(one.given(name)) for name in names}, optional=optional
        )
    )


def near(one: Sum) -> SearchStrategy[Form]:
    """The example with some of its sizes a little changed, and at most one other field filled in."""
    example = st.fixed_dictionaries({name: about(one.given(name), typed) for name, typed in one.example.givens.items()})
    some = one.any_of.names if one.any_of else ()
    others = [each for each in one.givens if each.name not in (*one.example.givens, *some)]
    if not others:
        return example
    other = st.sampled_from(others).flatmap(lambda given: st.fixed_dictionaries({given.name: text(given)}))
    return st.builds(lambda form, more: form | more, example, st.just({}) | other)


def forms(one: Sum) -> SearchStrategy[Form]:
    """Forms near the example, where most are answered, and forms from anywhere, where many are refused."""
    return st.one_of(near(one), near(one), near(one), anywhere(one))
