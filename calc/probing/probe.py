"""One answer of a sum, or one size of a piece, as it depends on each thing that was given or cut."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from calc.bench import Bench
from calc.building.record import entered
from calc.building.settle import Settled
from calc.building.supposing import value_if
from calc.declare import Answer, Sum
from calc.engine import in_hand, read
from calc.errors import Refusal, listed
from calc.given import Given
from calc.typed.reading import Reading

UNCOUNTED = ("text", "rows")


@dataclass(frozen=True)
class Input:
    """What was given or cut: how it is asked for, its number (None when left out), its unit and bench as typed."""

    given: Given
    value: Any
    unit: str
    bench: Bench
    typed: bool


@dataclass(frozen=True)
class Probe:
    """`at(name, value)` is the answer when that input is that, all else as it is; None where there is no answer."""

    answer: Answer
    value: Any
    bench: Bench
    inputs: Mapping[str, Input]
    at: Callable[[str, Any], Any]


def of_sum(one: Sum, texts: Mapping[str, str], bench: Bench, name: str) -> Probe:
    """An answer of a sum from typed texts. Raises Refused as the sum does, or Refusal where it has no such answer."""
    readings = read(one, texts, bench)
    values = {given.name: readings[given.name].value if given.name in readings else None for given in one.givens}

    def at(given: str, value: Any) -> Any:
        try:
            return one.work(**{**values, given: value}).get(name)
        except (Refusal, ArithmeticError, ValueError):
            return None

    answer = _answer(one, name)
    if name in readings:
        raise Refusal("this is given, not answered", "ask for an answer", "answer", answer.label)
    some = one.any_of.names if one.any_of else ()
    inputs = {
        given.name: _input(given, readings.get(given.name), bench, bool(texts.get(given.name, "").strip()))
        for given in one.givens
        if given.name in readings or given.name not in some
    }
    any_given = one.givens[0].name
    return _probe(Probe(answer, at(any_given, values[any_given]), in_hand(one, readings, bench), inputs, at))


def of_piece(settled: Settled, name: str) -> Probe:
    """A size of a piece that is being built, cuts and all. Raises Refusal where it is not known."""
    record, asked = settled.record, settled.piece.cuttable
    given = {
        one.name: _input(
            one,
            settled.readings.get(one.name),
            entered(record.givens[one.name], record.bench) if one.name in record.givens else settled.bench,
            one.name in record.givens,
        )
        for one in settled.piece.givens
        if one.name in settled.asked
    }
    for cut, value in settled.cuts.items():
        bench = entered(record.cuts[cut], record.bench)
        given[cut] = Input(asked[cut], value, asked[cut].parse(record.cuts[cut].text, bench).unit, bench, True)

    def at(one: str, value: Any) -> Any:
        return value_if(settled, name, {one: value})

    return _probe(Probe(_answer(settled.piece, name), settled.values.get(name), settled.bench, given, at))


def _input(given: Given, found: Reading | None, bench: Bench, typed: bool) -> Input:
    return Input(given, found.value if found else None, found.unit if found else "", bench, typed)


def _answer(one: Sum, name: str) -> Answer:
    answer = one.kinds.get(name)
    if answer is None or answer.kind in UNCOUNTED:
        known = listed([each.label.lower() for each in one.answers if each.kind not in UNCOUNTED], "or")
        raise Refusal(f"there is no number called “{name[:40]}” here", f"ask for the {known}", "answer", one.title)
    return answer


def _probe(probe: Probe) -> Probe:
    if probe.value is None or isinstance(probe.value, str):
        raise Refusal("this has no number yet", "fill in what it depends on", "answer", probe.answer.label)
    return probe
