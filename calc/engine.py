"""Read, hold to limits, work, warn: how a sum is answered. Nothing here keeps anything between two questions."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from calc.answers import Given, Result
from calc.bench import Bench
from calc.declare import Sum, Values
from calc.errors import Refusal, Refused, listed
from calc.kinds import Given as Asked
from calc.rule import Mark
from calc.typed.reading import Reading

LONGEST_ENTRY = 6000
SAID = ("none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
Readings = Mapping[str, Reading]


def reckon(one: Sum, texts: Mapping[str, str], bench: Bench) -> Result:
    """Answer `one` from typed texts by given name. Raises Refused, naming every entry that cannot be used."""
    readings = read(one, texts, bench)
    bench = in_hand(one, readings, bench)
    values = _work(one, texts, readings)
    cautions = tuple(caution for caution in one.cautions if caution.when is None or caution.when(values))
    return Result(one, bench, readings, understood(one, texts, readings), values, frozenset(readings), cautions)


def understood(one: Sum, texts: Mapping[str, str], readings: Readings) -> tuple[Given, ...]:
    """Each entry that was read and counts, as typed and as understood."""
    return tuple(
        Given(given.name, given.label, typed, readings[given.name].read, readings[given.name].unit)
        for given in one.givens
        if given.name in readings
        and ((typed := texts.get(given.name, "").strip()) or not given.beside or given.beside in readings)
    )


def in_hand(one: Sum, readings: Readings, bench: Bench) -> Bench:
    """The bench with the rule that this sum is told of, where it asks for one."""
    told = [readings[given.name].value for given in one.givens if isinstance(given, Mark) and given.name in readings]
    return replace(bench, mark=str(told[0])) if told else bench


def read(one: Sum, texts: Mapping[str, str], bench: Bench) -> dict[str, Reading]:
    """Every entry read, defaults taken for empty ones. Raises Refused with all that is wrong, in the form's order."""
    names = [given.name for given in one.givens]
    refusals = [_stranger(one, name) for name in texts if name not in names]
    found: dict[str, Reading] = {}
    for given in one.givens:
        try:
            if (reading := _read(one, given, texts.get(given.name, ""), bench)) is not None:
                found[given.name] = reading
        except Refusal as refusal:
            refusals.append(refusal.about(given.name, given.label))
    refusals += _counted(
        one, [given.name for given in one.givens if texts.get(given.name, "").strip() or given.default]
    )
    if refusals:
        raise Refused(tuple(refusals), understood(one, texts, found))
    return found


def _read(one: Sum, given: Asked, text: str, bench: Bench) -> Reading | None:
    if len(text) > LONGEST_ENTRY:
        raise Refusal(f"this is {len(text)} characters long", f"type at most {LONGEST_ENTRY}")
    if typed := text.strip() or given.default:
        return given.read(typed, bench)
    if given.optional or (one.any_of and given.name in one.any_of.names):
        return None
    raise Refusal("nothing is typed here", f"type it like {one.example.givens[given.name]}")


def _stranger(one: Sum, name: str) -> Refusal:
    known = listed([given.name for given in one.givens], "or")
    return Refusal(f"there is no “{name[:40]}” here", f"use {known}", field=name, label=one.title)


def _counted(one: Sum, typed: Sequence[str]) -> list[Refusal]:
    """What is wrong when more or fewer of `any_of` are typed than are wanted; the field is the one to change."""
    if not one.any_of or (extra := sum(name in typed for name in one.any_of.names) - one.any_of.count) == 0:
        return []
    names, count = one.any_of.names, one.any_of.count
    labels = listed([f"“{one.given(name).label}”" for name in names], "or" if count == 1 else "and")
    told = _many(count + extra, "given")
    if extra > 0:
        last = [name for name in names if name in typed][-1]
        some = f"{labels} alone is" if count == 1 else f"any {SAID[count]} of {labels} are"
        return [Refusal(f"{some} enough, and {told}", f"clear {SAID[extra]}", last, one.title)]
    first = next(name for name in names if name not in typed)
    some = f"{labels} is" if count == 1 else f"{SAID[count]} of {labels} are"
    given, more = (f", and {told}", " more") if count + extra else ("", "")
    return [Refusal(f"{some} wanted{given}", f"fill in {SAID[-extra]}{more}", first, one.title)]


def _many(count: int, what: str) -> str:
    return f"{SAID[count]} {'is' if count == 1 else 'are'} {what}"


def _work(one: Sum, texts: Mapping[str, str], readings: Readings) -> Values:
    values = {given.name: readings[given.name].value if given.name in readings else None for given in one.givens}
    try:
        return {**values, **one.work(**values)}
    except Refusal as refusal:
        label = one.given(refusal.field).label if refusal.field in values else one.title
        told = replace(refusal, label=refusal.label or label)
        raise Refused((told,), understood(one, texts, readings)) from None
