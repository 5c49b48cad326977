"""What is remembered from one question to the next, to answer sooner. Forgetting it changes no answer.

For functions that always give the same for the same: what an entry says, how a size prints. 1 and 1.0 are two things to
them, since one is exact. What never changes (a table, a formula) is kept by `functools.cache`.
"""

from collections.abc import Callable, Hashable
from functools import lru_cache
from typing import Any, Generic, TypeVar

Work = TypeVar("Work", bound=Callable[..., Any])
Answer = TypeVar("Answer")
_kept: list[Callable[[], None]] = []


def remembered(size: int) -> Callable[[Work], Work]:
    """A decorator: the last `size` answers are kept, those asked for longest ago let go of first.

    >>> @remembered(2)
    ... def half(number):
    ...     return number / 2
    >>> half(7), half(7), half.cache_info().hits
    (3.5, 3.5, 1)
    """

    def kept(work: Work) -> Work:
        found = lru_cache(maxsize=size, typed=True)(work)
        _kept.append(found.cache_clear)
        return found  # type: ignore[return-value]

    return kept


class Kept(Generic[Answer]):
    """The same for work whose answer hangs on less than it is handed: the caller says on what, as a key."""

    def __init__(self, size: int) -> None:
        self.size = size
        self.answers: dict[Hashable, Answer] = {}
        _kept.append(self.answers.clear)

    def get(self, key: Hashable, work: Callable[[], Answer]) -> Answer:
        """What was found under this key, or what the work gives now. 1 and 1.0 are one key: name their types in it."""
        found = self.answers.pop(key) if key in self.answers else work()
        self.answers[key] = found
        if len(self.answers) > self.size:
            del self.answers[next(iter(self.answers))]
        return found


def forget() -> None:
    """Everything is worked out anew from here on."""
    for clear in _kept:
        clear()
