"""What may come next on the command line, for a shell's completion."""

from collections.abc import Sequence

import calc
from calc import discover
from calc.command.asking import FLAGS, PIECE, SETTINGS
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
    if head[:1] == [PIECE]:
        return _of_piece(head[1:])
    ids = [word for word in head if word in discover.modules()]
    if not ids:
        return sorted(f"{word} " for word in (PIECE, *discover.modules()))
    return [f"{given.name}=" for given in discover.find(ids[0]).givens if given.name not in head]


def _of_piece(head: list[str]) -> list[str]:
    """What to do with a piece; for a new one, after its file, which."""
    from calc.command.command_pieces import DOES

    if not head:
        return [f"{act} " for act in DOES]
    return [f"{one.id} " for one in calc.pieces()] if head[0] == "new" and len(head) == 2 else []


def _keys(head: list[str], name: str) -> list[str]:
    ids = [word for word in head if word in discover.modules()]
    givens = [given for given in discover.find(ids[0]).givens if given.name == name] if ids else []
    return [option.key for given in givens if isinstance(given, Choice) for option in given.options]
