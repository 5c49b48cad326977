"""A piece being built, as it is kept: every entry in the order it was made, and nothing else.

What is given, what is cut and what came first are all read off the entries, so undoing is leaving the last one out.
"""

from dataclasses import dataclass, field, replace
from functools import cached_property

from calc.bench import Bench
from calc.errors import Refusal

ACTS = ("give", "cut", "uncut", "first")
MOST_ENTRIES = 2000
LONGEST_TITLE = 80
UNDECIDED = "?"
"""Typed for what is not decided yet."""


@dataclass(frozen=True)
class Entry:
    """One thing the maker did. `unit` is what a bare number meant then, `mark` the finest mark of the rule in hand."""

    act: str
    name: str
    text: str = ""
    unit: str = "in"
    mark: str = "1/16"


@dataclass(frozen=True)
class Record:
    """One piece as it is kept. `title` is the maker's own name for it."""

    piece: str
    title: str = ""
    bench: Bench = field(default_factory=Bench)
    entries: tuple[Entry, ...] = ()

    def __post_init__(self) -> None:
        if len(self.title) > LONGEST_TITLE or not self.title.isprintable():
            raise Refusal("this is no name for a piece", f"use at most {LONGEST_TITLE} letters", "title", "Name")

    @cached_property
    def givens(self) -> dict[str, Entry]:
        """The last word on each given; an empty one goes back to its default."""
        return {name: entry for name, entry in self._last("give").items() if entry.text.strip()}

    @cached_property
    def cuts(self) -> dict[str, Entry]:
        """The size each part came out at, by the name of the size."""
        return {name: entry for name, entry in self._last("cut", "uncut").items() if entry.act == "cut"}

    def _last(self, *acts: str) -> dict[str, Entry]:
        """The last of these acts on each name, the latest at the end."""
        found: dict[str, Entry] = {}
        for entry in (one for one in self.entries if one.act in acts):
            found.pop(entry.name, None)
            found[entry.name] = entry
        return found

    @cached_property
    def first(self) -> tuple[str, ...]:
        """The cuts that the maker says came first, the first of all in front."""
        order: list[str] = []
        for entry in self.entries:
            if entry.act in ("first", "uncut") and entry.name in order:
                order.remove(entry.name)
            if entry.act == "first":
                order.insert(0, entry.name)
        return tuple(order)

    def at(self, bench: Bench) -> "Record":
        """The record at another bench; what was entered keeps the unit and the mark it was entered with."""
        return replace(self, bench=bench)

    def again(self, title: str = "") -> "Record":
        """The same givens in a piece of its own, with nothing cut."""
        return replace(self, title=title, entries=tuple(self.givens.values()))

    def then(self, act: str, name: str, text: str = "") -> "Record":
        """The record with one more entry."""
        if len(self.entries) >= MOST_ENTRIES:
            raise Refusal(f"{MOST_ENTRIES} entries are in this piece", "undo some, or begin again with the same givens")
        entry = Entry(act, name, text, self.bench.unit, self.bench.mark)
        return replace(self, entries=(*self.entries, entry))


def undo(record: Record) -> Record:
    """The record before its last entry. Raises Refusal when there is none."""
    if not record.entries:
        raise Refusal("nothing is left to undo", "give a size")
    return replace(record, entries=record.entries[:-1])


def entered(entry: Entry, bench: Bench) -> Bench:
    """The bench as it was when this was entered."""
    return replace(bench, unit=entry.unit, mark=entry.mark)
