"""What could not be taken up, as it is at the bench: how much, where, and what can be done about it."""

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from calc import show
from calc.building.doubts import doubts
from calc.building.gap import LEAVE, Choice, Gap, measured, on_rule
from calc.building.moves import HAIR, room
from calc.building.settle import Settled
from calc.building.size import Match, Size
from calc.building.supposing import miss_if, value_uncut
from calc.cells import entry
from calc.errors import listed
from calc.roots import reach
from calc.show import NOISE
from calc.trig import Number


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


@lru_cache(maxsize=2)  # asked for what stood before an entry, and twice for what stands after it
def gaps(settled: Settled) -> tuple[Gap, ...]:
    """Every cut that is asked about, then those that still disagree with the rest, in the order of the sizes."""
    asked = {one.name: one for one in doubts(settled)}
    missed = [(size, settled.misses.get(size.name, 0)) for size in settled.piece.in_order if size.name not in asked]
    found = (_gap(settled, size, amount) for size, amount in missed if _harms(settled, size, amount))
    return (*asked.values(), *found)


def _harms(settled: Settled, size: Size, amount: Number) -> bool:
    """True for more than its play, on a side where that matters."""
    says = size.yields.over if amount > 0 else size.yields.under
    play = settled.values.get(size.yields.play) or 0
    return bool(says) and abs(float(amount)) > float(play) + NOISE


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
    now, asked = settled.values.get(name), settled.piece.cuttable[name]
    if now is None:
        return None
    low, high = room(asked, now)
    made = name in settled.cuts
    least, most = (max(low, min(HAIR, Fraction(now))), Fraction(now)) if made else (low, high)
    found = reach(lambda value: miss_if(settled, size.name, name, value), Fraction(now), least, most)
    if found is None or not found.there:
        return None
    kind, label = asked.kind, settled.piece.labels[name]
    text = entry(kind, found.value, settled.bench)
    take = f"Take {measured(kind, now - found.value, settled.bench)} off the {label}"
    return Choice(take if made else f"Make the {label} {on_rule(settled, name, found.value)}", name, text)


def alike(settled: Settled) -> tuple[Alike, ...]:
    """What must be alike, and whether it is."""
    return tuple(_alike(settled, match) for match in settled.piece.matches if match.needs_known(settled.values))


def _alike(settled: Settled, match: Match) -> Alike:
    within = match.within(**{name: settled.values[name] for name in match.needs})
    sizes = [settled.values[name] for name in match.names if name in settled.values]
    apart = max(sizes) - min(sizes) if len(sizes) == len(match.names) else None
    labels = listed([settled.piece.labels[name] for name in match.names])
    must = f"must be alike within {show.plain(within, 2)} mm {match.why}"
    differ = apart is not None and apart > within + NOISE
    told = f"differ by {measured('length', apart, settled.bench)}, and {must}" if apart and differ else must
    return Alike(match.names, within, apart, f"The {labels} {told}.")
