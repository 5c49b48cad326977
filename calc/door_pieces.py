"""The page's door to pieces that are being built.

Each takes the request as plain values and returns the reply without its number, as `calc.door` has it.
A piece stands in a request as {"sum": its id, "record": as saved, or null for a new one}.
"""

from collections.abc import Callable, Iterator
from typing import Any

from calc.bench import Bench
from calc.building import acts
from calc.building.changes import changes
from calc.building.piece import Piece
from calc.building.piece_told import answered, changed
from calc.building.piece_told import told as stands
from calc.building.record import Record, undo
from calc.building.saved import OURS, from_plain, to_plain
from calc.building.settle import Settled, settle
from calc.discover import find
from calc.errors import Refusal, listed
from calc.probing.why import why as why_this
from calc.remembered import remembered

Told = dict[str, Any]
ACTS: dict[str, Callable[[Piece, Record, str, str], Record]] = {
    "give": acts.give,
    "cut": acts.cut,
    "uncut": lambda piece, record, name, text: acts.uncut(piece, record, name),
    "first": lambda piece, record, name, text: acts.first(piece, record, name),
    "undo": lambda piece, record, name, text: undo(record),
}


def piece(request: Told) -> Iterator[Told]:
    """{"do": {"act", "name", "text"}}, a list of them or none: the record, what stands, what changed, the answer.

    One that is refused refuses the whole list. The answer is in two parts, as a sum's is, or none.
    """
    one, record = opened(request)
    told = request.get("do") or []
    before = standing(one.id, record)
    for do in told if isinstance(told, list) else [told]:
        record = _done(one, record, do)
    after = standing(one.id, record) if told else before
    result = answered(after)
    yield {
        "ok": True,
        **({"more": True} if result else {}),
        "record": to_plain(record),
        "settled": stands(after),
        "changes": changed(changes(before, after), before, after),
        "answer": result.to_read() if result else None,
    }
    if result:
        yield {"ok": True, "answer": result.to_study()}


def why(request: Told) -> Told:
    """Where the size "name" of a piece comes from, and what follows from it."""
    one, record = opened(request)
    name = str(request.get("name"))
    if name not in one.labels:
        raise Refusal(f"there is no “{name[:40]}” in this piece", "ask for one of its sizes", "name", one.title)
    found = why_this(standing(one.id, record), name)
    chain = [{field: getattr(link, field) for field in link.__dataclass_fields__} for link in found.chain]
    follows = [{"name": each, "label": one.labels[each]} for each in found.follows]
    return {"ok": True, "chain": chain, "follows": follows}


def opened(request: Told) -> tuple[Piece, Record]:
    """The piece and its record, at the bench it is now worked at."""
    one = find(str(request["sum"]))
    if not isinstance(one, Piece):
        raise Refusal(f"“{one.title}” is a sum, and nothing of it is cut", "choose a piece", "sum")
    saved = request.get("record")
    record = from_plain(saved) if saved else Record(one.id)
    if record.piece != one.id:
        raise Refusal(f"there is no piece called “{record.piece[:40]}” here", OURS)
    return one, record.at(Bench(**request["bench"])) if request.get("bench") else record


@remembered(2)
def standing(name: str, record: Record) -> Settled:
    """A piece settled. What stood after one entry is what stands before the next, and need not be worked out again."""
    return settle(find(name), record)  # type: ignore[arg-type]


def _done(one: Piece, record: Record, do: Told) -> Record:
    act = ACTS.get(str(do.get("act")))
    if act is None:
        raise Refusal(f"“{str(do.get('act'))[:40]}” is nothing to do", f"choose {listed(list(ACTS), 'or')}", "act")
    return act(one, record, str(do.get("name", "")), str(do.get("text", "")))
