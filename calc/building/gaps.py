"""What could not be taken up, as it is at the bench: how much, where, and what can be done about it."""

from dataclasses import dataclass, replace
from fractions import Fraction

from calc import show
from calc.building.doubts import doubts
from calc.building.gap import LEAVE, Choice, Gap, measured, on_rule
from calc.building.moves import HAIR, room
from calc.building.settle import Settled
from calc.building.size import Match, Size
from calc.building.supposing import miss_if, miss_settled, value_uncut
from calc.building.trials import Reached
from calc.cells import entry
from calc.errors import listed
from calc.remembered import remembered
from calc.roots import reach
from calc.show import NOISE
from calc.trig import Number

MOST = 4
"""How many times the gap another part may be cut by to close it; beyond that this one is the better to mend."""


@dataclass(frozen=True)
class Alike:
    """Sizes that must be alike: how nearly, how far apart they are (None until known), and all of it in a sentence."""

    names: tuple[str, ...]
    within: Number
    apart: Number | None
    say: str

    @property
    def fits(self) -> bool:
        """True until they are known to differ by more."""
        return self.apart is None or self.apart <= self.within + NOISE


@remembered(2)  # asked for what stood before an entry, and twice for what stands after it
def gaps(settled: Settled) -> tuple[Gap, ...]:
    """Every cut that is asked about, then those that still disagree with the rest, in the order of the sizes."""
    missed = [(size, settled.misses.get(size.name, 0)) for size in settled.piece.in_order]
    found = [_gap(settled, size, amount) for size, amount in missed if size.harms(amount, settled.values)]
    mends = {one.name: one.choices for one in found}
    asked = [replace(one, choices=one.choices + mends.pop(one.name, (LEAVE,))) for one in doubts(settled)]
    return (*asked, *(one for one in found if one.name in mends))


def _gap(settled: Settled, size: Size, amount: Number) -> Gap:
    says = size.yields.over if amount > 0 else size.yields.under
    say = says.format(measured(size.kind, max(amount, -amount), settled.bench))
    return Gap(size.name, size.part, amount, f"The {size.part} {say}.", tuple(_choices(settled, size, amount)))


def _choices(settled: Settled, size: Size, amount: Number) -> list[Choice]:
    """Trim the part, or make it again; or cut another part differently; or leave it."""
    wood = size.kind != "angle" and (amount < 0 if size.yields.hollow else amount > 0)
    mend = _trimmed(settled, size, amount) if wood else _anew(settled, size, amount)
    trims = [one for name in size.yields.trims if (one := _trim(settled, size, name))]
    return [mend, *trims, LEAVE]


def _trimmed(settled: Settled, size: Size, amount: Number) -> Choice:
    text = entry(size.kind, settled.cuts[size.name] - amount, settled.bench)
    where = f"more out of the {size.part}" if size.yields.hollow else f"off the {size.part}"
    return Choice(f"Take {measured(size.kind, max(amount, -amount), settled.bench)} {where}", size.name, text)


def _anew(settled: Settled, size: Size, amount: Number) -> Choice:
    """The part made again as it would be were it still to be cut, so that what gave way to it is as it was given."""
    planned = value_uncut(settled, size.name)
    value = settled.cuts[size.name] - amount if planned is None else planned
    named = f"the {settled.piece.labels[size.name]} {on_rule(settled, size.name, value)}"
    return Choice(f"Make the {size.part} again, with {named}", size.name, entry(size.kind, value, settled.bench))


def _trim(settled: Settled, size: Size, name: str) -> Choice | None:
    """Another size cut differently so that this one fits; where that part is made already, only by taking wood off."""
    now = settled.values.get(name)
    found = None if now is None else _fitted(settled, size, name, Fraction(now))
    if now is None or found is None or not _mends(settled, size, name, found.value):
        return None
    kind, label = settled.piece.cuttable[name].kind, settled.piece.labels[name]
    text = entry(kind, found.value, settled.bench)
    take = f"Take {measured(kind, now - found.value, settled.bench)} off the {label}"
    made = name in settled.cuts
    return Choice(take if made else f"Make the {label} {on_rule(settled, name, found.value)}", name, text)


def _fitted(settled: Settled, size: Size, name: str, now: Fraction) -> Reached | None:
    """What another size would have to be, everything else as it stands."""
    low, high = room(settled.piece.cuttable[name], now)
    least, most = (max(low, min(HAIR, now)), now if name in settled.cuts else high)
    found = reach(lambda value: miss_if(settled, size.name, name, value), now, least, most)
    return found if found and found.there else None


def _mends(settled: Settled, size: Size, name: str, value: Fraction) -> bool:
    """Whether this one fits once the other is cut so: within limits, with no more wood gone than the gap is worth."""
    far = abs(float(value - settled.values[name])) > MOST * abs(float(settled.misses[size.name]))
    given = [one for one in settled.piece.givens if one.name == name]
    if (far and size.kind != "angle") or any(one.outside(value) for one in (*given, settled.piece.cuttable[name])):
        return False
    missed = miss_settled(settled, size.name, name, value)
    return missed is not None and not size.harms(missed, settled.values)


def alike(settled: Settled) -> tuple[Alike, ...]:
    """What must be alike, and whether it is."""
    return tuple(_alike(settled, match) for match in settled.piece.matches if match.needs_known(settled.values))


def _alike(settled: Settled, match: Match) -> Alike:
    within = match.within(**{name: settled.values[name] for name in match.needs})
    sizes = [settled.values[name] for name in match.names if name in settled.values]
    apart = max(sizes) - min(sizes) if len(sizes) == len(match.names) else None
    labels = listed([f"“{settled.piece.kinds[name].label}”" for name in match.names])
    must = f"must be alike within {show.plain(within, 2)} mm {match.why}"
    differ = apart is not None and apart > within + NOISE
    told = f"differ by {measured('length', apart, settled.bench)}, and {must}" if apart and differ else must
    return Alike(match.names, within, apart, f"{labels} {told}.")
