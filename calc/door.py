"""The one door for a page: a JSON request in, a JSON reply out, nothing else crosses.

`handle` gives the whole reply; `replies` gives that of a sum or a piece in two parts, the answers first, since they are
waited for. The first says "more", and the "answer" of the second holds what the first one's lacks.

Request: {"id", "op": "answer", "sum", "givens": {name: text}, "bench": {"unit", "mark", "angles", "currency"}}; with
"anew": true nothing that was worked out for an earlier one is made use of, which changes only how long it takes.
Reply: {"id", "ok": true, "answer": ...} or {"id", "ok": false, "refusals": [...], "givens": what could be read};
a defect of ours has no refusals, but a "fault".
Other ops: "hello", and those of `calc.door_pieces` and `calc.door_numbers`.
"""

import json
import re
from collections.abc import Callable, Generator, Iterable, Iterator
from typing import Any

from calc import door_numbers, door_pieces
from calc.bench import Bench
from calc.building.saved import OURS
from calc.discover import everything, find
from calc.engine import reckon
from calc.errors import Refusal, Refused
from calc.remembered import forget

Reply = dict[str, Any]
DEEPEST = 20
"""How deep a request may be nested; none of ours goes past six. A browser's Python has little room to go deeper in."""
TEXT = re.compile(r'"[^"\\]*(?:\\.[^"\\]*)*"')
LAST_ID = re.compile(r'"id": ?(\d+)}\s*$')


def handle(request: str) -> str:
    """Answer one request; whatever goes wrong is a reply with a sentence, never an exception."""
    whole: Reply = {}
    for number, part in _parts(request):
        whole = {"id": number, **_joined(whole, part)}
    return _json(whole)


def _joined(sooner: Reply, rest: Reply) -> Reply:
    """What was told sooner with the rest; the rest alone where there is nothing before it, or it went wrong."""
    if not (sooner and rest["ok"]):
        return rest
    told = {name: one for name, one in sooner.items() if name != "more"}
    return told | {"answer": sooner["answer"] | rest["answer"]}


def replies(request: str) -> Generator[str, None, str]:
    """The same in parts: what can be told sooner is yielded, the last part returned."""
    told = ""
    for number, part in _parts(request):
        told = _json({"id": number, **part})
        if part.get("more"):
            yield told
    return told


def _json(reply: Reply) -> str:
    try:
        return json.dumps(reply, ensure_ascii=False, allow_nan=False)
    except (TypeError, ValueError) as fault:
        return json.dumps({"id": reply["id"], **_fault(fault)})


def _fault(fault: Exception) -> Reply:
    """A defect of ours: said, not hidden, and the page goes on."""
    return {"ok": False, "refusals": [], "givens": {}, "fault": f"{type(fault).__name__}: {fault}"}


def _parts(request: str) -> Iterator[tuple[int | str | None, Reply]]:
    number = None
    try:
        if deep(request):
            number = int(found[1]) if (found := LAST_ID.search(request)) else None
            raise Refusal("this is damaged, or no piece", OURS)
        told = json.loads(request)
        if told.get("anew"):
            forget()
        number = told.get("id") if isinstance(told.get("id"), int | str) else None
        for part in _OPS[told["op"]](told):
            yield number, part
    except Refused as refused:
        givens = {one.name: one.to_dict() for one in refused.givens}
        yield number, {"ok": False, "refusals": [refusal(one) for one in refused.refusals], "givens": givens}
    except Refusal as one:
        yield number, {"ok": False, "refusals": [refusal(one)], "givens": {}}
    except Exception as fault:
        yield number, _fault(fault)


def deep(text: str) -> bool:
    """True where JSON is nested deeper than anything of ours, found without going into it.

    >>> deep('{"a": [1, "[[[[[[[[[[[[[[[[[[[[["]}'), deep("[" * 21)
    (False, True)
    """
    depth = 0
    for sign in re.findall(r"[][{}]", TEXT.sub("", text)):
        depth += 1 if sign in "[{" else -1
        if depth > DEEPEST:
            return True
    return False


def refusal(one: Refusal) -> dict[str, str]:
    """A refusal as plain values."""
    return {
        "field": one.field,
        "label": one.label,
        "say": one.say,
        "instead": one.instead,
        "source": one.source,
        "text": str(one),
    }


def _hello(told: Reply) -> Reply:
    return {"ok": True, "sums": [one.id for one in everything()]}


def _answer(told: Reply) -> Iterator[Reply]:
    texts = {str(name): str(text) for name, text in told.get("givens", {}).items() if text}
    result = reckon(find(str(told["sum"])), texts, Bench(**told.get("bench", {})))
    yield {"ok": True, "more": True, "answer": result.to_read()}
    yield {"ok": True, "answer": result.to_study()}


def _whole(one: Callable[[Reply], Reply]) -> Callable[[Reply], Iterable[Reply]]:
    return lambda told: [one(told)]


_OPS: dict[str, Callable[[Reply], Iterable[Reply]]] = {
    "hello": _whole(_hello),
    "answer": _answer,
    "piece": door_pieces.piece,
    "why": _whole(door_pieces.why),
    "true": _whole(door_numbers.true),
    "backwards": _whole(door_numbers.reverse),
}
