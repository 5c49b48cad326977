"""The one door for a page: a JSON request in, a JSON reply out, nothing else crosses.

Request: {"id", "op": "answer", "sum", "givens": {name: text}, "bench": {"unit", "mark", "angles", "currency"}}.
Reply: {"id", "ok": true, "answer": ...} or {"id", "ok": false, "refusals": [...], "givens": what could be read}.
"""

import json
from typing import Any

from calc.bench import Bench
from calc.discover import everything, find
from calc.engine import reckon
from calc.errors import Refusal, Refused


def handle(request: str) -> str:
    """Answer one request; whatever goes wrong is a reply with a sentence, never an exception."""
    told: dict[str, Any] = {}
    try:
        told = json.loads(request)
        reply = _OPS[told["op"]](told)
    except Refused as refused:
        reply = {"ok": False, "refusals": [refusal(one) for one in refused.refusals]}
    except Refusal as one:
        reply = {"ok": False, "refusals": [refusal(one)]}
    except Exception as fault:  # a defect of ours: said, not hidden, and the page goes on
        reply = {"ok": False, "refusals": [], "fault": f"{type(fault).__name__}: {fault}"}
    return json.dumps({"id": told.get("id"), **reply}, ensure_ascii=False)


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


_OPS = {"hello": _hello, "answer": _answer}
