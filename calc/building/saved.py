"""A piece as a file: plain JSON, the same bytes for the same record, and a polite no to anything else.

The format is `shared/piece.schema.json`. A file says only what the maker entered; every size is worked out again.
"""

import json
from dataclasses import asdict
from typing import Any

from calc.bench import Bench
from calc.building.record import ACTS, MOST_ENTRIES, Entry, Record
from calc.errors import Refusal

FORMAT = "tenpenny piece"
VERSION = 1
LONGEST_FILE = 2_000_000
LONGEST_WORD = 6000
OURS = "choose a file that was saved from a piece here"


def to_json(record: Record) -> str:
    """The record as text, a line to an entry; the same record always gives the same text."""
    head = {"format": FORMAT, "version": VERSION, "piece": record.piece, "title": record.title}
    told = {**head, "bench": asdict(record.bench)}
    lines = [f"{_plain(name)}: {_plain(value)}" for name, value in told.items()]
    entries = ",\n".join(f"    {_plain(asdict(entry))}" for entry in record.entries)
    lines.append(f'"entries": [\n{entries}\n  ]' if entries else '"entries": []')
    return "{\n" + ",\n".join(f"  {line}" for line in lines) + "\n}\n"


def from_json(text: str) -> Record:
    """The record that was saved. Raises Refusal when the file is damaged, newer than this or no piece at all."""
    if len(text) > LONGEST_FILE:
        raise Refusal("this file is too large to be a piece", OURS)
    try:
        told = json.loads(text)
    except (ValueError, RecursionError):
        raise Refusal("this file is damaged, or no piece", OURS) from None
    return from_plain(told)


def from_plain(told: Any) -> Record:
    """The record from plain JSON values. Raises Refusal."""
    version = told.get("version") if isinstance(told, dict) and told.get("format") == FORMAT else None
    if not isinstance(version, int) or version < 1:
        raise Refusal("this is no saved piece", OURS)
    if version > VERSION:
        raise Refusal("this piece was saved by a newer Tenpenny", "let this one bring itself up to date, then open it")
    entries = told.get("entries")
    if not isinstance(entries, list) or len(entries) > MOST_ENTRIES:
        raise _damaged("its entries")
    return Record(
        _word(told, "piece", 80), _word(told, "title", 80), _bench(told.get("bench")), tuple(map(_entry, entries))
    )


def to_plain(record: Record) -> dict[str, Any]:
    """The record as plain JSON values."""
    plain: dict[str, Any] = json.loads(to_json(record))
    return plain


def _bench(told: Any) -> Bench:
    if not isinstance(told, dict) or set(told) != {"unit", "mark", "angles", "currency"}:
        raise _damaged("its bench")
    return Bench(**{name: _word(told, name, 20) for name in told})


def _entry(told: Any) -> Entry:
    if not isinstance(told, dict) or set(told) != {"act", "name", "text", "unit", "mark"} or told["act"] not in ACTS:
        raise _damaged("one of its entries")
    words = {name: _word(told, name, LONGEST_WORD if name == "text" else 80) for name in told}
    Bench(unit=words["unit"], mark=words["mark"])
    return Entry(**words)


def _word(told: dict[str, Any], name: str, longest: int) -> str:
    word = told.get(name)
    if not isinstance(word, str) or len(word) > longest or any("\ud800" <= sign <= "\udfff" for sign in word):
        raise _damaged(f"its {name}")
    return word


def _damaged(what: str) -> Refusal:
    return Refusal(f"this piece is damaged: {what} cannot be read", OURS)


def _plain(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False)
