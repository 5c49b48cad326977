"""A piece being built, as plain JSON values for a page or a machine."""

import json
from typing import Any

from calc.answers import Result
from calc.building.changes import Change, Changes
from calc.building.contest import contested
from calc.building.gap import Gap, measured
from calc.building.gaps import Alike, alike, gaps
from calc.building.settle import Settled
from calc.building.size import CUT_KINDS
from calc.cells import EMPTY, cell, entry, number
from calc.engine import understood
from calc.probing.why import result, unsaid


def told(settled: Settled) -> dict[str, Any]:
    """Everything that stands: givens, sizes, what gave way, what does not fit, what cannot be used.

    first: the cuts said to have come first; contested: those that would change something if they had.
    """
    piece = settled.piece
    return {
        "piece": piece.id,
        "whole": settled.whole,
        "givens": [_given(settled, one.name) for one in piece.givens],
        "sizes": [_size(settled, name) for name in piece.sizes],
        "gaps": [gap(one) for one in gaps(settled)],
        "alike": [match(one) for one in alike(settled)],
        "first": [name for name in settled.record.first if name in settled.cuts],
        "contested": contested(settled),
        "broken": [{"name": name, "say": f"The {piece.labels[name]} {say}."} for name, say in settled.broken.items()],
        "impossible": [{"name": name, "say": str(one)} for name, one in settled.refused.items()],
        "refusals": [{"field": one.field, "say": one.say, "instead": one.instead} for one in settled.refusals],
    }


def answered(settled: Settled) -> Result | None:
    """The piece as the answer of a sum: working, cautions, tables, figure; None until every size is known and sound."""
    if not settled.whole:
        return None
    piece, named = settled.piece, {one.name for one in settled.piece.named}
    texts = {name: entry.text for name, entry in settled.record.givens.items()}
    values = dict.fromkeys(named) | {name: one for name, one in settled.values.items() if name in named}
    known = {name for name, one in settled.givens.items() if one is not None} | settled.cuts.keys()
    cautions = tuple(one for one in piece.cautions if one.when is None or one.when(values))
    return Result(
        piece,
        settled.bench,
        settled.readings,
        understood(piece, texts, settled.readings),
        values,
        frozenset(known),
        cautions,
    )


def in_json(settled: Settled, **more: Any) -> str:
    """All of it as JSON for a machine without a page: what stands, `more`, and the answer without its drawing."""
    result = answered(settled)
    reply = {"settled": told(settled), **more, "answer": result.undrawn() if result else None}
    return json.dumps(reply, ensure_ascii=False, indent=1, allow_nan=False)


def _amount(one: Change, after: Settled) -> str:
    """By how much a length or an angle is more or less than it was, as it is seen at the bench; "" for all else."""
    kind = after.piece.kinds[one.name].kind
    if one.by is None or kind not in CUT_KINDS:
        return ""
    return (
        f"{measured('length' if kind == 'fine' else kind, abs(one.by), after.bench)} {'more' if one.by > 0 else 'less'}"
    )


def _given(settled: Settled, name: str) -> dict[str, Any]:
    typed, reading = settled.record.givens.get(name), settled.readings.get(name)
    return {
        "name": name,
        "label": settled.piece.given(name).label,
        "kind": settled.piece.given(name).kind,
        "can_be_cut": name in settled.piece.cuttable,
        "state": settled.state(name),
        "typed": typed.text if typed else "",
        "read": reading.read if reading else "",
        "for": settled.took.get(name, ""),
        "unsaid": unsaid(settled, name),
        **_cell(settled, name),
    }


def _size(settled: Settled, name: str) -> dict[str, Any]:
    size, cut = settled.piece.sizes[name], settled.record.cuts.get(name)
    return {
        "name": name,
        "label": size.label,
        "kind": size.kind,
        "part": size.part,
        "help": size.help,
        "state": settled.state(name),
        "can_be_cut": size.can_be_cut,
        "typed": cut.text if cut else "",
        **_cell(settled, name),
    }


def _cell(settled: Settled, name: str) -> dict[str, Any]:
    """A value in parts, as `calc.cells` has it; a choice by its words. entry: as it would be typed, all of it."""
    value, shown = settled.values.get(name), settled.piece.kinds.get(name)
    if value is None or isinstance(value, str | tuple) or shown is None:
        return {**EMPTY, "text": result(settled, name), "value": value if isinstance(value, str) else None, "entry": ""}
    rounded = any(one.rounded for one in settled.readings.values())
    return {**cell(shown, value, settled.bench, rounded), "entry": entry(shown.kind, value, settled.bench)}


def gap(one: Gap) -> dict[str, Any]:
    """A gap: the size that misses, by how much (millimetres or degrees, minus where it is too small), what to do."""
    choices = [{"say": choice.say, "name": choice.name, "text": choice.text} for choice in one.choices]
    return {"name": one.name, "part": one.part, "by": number(one.amount), "say": one.say, "choices": choices}


def match(one: Alike) -> dict[str, Any]:
    """What must be alike: within how much, how far apart it is, in millimetres."""
    apart = None if one.apart is None else number(one.apart)
    return {"names": list(one.names), "within": number(one.within), "apart": apart, "fits": one.fits, "say": one.say}


def changed(found: Changes, before: Settled, after: Settled) -> dict[str, Any]:
    """What an entry changed: open sizes before and after, and what has gone wrong since."""
    labels = after.piece.labels
    return {
        "sizes": [
            {
                "name": one.name,
                "label": labels[one.name],
                "before": _cell(before, one.name),
                "after": _cell(after, one.name),
                "by": None if one.by is None else number(one.by),
                "amount": _amount(one, after),
            }
            for one in found.sizes
        ],
        "gaps": [gap(one) for one in found.gaps],
        "alike": [match(one) for one in found.unlike],
        "broken": list(found.broken),
        "impossible": list(found.impossible),
    }
