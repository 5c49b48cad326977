"""What is wrong with a piece being built, or wanting, as text, with what can be done about it."""

from calc.building.contest import contested
from calc.building.gap import Choice, Gap
from calc.building.gaps import Alike, alike, gaps
from calc.building.record import UNDECIDED
from calc.building.settle import Settled
from calc.errors import listed

HAD = ("given", "cut", "yielded")


def troubles(settled: Settled) -> list[str]:
    """All that does not fit, is broken or cannot be worked out or used, a line each under its heading."""
    unlike = [one for one in alike(settled) if not one.fits]
    return wrong(settled, list(gaps(settled)), unlike, list(settled.broken), list(settled.refused))


def wrong(
    settled: Settled, missed: list[Gap], unlike: list[Alike], broken: list[str], impossible: list[str]
) -> list[str]:
    """These, a line each under a heading, and what was entered that cannot be used; nothing where all is well."""
    labels = settled.piece.labels
    told = [line for one in missed for line in (one.say, *map(_choice, one.choices))]
    told += [_came_first(settled, name) for name in (contested(settled) if missed else [])]
    told += [one.say for one in unlike]
    told += [f"The {labels[name]} {settled.broken[name]}." for name in broken]
    told += dict.fromkeys(_impossible(settled, name) for name in impossible)
    told += [f"Not used: {one}" for one in settled.refusals]
    return ["", "Mind:", *(f"  {line}" for line in told)] if told else []


def _impossible(settled: Settled, name: str) -> str:
    """Why a size cannot be made, and what to do instead; a step on the way has no label of its own."""
    kinds, refusal = settled.piece.kinds, settled.refused[name]
    return str(refusal.about(name, kinds[name].label) if name in kinds else refusal)


def _came_first(settled: Settled, name: str) -> str:
    return f"If the {settled.piece.labels[name]} was cut first, the rest follows it instead: then first {name}"


def _choice(one: Choice) -> str:
    return f"  - {one.say}: then cut {one.name}='{one.text}'" if one.name else f"  - {one.say}."


def wanting(settled: Settled) -> list[str]:
    """What must be given before the piece is whole, by the names to type; of "any two of" what is wanted yet."""
    group = settled.piece.any_of
    some = group.names if group else ()
    told = [one.name for one in settled.piece.givens if one.name not in some and _wanted(settled, one.name)]
    free = [name for name in some if settled.state(name) not in HAD]
    count = group.count - (len(some) - len(free)) if group else 0
    told += [f"{'two' if count > 1 else 'one'} of {listed(free, 'or')}"] if count > 0 else []
    return ["", f"To give: {listed(told, 'and')}."] if told else []


def _wanted(settled: Settled, name: str) -> bool:
    typed = settled.record.givens.get(name)
    open_on_purpose = typed is not None and typed.text.strip() == UNDECIDED
    return settled.state(name) == "undecided" and (open_on_purpose or not settled.piece.given(name).optional)
