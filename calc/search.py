"""A choice of many, found by a part of its name: every word typed must stand somewhere in the name."""

import re
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache

from calc.bench import Bench
from calc.errors import Refusal, listed
from calc.kinds import Choice, Option
from calc.typed.glyphs import quoted, tidy
from calc.typed.reading import Reading

MANY = 8
"""Names listed where what was typed could mean several."""


@dataclass(frozen=True, kw_only=True)
class Search(Choice):
    """One of many, such as a wood by its common or its botanical name; `work` is handed the key.

    `what` is what is looked for, in a sentence: "wood", found by a part of its `by`. Told to a page
    as a choice with "search" true.
    """

    what: str = "one"
    by: str = "common or botanical name"

    def parse(self, text: str, bench: Bench) -> Reading:
        """The key, by key or name, or by words that stand in one name only. Raises Refusal with the names near."""
        wanted = tidy(text).casefold()
        found = [option for option in self.options if wanted in (option.key.casefold(), option.label.casefold())]
        found = found or self._named(words(wanted))
        if len(found) != 1:
            raise self._many(text, found) if found else self._none(text, wanted)
        return Reading(found[0].key, "", found[0].label)

    def _named(self, wanted: list[str]) -> list[Option]:
        """The options these words name: as the whole common name, as words of it, as beginnings, as parts of words."""
        numbers = {word for word in wanted if not word.isalpha()}

        def whole(option: Option) -> bool:
            """Part of a number is another number: 2 is not found in 12, nor in 1/2."""
            return numbers <= set(_known(option.label))

        ways: tuple[Callable[[Option], bool], ...] = (
            lambda o: sorted(wanted) == sorted(_known(o.label.partition("(")[0])),
            lambda o: all(word in _known(o.label) for word in wanted),
            lambda o: whole(o) and all(f" {word}" in f" {' '.join(_known(o.label))}" for word in wanted),
            lambda o: whole(o) and all(word in " ".join(_known(o.label)) for word in wanted),
        )
        found = ([o for o in self.options if wanted and way(o)] for way in ways)
        return next((some for some in found if some), [])

    def _many(self, text: str, found: list[Option]) -> Refusal:
        names = [option.label for option in found]
        more = [f"{len(names) - MANY} more"] if len(names) > MANY else []
        return Refusal(f"{quoted(text.strip())} could be {'; '.join(names[:MANY] + more)}", "type more of the name")

    def _none(self, text: str, wanted: str) -> Refusal:
        import difflib  # only when something was misspelt

        known = {word: o.label for o in self.options for word in (*_known(o.label), " ".join(_known(o.label)))}
        near = sorted({known[word] for word in difflib.get_close_matches(wanted, known, 4, 0.7)})
        instead = f"perhaps {listed(near, 'or')}" if near else f"type a part of its {self.by}"
        return Refusal(f"{quoted(text.strip())} is no {self.what} in the table", instead)


def words(text: str) -> list[str]:
    """The words of a name, in small letters, whatever stands between them; an x between two numbers is a word.

    >>> words("Ash, white (Fraxinus americana)"), words("5/4x6")
    (['ash', 'white', 'fraxinus', 'americana'], ['5/4', 'x', '6'])
    """
    return re.findall(r"\d+/\d+|\w+", re.sub(r"(?<=\d)x(?=\d)", " x ", text.casefold()))


_known = cache(words)
"""The same of names that never change."""
