"""What the maker does to a piece: give a size, record a cut, open it again, say which came first.

Each returns a new record, or raises a Refusal with a sentence and leaves the old one as it was.
"""

from calc.bench import Bench
from calc.building.piece import Piece
from calc.building.record import UNDECIDED, Record
from calc.errors import Refusal, listed, meant
from calc.given import Given
from calc.typed.glyphs import clipped
from calc.typed.reading import Reading

LONGEST = {"length": 100_000, "angle": 180}
"""What nothing that is cut exceeds: a hundred metres, half a turn."""


def give(piece: Piece, record: Record, name: str, text: str) -> Record:
    """Set a given; "" goes back to its default, "?" leaves it undecided. Raises Refusal, and nothing is changed."""
    given = {one.name: one for one in piece.givens}.get(name)
    if given is None:
        raise Refusal(f"there is no “{name[:40]}” to give", meant(name, [one.name for one in piece.givens]), name)
    then = record.then("give", name, text)
    if text.strip() not in ("", UNDECIDED):
        _read(given, text, record.bench)
        if refusal := too_many(piece, then):
            raise refusal
    return then


def cut(piece: Piece, record: Record, name: str, text: str) -> Record:
    """Record what a part really came out at, whether its limit likes it or not. Raises Refusal where it is no size."""
    entry = piece.cuttable.get(name)
    if entry is None:
        raise Refusal(f"“{name[:40]}” is nothing that is cut", meant(name, list(piece.cuttable)), name)
    try:
        parse(entry, text, record.bench)
    except Refusal as refusal:
        raise refusal.about(name, entry.label) from None
    return record.then("cut", name, text)


def uncut(piece: Piece, record: Record, name: str) -> Record:
    """Open a cut size again: the part is to be made anew. Raises Refusal when it is not cut."""
    return _if_cut(piece, record, name).then("uncut", name)


def first(piece: Piece, record: Record, name: str) -> Record:
    """Say that this cut came before all others, so that it has the first call on what gives way."""
    return _if_cut(piece, record, name).then("first", name)


def parse(given: Given, text: str, bench: Bench) -> Reading:
    """What was typed for a cut, before the size's own limit."""
    found = given.parse(text, bench)
    if abs(found.value) > LONGEST[given.kind] or (given.kind == "length" and found.value <= 0):
        raise Refusal(f"{clipped(found.read)} is not what a part can come out at", "type what you measured")
    return found


def _read(given: Given, text: str, bench: Bench) -> None:
    try:
        given.read(text, bench)
    except Refusal as refusal:
        raise refusal.about(given.name, given.label) from None


def too_many(piece: Piece, record: Record) -> Refusal | None:
    """What is wrong when more than enough of an "any two of" are given; the field is the last of them."""
    some = piece.any_of
    typed = [name for name, entry in record.givens.items() if some and name in some.names and entry.text != UNDECIDED]
    if some is None or len(typed) <= some.count:
        return None
    last, others = typed[-1], listed([piece.labels[name] for name in typed[:-1]], "or")
    say = f"{listed([piece.labels[name] for name in some.names])} follow from one another"
    return Refusal(say, f"clear the {others} first", last, piece.given(last).label)


def _if_cut(piece: Piece, record: Record, name: str) -> Record:
    if name not in record.cuts:
        raise Refusal(
            f"“{piece.labels.get(name, name[:40])}” is not recorded as cut", "record what it came out at", name
        )
    return record
