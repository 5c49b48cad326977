"""The words of a command sorted out: which sum or piece, what is entered, how the maker measures."""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from calc.bench import Bench
from calc.errors import Refusal, listed

SETTINGS = {"unit": "mm", "mark": "1/16", "angles": "minutes", "currency": "£"}
"""Each setting of the bench, and what one looks like."""
FLAGS = ("json", "working", "list", "help", "version")
PIECE = "piece"
TITLE = {"title": "'For the reading room'"}
"""What begins a command about a piece in a file, and the one setting that only a piece has."""
SHORT = {"-h": "--help", "-V": "--version"}


@dataclass
class Asked:
    """The words of one command: which sum, its entries, the bench's settings, the flags.

    words: for a piece in a file, what to do and with which file.
    """

    sum_id: str = ""
    words: list[str] = field(default_factory=list)
    entries: dict[str, str] = field(default_factory=dict)
    settings: dict[str, str] = field(default_factory=dict)
    flags: set[str] = field(default_factory=set)


def asking(words: Sequence[str]) -> Asked:
    """The words sorted out. Raises Refusal for one that fits nowhere."""
    asked, rest = Asked(), list(words)
    while rest:
        word = rest.pop(0)
        if word.startswith("-"):
            _option(asked, word, rest)
        elif "=" in word:
            _entry(asked, *word.split("=", 1))
        elif asked.sum_id == PIECE:
            asked.words.append(word)
        elif asked.sum_id:
            raise Refusal(f"“{word[:40]}” has no name", "write name=value, with quotes about a value that has spaces")
        else:
            asked.sum_id = word
    return asked


def _option(asked: Asked, word: str, rest: list[str]) -> None:
    settings = SETTINGS | (TITLE if asked.sum_id == PIECE else {})
    name, given, value = SHORT.get(word, word).removeprefix("--").partition("=")
    if name in FLAGS and not given:
        asked.flags.add(name)
    elif name in settings and (given or rest):
        asked.settings[name] = value if given else rest.pop(0)
    elif name in settings:
        raise Refusal(f"--{name} stands alone", f"write it like --{name} {settings[name]}")
    else:
        known = listed([f"--{one}" for one in (*settings, *FLAGS)], "or")
        raise Refusal(f"there is no option “{word[:40]}”", f"use {known}")


def _entry(asked: Asked, name: str, value: str) -> None:
    name = name.strip().replace("-", "_")
    if name in asked.entries:
        raise Refusal("it is given twice", "give it once", field=name)
    asked.entries[name] = value


def bench(settings: dict[str, str]) -> Bench:
    """The bench of these settings; a maker who works in millimetres gets millimetre marks unless told otherwise."""
    metric = settings.get("unit") in ("mm", "cm", "m")
    return replace(Bench(**settings), mark="mm") if metric and "mark" not in settings else Bench(**settings)
