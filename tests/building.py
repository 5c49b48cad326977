"""Building a piece in a test: entries one after another, and the same thing by chance."""

from collections.abc import Iterable
from typing import Any

from calc.bench import Bench
from calc.building import acts
from calc.building.piece import Piece
from calc.building.record import Record, undo
from calc.building.settle import Settled, settle

METRIC = Bench(unit="mm", mark="mm")
Act = tuple[str, ...]
START = {
    "tray": {"width": "300", "depth": "200"},
    "rest": {"depth": "200", "back_height": "200", "front_height": "140"},
}


def begun(piece: Piece, **texts: str) -> Record:
    """A piece with its givens, in millimetres; the toys' own unless others are given."""
    record = Record(piece.id, bench=METRIC)
    for name, text in (texts or START[piece.id]).items():
        record = acts.give(piece, record, name, text)
    return record


def done(piece: Piece, record: Record, made: Iterable[Act]) -> Record:
    """The record after these acts, each ("cut", name, text) and the like."""
    for act, *words in made:
        record = undo(record) if act == "undo" else getattr(acts, act)(piece, record, *words)
    return record


def built(piece: Piece, cuts: dict[str, str], **texts: str) -> Settled:
    """The piece settled with these cuts."""
    return settle(piece, done(piece, begun(piece, **texts), [("cut", *cut) for cut in cuts.items()]))


def numbers(settled: Settled) -> dict[str, Any]:
    """All that is known, and nothing but numbers."""
    return {name: one for name, one in settled.values.items() if not isinstance(one, list | dict | str)}
