"""What can be done about a cut that does not fit: mend the part or make it again, cut another otherwise, or nothing."""

from fractions import Fraction

from calc.building.contest import calls_on
from calc.building.gap import LEAVE, Choice, measured, nearest_mark, on_rule
from calc.building.moves import HAIR, room
from calc.building.settle import Settled
from calc.building.size import Size
from calc.building.supposing import fitted_if, impossible_if, miss_if, value_uncut
from calc.building.trials import Reached
from calc.cells import entry
from calc.roots import reach
from calc.show import NOISE
from calc.trig import Number

MOST = 4
"""How many times the gap another part may be cut by to close it; beyond that this one is the better to mend."""


def choices(settled: Settled, size: Size, amount: Number) -> tuple[Choice, ...]:
    """Trim the part, or make it again; or cut another part differently; or leave it."""
    wood = size.kind != "angle" and (amount < 0 if size.yields.hollow else amount > 0)
    mend = _trimmed(settled, size, amount) if wood else _anew(settled, size, amount)
    trims = [one for name in size.yields.trims if (one := _trim(settled, size, name))]
    return (mend, *trims, LEAVE)


def _trimmed(settled: Settled, size: Size, amount: Number) -> Choice:
    now = settled.cuts[size.name]
    value = _settable(settled, size, size.name, now - amount)
    return Choice(_take(settled, size.name, now - value, size.part), size.name, entry(size.kind, value, settled.bench))


def _take(settled: Settled, name: str, amount: Number, where: str) -> str:
    """Wood to be taken off a size that is so much too large, or out of a hollow that is so much too small."""
    taken = measured(settled.piece.kinds[name].kind, max(amount, -amount), settled.bench)
    return f"Take {taken} {'more out of' if _hollow(settled, name) else 'off'} the {where}"


def _hollow(settled: Settled, name: str) -> bool:
    return name in settled.piece.sizes and settled.piece.sizes[name].yields.hollow


def _anew(settled: Settled, size: Size, amount: Number) -> Choice:
    """The part made again as it would be were it still to be cut, so that what gave way to it is as it was given."""
    planned = value_uncut(settled, size.name)
    value = _settable(settled, size, size.name, settled.cuts[size.name] - amount if planned is None else planned)
    named = f"the {settled.piece.labels[size.name]} {on_rule(settled, size.name, value)}"
    return Choice(f"Make the {size.part} again, with {named}", size.name, entry(size.kind, value, settled.bench))


def _trim(settled: Settled, size: Size, name: str) -> Choice | None:
    """Another size cut differently so that this one fits; one that is made already only by taking wood from it."""
    now = settled.values.get(name)
    found = None if now is None else _fitted(settled, size, name, Fraction(now))
    if now is None or found is None or not _mends(settled, size, name, found.value):
        return None
    value, label = _settable(settled, size, name, found.value), settled.piece.labels[name]
    text = entry(settled.piece.cuttable[name].kind, value, settled.bench)
    make = f"Make the {label} {on_rule(settled, name, value)}"
    return Choice(_take(settled, name, now - value, label) if name in settled.cuts else make, name, text)


def _fitted(settled: Settled, size: Size, name: str, now: Fraction) -> Reached | None:
    """What another size would have to be, everything else as it stands."""
    low, high = room(settled.piece.cuttable[name], now)
    low = max(low, min(HAIR, now))
    if name in settled.cuts:
        low, high = (now, max(now, high)) if _hollow(settled, name) else (low, now)
    found = reach(lambda value: miss_if(settled, size.name, name, value), now, low, high)
    return found if found and found.there else None


def _mends(settled: Settled, size: Size, name: str, value: Number) -> bool:
    """Whether this one fits once the other is cut so, with no more wood gone than the gap is worth."""
    far = abs(float(value - settled.values[name])) > MOST * abs(float(settled.misses[size.name]))
    return (size.kind == "angle" or not far) and _closes(settled, size, name, value)


def _closes(settled: Settled, size: Size, name: str, value: Number) -> bool:
    """Whether the gap is closed once `name` is cut so, all settled again, within limits and nothing made impossible."""
    given = [one for one in settled.piece.givens if one.name == name]
    if any(one.outside(value) for one in (*given, settled.piece.cuttable[name])):
        return False
    after = fitted_if(settled, name, value)
    missed = after.miss(size.name)
    fits = missed is not None and not size.harms(missed, settled.values)
    return fits and not impossible_if(settled, after)


def _settable(settled: Settled, size: Size, name: str, value: Number) -> Number:
    """The nearest mark of the maker's rule, where the gap is closed there too; else the value."""
    mark, now = nearest_mark(settled.piece.kinds[name].kind, value, settled.bench), settled.values[name]
    if abs(float(mark - value)) <= NOISE or mark <= 0 or float(mark - now) * float(value - now) <= 0:
        return value
    return mark if _may_close(settled, size, name, mark) and _closes(settled, size, name, mark) else value


def _may_close(settled: Settled, size: Size, name: str, value: Number) -> bool:
    """Whether it is worth settling all again: something may yield yet, or the gap is closed as all else stands."""
    missed = None if calls_on(settled, size.name) else miss_if(settled, size.name, name, value)
    return missed is None or not size.harms(missed, settled.values)
