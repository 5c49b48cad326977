"""A piece as it stands: what was given, what came out of the saw, and everything that follows from both."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from calc.bench import Bench
from calc.building.acts import parse, too_many
from calc.building.fitting import Fitting
from calc.building.piece import Piece
from calc.building.record import UNDECIDED, Record, entered
from calc.declare import Values
from calc.engine import in_hand
from calc.errors import Refusal
from calc.given import Given
from calc.trig import Number
from calc.typed.reading import Reading


@dataclass(frozen=True, eq=False)
class Settled:
    """A piece worked out from its record.

    readings: every given that could be read. asked: their numbers, None for what is left out. cuts: what came out of
    the saw. givens: what was asked, after some of it gave way.
    values: every given, size, step and table that is known. took: which given gave way, and for which cut.
    misses: how much larger each cut still is than its own function says. refused: why a size cannot be worked out.
    refusals: entries that cannot be used; they stay in the record.
    """

    piece: Piece
    record: Record
    bench: Bench
    readings: Mapping[str, Reading]
    asked: Values
    cuts: Values
    givens: Values
    values: Values
    took: Mapping[str, str]
    misses: Mapping[str, Number]
    refused: Mapping[str, Refusal]
    refusals: tuple[Refusal, ...]

    @cached_property
    def whole(self) -> bool:
        """True when every size is known and within its limit, so that the piece can be drawn and listed."""
        return all(answer.name in self.values for answer in self.piece.answers) and not self.broken

    @cached_property
    def broken(self) -> dict[str, str]:
        """Each size and cut that breaks its own limit, and how: "is too small; it must be from 2 mm up"."""
        entries = {**self.piece.cuttable, **{one.name: one for one in self.piece.givens}}
        found = [(name, entries[name], cut) for name, cut in self.cuts.items()]
        open_sizes = [size for name, size in self.piece.sizes.items() if name not in self.cuts and name in self.values]
        found += [(size.name, size.entry, self.values[size.name]) for size in open_sizes if size.limit.text()]
        told = {name: (one.outside(value), one.limit.text()) for name, one, value in found}
        return {name: f"{say}; it must be {limit}" for name, (say, limit) in told.items() if say}

    def state(self, name: str) -> str:
        """How a given or size stands: cut, yielded, given, default, open, undecided, or impossible."""
        if name in self.cuts:
            return "cut"
        if name in self.took:
            return "yielded"
        if self.readings.get(name) and self.readings[name].value is not None:
            return "given" if name in self.record.givens else "default"
        return "impossible" if name in self.refused else "open" if name in self.values else "undecided"


def settle(piece: Piece, record: Record) -> Settled:
    """The piece as it stands. Never refuses: what cannot be read, worked out or absorbed is said in what comes back."""
    readings, left_out, wrong = _read(piece, record)
    cuts = _cuts(piece, record, wrong)
    asked = {name: one.value for name, one in readings.items()} | dict.fromkeys(left_out)
    order = order_of(piece, record, asked, cuts)
    fitting = Fitting(piece, asked, cuts, order)
    values, refused = piece.plan.work_out(fitting.givens, cuts)
    tables, untold = piece.tabled(values)
    labels = {one.name: one.label for one in piece.named}
    return Settled(
        piece=piece,
        record=record,
        bench=in_hand(piece, readings, record.bench),
        readings=readings,
        asked=asked,
        cuts=cuts,
        givens=fitting.givens,
        values=values | tables,
        took={name: row for name, row in fitting.took.items() if fitting.givens[name] != asked[name]},
        misses={row: left for row in order if (left := fitting.miss(row)) is not None},
        refused={name: one.labelled(labels) for name, one in (refused | untold).items()},
        refusals=tuple(wrong),
    )


def order_of(piece: Piece, record: Record, givens: Values, cuts: Values) -> list[str]:
    """In what order cuts are settled: those that came first, then as the sizes are worked out.

    A cut that contradicts nothing, whatever it comes out at, is none of them.
    """
    doubted = [size.name for size in piece.in_order if size.yields.matters]
    own = [name for name in doubted if name in cuts and givens.get(name) is None]
    return [name for name in record.first if name in own] + [name for name in own if name not in record.first]


def _read(piece: Piece, record: Record) -> tuple[dict[str, Reading], list[str], list[Refusal]]:
    """Every given that can be read; those left out on purpose; what is wrong with the rest."""
    typed, some = record.givens, piece.any_of.names if piece.any_of else ()
    readings: dict[str, Reading] = {}
    wrong = [_stranger(name) for name in typed if name not in {one.name for one in piece.givens}]
    wrong += [one for one in [too_many(piece, record)] if one]
    left_out = []
    for given in piece.givens:
        entry = typed.get(given.name)
        text = entry.text.strip() if entry else given.default
        if text and text != UNDECIDED:
            _put(readings, given, text, entered(entry, record.bench) if entry else record.bench, wrong)
        elif given.name in some or (given.optional and not text):
            left_out.append(given.name)
    return readings, left_out, wrong


def _put(readings: dict[str, Reading], given: Given, text: str, bench: Bench, wrong: list[Refusal]) -> None:
    try:
        readings[given.name] = given.read(text, bench)
    except Refusal as refusal:
        wrong.append(refusal.about(given.name, given.label))


def _cuts(piece: Piece, record: Record, wrong: list[Refusal]) -> dict[str, Any]:
    asked, found = piece.cuttable, {}
    for name, entry in record.cuts.items():
        try:
            found[name] = parse(asked[name], entry.text, entered(entry, record.bench)).value
        except Refusal as refusal:
            wrong.append(refusal.about(name, asked[name].label))
        except KeyError:
            wrong.append(_stranger(name))
    return found


def _stranger(name: str) -> Refusal:
    return Refusal(f"this piece has no “{name[:40]}”, so what was entered for it is kept and not used", "undo it", name)
