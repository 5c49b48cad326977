"""In what order the sizes of a piece are worked out; a circle or a missing name is told with its path, in words."""

from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from graphlib import CycleError, TopologicalSorter
from itertools import pairwise


def ordered(needs: Mapping[str, Collection[str]], known: Collection[str]) -> tuple[str, ...]:
    """The names of `needs`, each after all that it needs; of those that could stand alike, in the order declared.

    `known` need nothing. ValueError says in words which name is missing, or which way the circle runs.

    >>> ordered({"lid": ["depth", "lip"], "lip": ["depth"]}, ["depth"])
    ('lip', 'lid')
    """
    _all_known(needs, known)
    sorter = TopologicalSorter({name: [one for one in wanted if one in needs] for name, wanted in needs.items()})
    try:
        sorter.prepare()
    except CycleError as circle:
        raise ValueError(_circle(circle.args[1])) from None
    return tuple(_by_rounds(sorter, list(needs).index))


def led_to(needs: Mapping[str, Collection[str]], wanted: Iterable[str]) -> tuple[str, ...]:
    """The names wanted, each after what leads to it and has not been named yet.

    >>> led_to({"lid": ["lip", "depth"], "lip": ["depth"]}, ["lid"])
    ('lip', 'lid')
    """
    found: dict[str, None] = {}
    waiting: dict[str, None] = {}

    def visit(name: str) -> None:
        waiting[name] = None
        for one in (one for one in needs[name] if one in needs and one not in waiting):
            visit(one)
        found[name] = None

    for name in wanted:
        if name not in waiting:
            visit(name)
    return tuple(found)


def _by_rounds(sorter: "TopologicalSorter[str]", place: Callable[[str], int]) -> list[str]:
    found: list[str] = []
    while sorter.is_active():
        ready = sorted(sorter.get_ready(), key=place)
        sorter.done(*ready)
        found += ready
    return found


def _circle(path: Sequence[str]) -> str:
    """The path of a circle in words; graphlib hands it with each name before the one that needs it."""
    links = [f"{name!r} is worked out from {needed!r}" for name, needed in pairwise(reversed(path))]
    return f"these sizes go round in a circle: {', '.join(links)}"


def _all_known(needs: Mapping[str, Collection[str]], known: Collection[str]) -> None:
    everything = {*known, *needs}
    for name, wanted in needs.items():
        for missing in (one for one in wanted if one not in everything):
            needed = f"{missing!r}, which is neither a given nor a size{_meant(missing, everything)}"
            raise ValueError(f"{_way(name, needs)} needs {needed}")


def _meant(missing: str, everything: Collection[str]) -> str:
    import difflib  # only when something was misspelt

    near = difflib.get_close_matches(missing, sorted(everything), 1)
    return f"; did you mean {near[0]!r}?" if near else ""


def _way(name: str, needs: Mapping[str, Collection[str]]) -> str:
    """A name and what is worked out from it: "'lip', on the way to 'lid',"."""
    after = next((one for one, wanted in needs.items() if name in wanted and one != name), "")
    return f"{name!r}, on the way to {after!r}," if after else repr(name)
