"""A piece taken from its file, or begun, at the bench that a command says."""

from dataclasses import asdict, replace

from calc.bench import Bench
from calc.building.piece import Piece
from calc.building.record import Record
from calc.building.saved import from_json
from calc.command.asking import TITLE, Asked, bench
from calc.command.files import Files
from calc.discover import find, modules
from calc.errors import Refusal, meant


def begun(name: str, asked: Asked) -> tuple[Piece, Record]:
    """A new piece by the name of its kind, at the bench that the command says."""
    piece = piece_of(name)
    measured = {key: one for key, one in asked.settings.items() if key not in TITLE}
    return piece, at_bench(Record(piece.id, bench=bench(measured)), asked)


def piece_of(name: str) -> Piece:
    """The piece called so; Refusal for a sum, or where there is none."""
    if name not in modules():
        raise Refusal(f"there is no piece called “{name[:40]}”", meant(name, _pieces()))
    one = find(name)
    if not isinstance(one, Piece):
        raise Refusal(f"“{one.title}” is a sum, and nothing of it is cut", f"ask it with tenpenny {one.id}")
    return one


def _pieces() -> list[str]:
    return [name for name, module in modules().items() if module.startswith("calc.pieces.")]


def opened(name: str, asked: Asked, files: Files) -> tuple[Piece, Record]:
    """The piece in a file, at the bench that the command says; entries keep the unit they were typed with."""
    record = from_json(files.read(name))
    return piece_of(record.piece), at_bench(record, asked)


def at_bench(record: Record, asked: Asked) -> Record:
    """The record with the settings of the command: its bench, and its title."""
    settings = {name: one for name, one in asked.settings.items() if name not in TITLE}
    if "unit" in settings:
        settings = {"mark": bench({"unit": settings["unit"]}).mark, **settings}
    titled = replace(record, title=asked.settings.get("title", record.title))
    return titled.at(Bench(**{**asdict(record.bench), **settings})) if settings else titled
