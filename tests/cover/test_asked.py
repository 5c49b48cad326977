"""Everything a sum asks for has a range, a default that can be read, choices that differ."""

from answering import cells, every_given, every_sum

from calc import discover
from calc.bench import Bench
from calc.kinds import Choice

UNNUMBERED = ("choice", "rows", "reckoning", "text")


@every_given
def test_defaults_are_accepted_and_explained(name: str, field: str) -> None:
    """A default can be read, means the same on every bench, and says why it is that, unless none, one or a choice."""
    given = discover.find(name).given(field)
    if given.default:
        assert given.default_why or given.kind == "choice" or given.default in ("0", "1"), given.name
        given.read(given.default, Bench())
    if given.default and given.kind in ("length", "number", "angle", "count"):
        assert given.read(given.default, Bench()).value == given.read(given.default, Bench(unit="m")).value


@every_sum
def test_every_number_asked_for_has_a_range(name: str) -> None:
    """A number without a limit would let a slip of the thumb through."""
    for given in cells(discover.find(name)):
        if given.kind not in UNNUMBERED:
            assert given.limit.low, given.name
            assert given.limit.high, given.name


@every_sum
def test_choices_differ(name: str) -> None:
    """No two choices share a key or a label, in any case."""
    for given in (each for each in cells(discover.find(name)) if isinstance(each, Choice)):
        words = [word for one in given.options for word in {one.key.casefold(), one.label.casefold()}]
        assert len(words) == len(set(words)), given.name
