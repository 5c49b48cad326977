"""The command line, made from the declarations: `tenpenny slope rise="3 in" run="1 ft"`.

`run` turns words into text and a status and does nothing else, so that it can be tried without a shell.
"""

import json
from collections.abc import Sequence
from dataclasses import dataclass, field, replace

import calc
from calc import discover
from calc.answers import Result
from calc.bench import Bench
from calc.declare import Sum
from calc.door import refusal
from calc.engine import reckon
from calc.errors import Refusal, Refused, listed

SETTINGS = {"unit": "mm", "mark": "1/16", "angles": "minutes", "currency": "£"}
"""Each setting of the bench, and what one looks like."""
FLAGS = ("json", "working", "list", "help", "version")
SHORT = {"-h": "--help", "-V": "--version"}


@dataclass(frozen=True)
class Told:
    """What to print where, and how to leave: 0 answered, 2 something could not be used."""

    out: str = ""
    err: str = ""
    status: int = 0


@dataclass
class Asked:
    """The words of one command: which sum, its entries, the bench's settings, the flags."""

    sum_id: str = ""
    entries: dict[str, str] = field(default_factory=dict)
    settings: dict[str, str] = field(default_factory=dict)
    flags: set[str] = field(default_factory=set)


def run(words: Sequence[str]) -> Told:
    """Do what the words ask; whatever cannot be used is told in sentences, with status 2."""
    if words[:1] == ["--complete"]:
        from calc.completion import complete

        return Told("\n".join(complete(words[1:])))
    asked = Asked()
    try:
        asked = asking(words)
        return Told(_answered(asked))
    except Refused as refused:
        refusals = refused.refusals
    except Refusal as one:
        refusals = (one,)
    told = json.dumps({"refusals": [refusal(one) for one in refusals]}, ensure_ascii=False)
    return Told(told if "json" in asked.flags else "", "\n".join(str(one) for one in refusals), 2)


def asking(words: Sequence[str]) -> Asked:
    """The words sorted out. Raises Refusal for one that fits nowhere."""
    asked, rest = Asked(), list(words)
    while rest:
        word = rest.pop(0)
        if word.startswith("-"):
            _option(asked, word, rest)
        elif "=" in word:
            _entry(asked, *word.split("=", 1))
        elif asked.sum_id:
            raise Refusal(f"“{word[:40]}” has no name", "write name=value, with quotes about a value that has spaces")
        else:
            asked.sum_id = word
    return asked


def _option(asked: Asked, word: str, rest: list[str]) -> None:
    name, given, value = SHORT.get(word, word).removeprefix("--").partition("=")
    if name in FLAGS and not given:
        asked.flags.add(name)
    elif name in SETTINGS and (given or rest):
        asked.settings[name] = value if given else rest.pop(0)
    elif name in SETTINGS:
        raise Refusal(f"--{name} stands alone", f"write it like --{name} {SETTINGS[name]}")
    else:
        known = listed([f"--{one}" for one in (*SETTINGS, *FLAGS)], "or")
        raise Refusal(f"there is no option “{word[:40]}”", f"use {known}")


def _entry(asked: Asked, name: str, value: str) -> None:
    name = name.strip().replace("-", "_")
    if name in asked.entries:
        raise Refusal("it is given twice", "give it once", field=name)
    asked.entries[name] = value


def _answered(asked: Asked) -> str:
    if "version" in asked.flags:
        return f"tenpenny {calc.VERSION}"
    if "list" in asked.flags or "help" in asked.flags or not asked.sum_id:
        return _told(asked)
    result = reckon(discover.find(asked.sum_id), asked.entries, bench(asked.settings))
    return _json(result) if "json" in asked.flags else _text(result, "working" in asked.flags)


def _told(asked: Asked) -> str:
    from calc import describe, guide  # a plain answer needs neither

    sums = (discover.find(asked.sum_id),) if asked.sum_id else discover.everything()
    if "json" in asked.flags:
        described: list[object] = [describe.describe(one) for one in sums]
        return json.dumps(described[0] if asked.sum_id else described, ensure_ascii=False, indent=1)
    if asked.sum_id:
        return guide.page(sums[0], bench(asked.settings))
    return guide.contents(sums) if "list" in asked.flags else guide.usage(sums)


def bench(settings: dict[str, str]) -> Bench:
    """The bench of these settings; a maker who works in millimetres gets millimetre marks unless told otherwise."""
    metric = settings.get("unit") in ("mm", "cm", "m")
    return replace(Bench(**settings), mark="mm") if metric and "mark" not in settings else Bench(**settings)


def _json(result: Result) -> str:
    told = result.to_dict()
    del told["figure"]  # ink for a page, no use to a reader of numbers
    return json.dumps(told, ensure_ascii=False, indent=1, allow_nan=False)


def _text(result: Result, working: bool) -> str:
    read = [f"{one.label} {one.read}" + ("" if one.typed else " (as usual)") for one in result.givens]
    parts = [f"With {'; '.join(read)}", result.text]
    if working:
        parts += ["", "Working:", *(f"  {line}" for line in result.working), "", "From:", *sources(result.sum)]
    return "\n".join(parts)


def sources(one: Sum) -> list[str]:
    """Each source on a line: the work, where in it, how it was come by."""
    return [
        f"  {', '.join(part for part in (each.work, each.where, each.note) if part)} ({each.basis})"
        for each in one.sources
    ]
