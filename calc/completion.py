"""What may come next on the command line, for a shell's completion."""

from collections.abc import Sequence

from calc import discover
from calc.command_line import FLAGS, SETTINGS
from calc.kinds import Choice


def complete(words: Sequence[str]) -> list[str]:
    """The words that could stand where the last of `words` does. bash hands over name=value as three words.

    >>> complete(["bev"]), complete(["slope", "ri"])
    (['bevel '], ['rise='])
    """
    head, part = list(words[:-1]), words[-1] if words else ""
    if part == "=" or (head and head[-1] == "="):
        named = head[-1] if part == "=" else head[-2] if len(head) > 1 else ""
        return [key for key in _keys(head, named) if key.startswith(part.removeprefix("="))]
    options = [f"--{name}" for name in (*SETTINGS, *FLAGS)] if part.startswith("-") else []
    return [word for word in (*options, *_next(head)) if word.startswith(part)]


def _next(head: list[str]) -> list[str]:
    ids = [word for word in head if word in discover.modules()]
    if not ids:
        return sorted(f"{sum_id} " for sum_id in discover.modules())
    return [f"{given.name}=" for given in discover.find(ids[0]).givens if given.name not in head]


def _keys(head: list[str], name: str) -> list[str]:
    ids = [word for word in head if word in discover.modules()]
    givens = [given for given in discover.find(ids[0]).givens if given.name == name] if ids else []
    return [option.key for given in givens if isinstance(given, Choice) for option in given.options]
