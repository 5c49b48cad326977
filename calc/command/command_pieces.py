"""Pieces kept in files, from the command line: `tenpenny piece cut box.json lid_long="184 mm"`.

Nothing is written unless all that was asked could be done, and what could not be read is never written over.
"""

import json
from collections.abc import Callable
from dataclasses import asdict, dataclass

from calc.building import acts, piece_text
from calc.building.changes import changes
from calc.building.piece import Piece
from calc.building.piece_told import changed, in_json
from calc.building.record import Record, undo
from calc.building.saved import to_json
from calc.building.settle import Settled, settle
from calc.command.asking import Asked
from calc.command.files import Files
from calc.command.opening import begun, opened
from calc.discover import everything
from calc.errors import Refusal, listed
from calc.probing.why import why

ENDS = """FILE is one piece, as the page saves it; --json tells it for machines.
PIECE is {pieces}.
--unit, --mark, --angles and --currency say how you measure, and are kept in the file."""
Do = Callable[[Asked, Files], str]
Make = Callable[[Piece, Record, list[str], Asked], Record]


@dataclass(frozen=True)
class Act:
    """One thing to do with a piece: how it is written, in a sentence what it does, and what does it."""

    usage: str
    help: str
    do: Do


def told(asked: Asked, files: Files | None) -> str:
    """Do what the words ask and return what to print. Raises Refusal, and then nothing was written."""
    act = asked.words[0] if asked.words else ""
    if act and act not in DOES:
        raise Refusal(f"“{act[:40]}” is nothing to do with a piece", f"choose {listed(list(DOES), 'or')}")
    if "help" in asked.flags or not act:
        return _help([act] if act else list(DOES))
    if files is None:
        raise Refusal("there are no files here", "run it from a shell")
    return DOES[act].do(asked, files)


def _help(names: list[str]) -> str:
    lines = [f"tenpenny piece {DOES[name].usage}\n    {DOES[name].help}" for name in names]
    pieces = listed([one.id for one in everything() if isinstance(one, Piece)], "or")
    return "\n".join([*lines, "", ENDS.format(pieces=pieces)])


def _words(asked: Asked, count: int) -> list[str]:
    """The words after the act; Refusal unless there are as many as it wants."""
    found = asked.words[1:]
    if len(found) != count:
        word = "1 word follows" if len(found) == 1 else f"{len(found) or 'no'} words follow"
        raise Refusal(f"{word} “{asked.words[0]}”", f"write tenpenny piece {DOES[asked.words[0]].usage}")
    return found


def _given(piece: Piece, record: Record, asked: Asked) -> Record:
    for name, text in asked.entries.items():
        record = acts.give(piece, record, name, text)
    return record


def _new(asked: Asked, files: Files) -> str:
    name, piece_id = _words(asked, 2)
    piece, record = begun(piece_id, asked)
    record = _given(piece, record, asked)
    files.write(name, to_json(record), new=True)
    return _show(settle(piece, record), asked)


def _show(settled: Settled, asked: Asked) -> str:
    return in_json(settled) if "json" in asked.flags else piece_text.shown(settled)


def _look(tell: Callable[[Settled, Asked], str]) -> Do:
    """An act that reads a piece and tells of it."""

    def do(asked: Asked, files: Files) -> str:
        (name,) = _words(asked, 1)
        _no_entries(asked)
        return tell(settle(*opened(name, asked, files)), asked)

    return do


def _why(asked: Asked, files: Files) -> str:
    file, name = _words(asked, 2)
    _no_entries(asked)
    settled, name = settle(*opened(file, asked, files)), name.replace("-", "_")
    if name not in settled.piece.labels:
        raise Refusal(f"there is no “{name[:40]}” in this piece", f"see the names with tenpenny piece show {file}")
    found = why(settled, name)
    return (
        json.dumps(asdict(found), ensure_ascii=False) if "json" in asked.flags else piece_text.explained(found, settled)
    )


def _no_entries(asked: Asked) -> None:
    if asked.entries:
        names = listed(list(asked.entries))
        raise Refusal(f"{asked.words[0]} takes no sizes, and {names} is given", "use set or cut to enter it")


def _entered(
    make: Callable[[Piece, Record, list[str], Asked], Record], words: int = 1
) -> Callable[[Asked, Files], str]:
    """An act that makes an entry, keeps the file, and tells what changed."""

    def do(asked: Asked, files: Files) -> str:
        name, *rest = _words(asked, words)
        piece, old = opened(name, asked, files)
        record = make(piece, old, [one.replace("-", "_") for one in rest], asked)
        before, after = settle(piece, old), settle(piece, record)
        files.write(name, to_json(record))
        found = changes(before, after)
        if "json" in asked.flags:
            return in_json(after, changes=changed(found, before, after))
        return piece_text.changed(found, before, after)

    return do


def _set(piece: Piece, record: Record, rest: list[str], asked: Asked) -> Record:
    if not (asked.entries or asked.settings):
        raise Refusal("nothing is set", "write name=value, like depth='150 mm'")
    return _given(piece, record, asked)


def _cut(piece: Piece, record: Record, rest: list[str], asked: Asked) -> Record:
    if not asked.entries:
        raise Refusal("nothing is cut", "write name=value with what it came out at, like depth='150 mm'")
    for name, text in asked.entries.items():
        record = acts.cut(piece, record, name, text)
    return record


DOES = {
    "new": Act("new FILE PIECE [name=value ...] [--title TITLE]", "Begins a piece in a file of its own.", _new),
    "show": Act("show FILE", "Every size by the name to type, how it stands, and what does not fit.", _look(_show)),
    "set": Act(
        "set FILE name=value ...",
        "Gives sizes; name= goes back to what is usual, name=? leaves it undecided.",
        _entered(_set),
    ),
    "cut": Act("cut FILE name=value ...", "Records what parts came out at; the rest follows.", _entered(_cut)),
    "uncut": Act(
        "uncut FILE name",
        "Opens a cut size again: the part is to be made anew.",
        _entered(lambda piece, record, rest, asked: acts.uncut(piece, record, rest[0]), 2),
    ),
    "first": Act(
        "first FILE name",
        "Says that this cut came before all others, and has the first call on what gives way.",
        _entered(lambda piece, record, rest, asked: acts.first(piece, record, rest[0]), 2),
    ),
    "undo": Act("undo FILE", "Takes back the last entry.", _entered(lambda piece, record, rest, asked: undo(record))),
    "why": Act("why FILE name", "The chain of formulas that leads to a size, and what follows from it.", _why),
    "sheet": Act(
        "sheet FILE",
        "The bench sheet: parts, joints, order of work, what to buy, cautions.",
        _look(lambda settled, asked: in_json(settled) if "json" in asked.flags else piece_text.sheet(settled)),
    ),
}
"""What can be done with a piece, in the order it is done in."""
