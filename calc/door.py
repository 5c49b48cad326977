"""The one door for a page: a JSON request in, a JSON reply out, nothing else crosses.

Request: {"id", "op": "answer", "sum", "givens": {name: text}, "bench": {"unit", "mark", "angles", "currency"}}.
Reply: {"id", "ok": true, "answer": ...} or {"id", "ok": false, "refusals": [...], "givens": what could be read};
a defect of ours has no refusals, but a "fault".
Other ops: "hello", and those of `calc.door_pieces`.
"""

import json
import re
from collections.abc import Mapping
from typing import Any

from calc import door_pieces
from calc.bench import Bench
from calc.building.saved import OURS
from calc.discover import everything, find
from calc.engine import reckon
from calc.errors import Refusal, Refused

DEEPEST = 20
"""How deep a request may be nested; none of ours goes past six. A browser's Python has little room to go deeper in."""
TEXT = re.compile(r'"[^"\\]*(?:\\.[^"\\]*)*"')
LAST_ID = re.compile(r'"id": ?(\d+)}\s*$')


def handle(request: str) -> str:
    """Answer one request; whatever goes wrong is a reply with a sentence, never an exception."""
    number = None
    try:
        if deep(request):
            number = int(found[1]) if (found := LAST_ID.search(request)) else None
            raise Refusal("this is damaged, or no piece", OURS)
        told = json.loads(request)
        number = told.get("id") if isinstance(told.get("id"), int | str) else None
        return _reply(number, _OPS[told["op"]](told))
    except Refused as refused:
        givens = {one.name: one.to_dict() for one in refused.givens}
        return _reply(number, {"ok": False, "refusals": [refusal(one) for one in refused.refusals], "givens": givens})
    except Refusal as one:
        return _reply(number, {"ok": False, "refusals": [refusal(one)], "givens": {}})
    except Exception as fault:  # a defect of ours: said, not hidden, and the page goes on
        return _reply(number, {"ok": False, "refusals": [], "givens": {}, "fault": f"{type(fault).__name__}: {fault}"})


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


def _reply(number: object, reply: Mapping[str, Any]) -> str:
    return json.dumps({"id": number, **reply}, ensure_ascii=False, allow_nan=False)


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


def _hello(told: dict[str, Any]) -> dict[str, Any]:
    return {"ok": True, "sums": [one.id for one in everything()]}


def _answer(told: dict[str, Any]) -> dict[str, Any]:
    texts = {str(name): str(text) for name, text in told.get("givens", {}).items() if text}
    result = reckon(find(str(told["sum"])), texts, Bench(**told.get("bench", {})))
    return {"ok": True, "answer": result.to_dict()}


_OPS = {
    "hello": _hello,
    "answer": _answer,
    "piece": door_pieces.piece,
    "why": door_pieces.why,
    "true": door_pieces.true,
    "backwards": door_pieces.reverse,
}
