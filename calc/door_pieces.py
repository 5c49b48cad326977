"""The page's door to pieces that are being built, to how true a number is, and to sums asked backwards.

Each takes the request as plain values and returns the reply without its number, as `calc.door` has it.
A piece stands in a request as {"sum": its id, "record": as saved, or null for a new one}.
"""

from collections.abc import Callable
from functools import lru_cache
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
from calc.cells import cell, number
from calc.discover import find
from calc.errors import Refusal, listed
from calc.probing.backwards import Trial, backwards
from calc.probing.how_true import HowTrue, how_true
from calc.probing.probe import Probe, of_piece, of_sum
from calc.probing.why import why as why_this

Told = dict[str, Any]
ACTS: dict[str, Callable[[Piece, Record, str, str], Record]] = {
    "give": acts.give,
    "cut": acts.cut,
    "uncut": lambda piece, record, name, text: acts.uncut(piece, record, name),
    "first": lambda piece, record, name, text: acts.first(piece, record, name),
    "undo": lambda piece, record, name, text: undo(record),
}


def piece(request: Told) -> Told:
    """{"do": {"act", "name", "text"}}, a list of them or none: the record, what stands, what changed, the answer.

    One that is refused refuses the whole list.
    """
    one, record = _piece(request)
    told = request.get("do") or []
    before = _stands(one.id, record)
    for do in told if isinstance(told, list) else [told]:
        record = _done(one, record, do)
    after = _stands(one.id, record) if told else before
    result = answered(after)
    return {
        "ok": True,
        "record": to_plain(record),
        "settled": stands(after),
        "changes": changed(changes(before, after), before, after),
        "answer": result.to_dict() if result else None,
    }


def why(request: Told) -> Told:
    """Where the size "name" of a piece comes from, and what follows from it."""
    one, record = _piece(request)
    name = str(request.get("name"))
    if name not in one.labels:
        raise Refusal(f"there is no “{name[:40]}” in this piece", "ask for one of its sizes", "name", one.title)
    found = why_this(_stands(one.id, record), name)
    chain = [{field: getattr(link, field) for field in link.__dataclass_fields__} for link in found.chain]
    follows = [{"name": each, "label": one.labels[each]} for each in found.follows]
    return {"ok": True, "chain": chain, "follows": follows}


def true(request: Told) -> Told:
    """How true "answer" is; "marks": {given: mark} where one was read from another rule than the bench's."""
    found = how_true(_probe(request), {str(name): str(text) for name, text in request.get("marks", {}).items()})
    return {
        "ok": True,
        "value": cell(found.answer, found.value, found.bench),
        "slips": [
            {
                "name": slip.name,
                "label": slip.label,
                "mark": number(slip.mark),
                "by": None if slip.by is None else _amount(found, slip.by),
                "slope": None if slip.slope is None else number(slip.slope),
                "exact": slip.exact,
            }
            for slip in found.slips
        ],
        "worst": _amount(found, found.worst),
        "likely": _amount(found, found.likely),
        "say": found.say,
    }


def reverse(request: Told) -> Told:
    """What "given" must be for "answer" to be "wanted", as text that may be typed; or how near it can come."""
    probe = _probe(request)
    found = backwards(probe, str(request.get("wanted", "")), str(request.get("given", "")))
    return {
        "ok": True,
        "given": found.given.name,
        "reached": found.reached,
        "exact": found.exact,
        **_trial(probe, found.found),
        "on_rule": _trial(probe, found.on_rule) if found.on_rule else None,
        "say": found.say,
    }


def _piece(request: Told) -> tuple[Piece, Record]:
    """The piece and its record, at the bench it is now worked at."""
    one = find(str(request["sum"]))
    if not isinstance(one, Piece):
        raise Refusal(f"“{one.title}” is a sum, and nothing of it is cut", "choose a piece", "sum")
    saved = request.get("record")
    record = from_plain(saved) if saved else Record(one.id)
    if record.piece != one.id:
        raise Refusal(f"there is no piece called “{record.piece[:40]}” here", OURS)
    return one, record.at(Bench(**request["bench"])) if request.get("bench") else record


@lru_cache(maxsize=2)
def _stands(name: str, record: Record) -> Settled:
    """A piece settled. What stood after one entry is what stands before the next, and need not be worked out again."""
    return settle(find(name), record)  # type: ignore[arg-type]


def _done(one: Piece, record: Record, do: Told) -> Record:
    act = ACTS.get(str(do.get("act")))
    if act is None:
        raise Refusal(f"“{str(do.get('act'))[:40]}” is nothing to do", f"choose {listed(list(ACTS), 'or')}", "act")
    return act(one, record, str(do.get("name", "")), str(do.get("text", "")))


def _probe(request: Told) -> Probe:
    """The answer asked after: of a piece where there is a record, else of a sum from its givens."""
    answer = str(request.get("answer", ""))
    if request.get("record"):
        one, record = _piece(request)
        return of_piece(_stands(one.id, record), answer)
    texts = {str(name): str(text) for name, text in request.get("givens", {}).items() if text}
    return of_sum(find(str(request["sum"])), texts, Bench(**request.get("bench", {})), answer)


def _trial(probe: Probe, one: Trial) -> Told:
    return {"text": one.text, "answer": cell(probe.answer, one.answer, probe.bench, one.text.startswith("≈"))}


def _amount(found: HowTrue, amount: Any) -> Told:
    return {"text": found.amount(amount), "value": number(amount)}
