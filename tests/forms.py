"""Whole forms filled in, made from the declaration of a sum."""

from hypothesis import strategies as st
from hypothesis.strategies import SearchStrategy
from strategies import about, typed

from calc.declare import Sum
from calc.given import Given

Form = dict[str, str]


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
