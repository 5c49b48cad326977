"""The page's door to how true a number is, and to sums asked backwards; of a sum, or of a piece being built."""

from typing import Any

from calc.bench import Bench
from calc.cells import cell, number
from calc.discover import find
from calc.door_pieces import Told, opened, standing
from calc.probing.backwards import Trial, backwards
from calc.probing.how_true import HowTrue, how_true
from calc.probing.probe import Probe, of_piece, of_sum


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


def _probe(request: Told) -> Probe:
    """The answer asked after: of a piece where there is a record, else of a sum from its givens."""
    answer = str(request.get("answer", ""))
    if request.get("record"):
        one, record = opened(request)
        return of_piece(standing(one.id, record), answer)
    texts = {str(name): str(text) for name, text in request.get("givens", {}).items() if text}
    return of_sum(find(str(request["sum"])), texts, Bench(**request.get("bench", {})), answer)


def _trial(probe: Probe, one: Trial) -> Told:
    return {"text": one.text, "answer": cell(probe.answer, one.answer, probe.bench, one.text.startswith("≈"))}


def _amount(found: HowTrue, amount: Any) -> Told:
    return {"text": found.amount(amount), "value": number(amount)}
