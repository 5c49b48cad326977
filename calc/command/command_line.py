"""The command line, made from the declarations: `tenpenny slope rise="3 in" run="1 ft"`.

`run` turns words into text and a status and does nothing else, so that it can be tried without a shell.
"""

import json
from collections.abc import Sequence
from dataclasses import dataclass

import calc
from calc import discover
from calc.answers import Result
from calc.command.asking import PIECE, Asked, asking, bench
from calc.command.files import Files
from calc.declare import Sum
from calc.door import refusal
from calc.engine import reckon
from calc.errors import Refusal, Refused


@dataclass(frozen=True)
class Told:
    """What to print where, and how to leave: 0 answered, 2 something could not be used."""

    out: str = ""
    err: str = ""
    status: int = 0


def run(words: Sequence[str], files: Files | None = None) -> Told:
    """Do what the words ask; whatever cannot be used is told in sentences, with status 2."""
    if words[:1] == ["--complete"]:
        from calc.command.completion import complete

        return Told("\n".join(complete(words[1:])))
    asked = Asked()
    try:
        asked = asking(words)
        return Told(_answered(asked, files))
    except Refused as refused:
        refusals = refused.refusals
    except Refusal as one:
        refusals = (one,)
    told = json.dumps({"refusals": [refusal(one) for one in refusals]}, ensure_ascii=False)
    return Told(told if "json" in asked.flags else "", "\n".join(str(one) for one in refusals), 2)


def _answered(asked: Asked, files: Files | None) -> str:
    if "version" in asked.flags:
        return f"tenpenny {calc.VERSION}"
    if asked.sum_id == PIECE:
        from calc.command import command_pieces  # a plain answer needs no piece

        return command_pieces.told(asked, files)
    if "list" in asked.flags or "help" in asked.flags or not asked.sum_id:
        return _told(asked)
    result = reckon(discover.find(asked.sum_id), asked.entries, bench(asked.settings))
    return _json(result) if "json" in asked.flags else _text(result, "working" in asked.flags)


def _told(asked: Asked) -> str:
    from calc import describe  # a plain answer needs neither
    from calc.command import guide  # a plain answer needs neither

    sums = (discover.find(asked.sum_id),) if asked.sum_id else discover.everything()
    if "json" in asked.flags:
        described: list[object] = [describe.describe(one) for one in sums]
        return json.dumps(described[0] if asked.sum_id else described, ensure_ascii=False, indent=1)
    if asked.sum_id:
        return guide.page(sums[0], bench(asked.settings))
    return guide.contents(sums) if "list" in asked.flags else guide.usage(sums)


def _json(result: Result) -> str:
    return json.dumps(result.undrawn(), ensure_ascii=False, indent=1, allow_nan=False)


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
