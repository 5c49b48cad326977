"""Why this number: the chain of formulas that leads to a size, with the numbers put in, and what follows from it."""

from dataclasses import dataclass

from calc import formula
from calc.building.settle import Settled
from calc.building.size import Size
from calc.cells import printed
from calc.errors import listed
from calc.working import said


@dataclass(frozen=True)
class Link:
    """One size on the way. state: how it stands. letters, numbers: its formula, "" where it has none or was given.

    because: a few words on where the number is from, such as "cut" or "gave way to the lid".
    """

    name: str
    label: str
    state: str
    letters: str
    numbers: str
    result: str
    because: str


@dataclass(frozen=True)
class Why:
    """The chain to a size, from what was given to the size itself, and the names of what follows from it."""

    chain: tuple[Link, ...]
    follows: tuple[str, ...]


def why(settled: Settled, name: str) -> Why:
    """Where a given or size comes from, and what follows from it. KeyError when the piece has no such name."""
    settled.piece.labels[name]
    wanted = _leading(settled, name)
    begin = [one.name for one in settled.piece.givens if one.name in _fixed(settled)]
    names = dict.fromkeys([*begin, *(one.name for one in settled.piece.givens if one.name not in settled.piece.sizes)])
    names |= dict.fromkeys(one.name for one in settled.piece.in_order)
    return Why(
        tuple(_link(settled, one) for one in names if one in wanted),
        tuple(one for one in settled.piece.plan.touched([name], _fixed(settled)) if one in _open(settled)),
    )


def unsaid(settled: Settled, name: str) -> list[str]:
    """The sizes of which nothing is said because this given was left out; none where it was not, or is worked out."""
    if settled.values.get(name, "") is not None:
        return []
    found = {name}
    for step in settled.piece.plan.steps:
        if settled.values.get(step.name, "") is None and not found.isdisjoint(step.needs):
            found.add(step.name)
    return [size for size in settled.piece.sizes if size in found]


def _leading(settled: Settled, name: str) -> set[str]:
    """The name and all that its value was worked out from, as far back as what was given or cut."""
    found, ahead = {name}, [name]
    while ahead:
        new = [one for one in parents(settled, ahead.pop()) if one not in found]
        found.update(new)
        ahead += new
    return found


def parents(settled: Settled, name: str) -> tuple[str, ...]:
    """What this value was worked out from; nothing for what was given or cut."""
    plan = settled.piece.plan
    step = plan.by_name.get(name)
    if step is None or name in _fixed(settled):
        return ()
    some = plan.any_of.names if plan.any_of and name in plan.any_of.names else ()
    return tuple(one for one in step.needs if one not in some or settled.givens.get(one) is not None)


def _fixed(settled: Settled) -> set[str]:
    return settled.cuts.keys() | {name for name, value in settled.givens.items() if value is not None}


def _open(settled: Settled) -> set[str]:
    return {name for name in settled.piece.sizes if name not in _fixed(settled)}


def _link(settled: Settled, name: str) -> Link:
    piece, size = settled.piece, settled.piece.sizes.get(name)
    letters = numbers = ""
    if size and name not in _fixed(settled):
        letters, numbers = _formula(settled, size)
    return Link(
        name, piece.labels[name], settled.state(name), letters, numbers, result(settled, name), _because(settled, name)
    )


def _formula(settled: Settled, size: Size) -> tuple[str, str]:
    """The formula in words and in numbers; without one, what the size is worked out from."""
    labels, shown, values = settled.piece.labels, settled.piece.kinds, settled.values
    if not size.formula:
        return f"worked out from {listed([labels[name] for name in _named(settled, size.name)])}", ""
    letters = formula.letters(size.formula, labels)
    if not all(values.get(name) is not None for name in size.formula_names()):
        return letters, ""
    return letters, formula.show(size.formula, lambda name, unit: said(shown[name], values[name], settled.bench, unit))


def _named(settled: Settled, name: str) -> list[str]:
    """The parents that have a label; a step on the way stands for its own parents."""
    labels, found = settled.piece.labels, dict[str, None]()
    for one in parents(settled, name):
        found |= dict.fromkeys([one] if one in labels else _named(settled, one))
    return list(found)


def result(settled: Settled, name: str) -> str:
    """A value as it prints; "not decided yet" where there is none."""
    value, reading = settled.values.get(name), settled.readings.get(name)
    if value is None:
        return "left out" if name in settled.values else "not decided yet"
    if isinstance(value, str | tuple):
        return reading.read if reading else str(value)
    return printed(settled.piece.kinds[name], value, settled.bench).on_rule


def _because(settled: Settled, name: str) -> str:
    size, given = settled.piece.sizes.get(name), {one.name: one for one in settled.piece.givens}.get(name)
    match settled.state(name):
        case "cut":
            return "what it came out at"
        case "yielded":
            part = settled.piece.sizes[settled.took[name]].part
            return f"{settled.readings[name].read} was given; it gave way to the {part}"
        case "given":
            return f"given as {settled.readings[name].read}"
        case "default":
            return given.default_why if given else ""
        case "impossible":
            return settled.refused[name].say
    return size.note or size.help if size else ""
