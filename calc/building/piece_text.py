"""A piece being built, as text for a terminal or a sheet of paper at the bench."""

import textwrap
from collections.abc import Callable, Iterator

from calc.answers import in_columns, table
from calc.building.changes import Changes, held
from calc.building.settle import Settled
from calc.building.sizing import Known, Unknown
from calc.building.troubles import troubles, wanting, wrong
from calc.declare import Caution
from calc.probing.why import Why, result

WIDTH = 100
STATES = {"given": "given", "default": "as usual", "cut": "cut", "open": "open", "undecided": "not decided yet"}
STATES |= {"impossible": "cannot be made"}


def shown(settled: Settled) -> str:
    """Everything given and every size, by the names to type, how each stands; then what is wanting, and wrong."""
    names = {one.name: one.label for one in settled.piece.givens}
    names |= {name: one.label for name, one in settled.piece.sizes.items() if name not in names}
    sizes = [name for name in settled.piece.sizes if name not in {one.name for one in settled.piece.givens}]
    parts = [_title(settled), ""]
    for head, wanted in (("Given:", [one.name for one in settled.piece.givens]), ("Worked out:", sizes)):
        rows = [[name, names[name], *_stands(settled, name)] for name in wanted]
        parts += [head, *(f"  {line}" for line in in_columns(rows))]
    return "\n".join([*parts, *wanting(settled), *troubles(settled)])


def _title(settled: Settled) -> str:
    return ": ".join(one for one in (settled.piece.title, settled.record.title) if one)


def _state(settled: Settled, name: str) -> str:
    if name in settled.took:
        part = settled.piece.sizes[settled.took[name]].part
        return f"gave way to the {part}, from {settled.readings[name].read}"
    if name in settled.values and settled.values[name] is None:
        return ""
    return STATES[settled.state(name)]


def changed(found: Changes, before: Settled, after: Settled) -> str:
    """What an entry changed, old and new, and what has gone wrong since."""
    labels = {one.name: one.label for one in after.piece.named}
    told = {one.name: (result(before, one.name), result(after, one.name)) for one in found.sizes}
    lines = [f"{labels[name]}: {now}; was {old}" for name, (old, now) in told.items() if old != now]
    stands = {name: _stood(after, name) for name in held(before, after) if name not in told}
    lines += [f"{labels[name]}: {how}" for name, how in stands.items()]
    minds = wrong(after, list(found.gaps), list(found.unlike), list(found.broken), list(found.impossible))
    return "\n".join([*(lines or ["Nothing else changes."]), *minds])


def _stood(settled: Settled, name: str) -> str:
    """How what was just given stands all the same."""
    now = result(settled, name)
    return f"cut at {now}, and that stands" if name in settled.cuts else f"stands at {now}; {_state(settled, name)}"


def explained(found: Why, settled: Settled) -> str:
    """The chain that leads to a size, a line each with its numbers, and what follows from it."""
    lines = []
    for link in found.chain:
        formula = " = ".join(part for part in (link.letters, link.numbers) if part)
        lines.append(f"{link.label} = {formula + ' = ' if formula else ''}{link.result} ({link.because or link.state})")
    labels = settled.piece.labels
    follows = ", ".join(labels[name] for name in found.follows)
    return "\n".join([*lines, *([f"From it follow: {follows}."] if follows else [])])


def sheet(settled: Settled) -> str:
    """The bench sheet: parts with a box to tick, tables, settings, what is wrong, what to take care of."""
    heads: tuple[Callable[[Settled], Iterator[str]], ...] = (_parts, _tables, _settings)
    lines = [line for head in heads for line in ("", *head(settled))]
    return "\n".join([_title(settled), *_wrapped(settled.piece.purpose), *lines, *troubles(settled), *_care(settled)])


def _parts(settled: Settled) -> Iterator[str]:
    """What was given and can be measured, then every size that is measured on a part, part by part."""
    yield "Sizes:"
    givens = [name for name in settled.piece.cuttable if name not in settled.piece.sizes]
    labels = {one.name: one.label for one in settled.piece.givens}
    rows = [["Given", name, labels[name]] for name in givens if _state(settled, name) not in ("", STATES["default"])]
    sizes = [one for one in settled.piece.sizes.values() if one.can_be_cut]
    for part in dict.fromkeys(one.part for one in sizes):
        rows += [[part.capitalize(), one.name, one.label] for one in sizes if one.part == part]
    told = [[_box(settled, name), part, label, *_stands(settled, name)] for part, name, label in rows]
    yield from (f"  {line}" for line in in_columns(told))


def _box(settled: Settled, name: str) -> str:
    return f"[{'x' if name in settled.cuts else ' '}]"


def _stands(settled: Settled, name: str) -> list[str]:
    return [result(settled, name), _state(settled, name)]


def _tables(settled: Settled) -> Iterator[str]:
    for one in settled.piece.tables:
        if one.name in settled.values:
            yield from table(one, settled.values[one.name], settled.bench)


def _settings(settled: Settled) -> Iterator[str]:
    yield "Settings and sums:"
    wanted = [one for one in settled.piece.sizes.values() if one.shown and not one.can_be_cut]
    yield from (f"  {line}" for line in in_columns([[one.label, result(settled, one.name)] for one in wanted]))


def _care(settled: Settled) -> list[str]:
    """The cautions that stand now; those that hang on a size not known yet are left out."""
    known = Known(settled.values)
    said = [one.say for one in settled.piece.cautions if _stands_now(one, known)]
    return ["", *(line for say in said for line in _wrapped(f"Take care: {say}"))]


def _stands_now(one: Caution, known: Known) -> bool:
    try:
        return one.when is None or one.when(known)
    except Unknown:
        return False


def _wrapped(text: str) -> list[str]:
    return textwrap.wrap(text, WIDTH)
