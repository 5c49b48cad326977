"""Read, hold to limits, work, warn: how a sum is answered."""

from collections.abc import Mapping
from typing import Any

from calc import formula, show
from calc.answers import Given, Line, Result, printed
from calc.bench import Bench
from calc.declare import Answer, Sum, Values
from calc.errors import Refusal, Refused
from calc.reading import Reading
from calc.trig import is_exact
from calc.units import MM_PER_INCH

LONGEST_ENTRY = 6000


def reckon(one: Sum, texts: Mapping[str, str], bench: Bench) -> Result:
    """Answer `one` from typed texts by given name. Raises Refused, naming every entry that cannot be used."""
    readings = read(one, texts, bench)
    givens = tuple(
        Given(
            given.name,
            given.label,
            texts.get(given.name, "").strip(),
            readings[given.name].read,
            readings[given.name].unit,
        )
        for given in one.givens
        if given.name in readings
    )
    values = _work(
        one, {given.name: readings[given.name].value if given.name in readings else None for given in one.givens}
    )
    cautions = tuple(caution for caution in one.cautions if caution.when is None or caution.when(values))
    return Result(one, bench, readings, givens, values, working(one, values, set(readings), bench), cautions)


def read(one: Sum, texts: Mapping[str, str], bench: Bench) -> dict[str, Reading]:
    """Every entry read, defaults taken for empty ones. Raises Refused."""
    refusals = [_stranger(one, name) for name in texts if name not in {given.name for given in one.givens}]
    found: dict[str, Reading] = {}
    for given in one.givens:
        try:
            if text := _text(texts.get(given.name, "")) or given.default:
                found[given.name] = given.read(text, bench)
        except Refusal as refusal:
            refusals.append(refusal.about(given.name, given.label))
    if refusals := refusals + ([] if refusals else _missing(one, found)):
        raise Refused(tuple(refusals))
    return found


def _text(text: str) -> str:
    if len(text) > LONGEST_ENTRY:
        raise Refusal(f"this is {len(text)} characters long", f"type at most {LONGEST_ENTRY}")
    return text.strip()


def _stranger(one: Sum, name: str) -> Refusal:
    known = ", ".join(given.name for given in one.givens)
    return Refusal(f"{one.title.lower()} asks for no “{name[:40]}”", f"it asks for {known}", field=name)


def _missing(one: Sum, found: Mapping[str, Reading]) -> list[Refusal]:
    some = one.any_of.names if one.any_of else ()
    empty = [given for given in one.givens if given.name not in found and not given.optional and given.name not in some]
    refusals = [
        Refusal("nothing is typed here", f"give {given.help[0].lower()}{given.help[1:-1]}", given.name, given.label)
        for given in empty
    ]
    if one.any_of and (count := sum(name in found for name in some)) != one.any_of.count:
        labels = ", ".join(one.given(name).label.lower() for name in some)
        say = f"{one.any_of.count} of {labels} are wanted and {count} given"
        refusals.append(Refusal(say, "fill in more" if count < one.any_of.count else "clear the others", some[0]))
    return refusals


def _work(one: Sum, values: dict[str, Any]) -> Values:
    try:
        return {**values, **one.work(**values)}
    except Refusal as refusal:
        label = one.given(refusal.field).label if refusal.field in values else ""
        raise Refused(
            (Refusal(refusal.say, refusal.instead, refusal.field, refusal.label or label, refusal.source),)
        ) from None


def working(one: Sum, values: Values, known: set[str], bench: Bench) -> tuple[Line, ...]:
    """The lines of working that lead from what was given: for each name the first formula whose parts are all known.

    An answer that has no formula, counted off a list or read from a table, is known from the start.
    """
    lines: list[Line] = []
    known, labels, kinds = known | _looked_up(one, values), one.labels, _kinds(one)
    for line in one.formulas:
        if line.name in known or values.get(line.name) is None or not formula.names(line.text) <= known:
            continue
        known.add(line.name)
        letters = formula.letters(line.text, labels)
        numbers = formula.show(line.text, lambda name, unit: said(kinds[name], values[name], bench, unit))
        shown = printed(kinds[line.name], values[line.name], bench)
        result = f"{shown.text}, {shown.left}" if shown.left else shown.text
        lines.append(Line(labels[line.name][0].upper() + labels[line.name][1:], letters, numbers, result, line.note))
    return tuple(lines)


def _looked_up(one: Sum, values: Values) -> set[str]:
    worked = {line.name for line in one.formulas}
    return {one.name for one in one.answers if one.name not in worked and values.get(one.name) is not None}


def _kinds(one: Sum) -> dict[str, Answer]:
    givens = {
        given.name: Answer(
            name=given.name,
            label=given.label,
            kind=given.kind if given.kind in ("length", "angle", "money") else "number",
        )
        for given in one.givens
        if given.kind != "rows"
    }
    return givens | {answer.name: answer for answer in one.answers}


def said(answer: Answer, value: Any, bench: Bench, unit: str = "") -> str:
    """A value as it stands inside a line of working: short, in the maker's unit, exact where that is short too."""
    if unit:
        return short(value / formula.UNITS[unit])
    if answer.kind == "length":
        inches = bench.system == "in"
        return f"{short(value / MM_PER_INCH, 64)} in" if inches else f"{short(value)} mm"
    if answer.kind == "angle":
        return f"{show.plain(value, 2)}°"
    return (
        short(value)
        if answer.kind in ("number", "count", "percent", "money", "board-feet")
        else printed(answer, value, bench).text
    )


def short(value: Any, finest: int = 1) -> str:
    """A fraction where a rule has it, else a decimal to three places."""
    if finest > 1 and is_exact(value) and finest % value.denominator == 0:
        return show.fraction(value)
    return show.plain(value, 3)
