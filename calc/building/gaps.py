"""What could not be taken up, as it is at the bench: how much, where, and what can be done about it."""

from dataclasses import dataclass, replace

from calc import show
from calc.building.doubts import doubts
from calc.building.gap import LEAVE, Gap, measured
from calc.building.mending import choices
from calc.building.settle import Settled
from calc.building.size import Match, Size
from calc.errors import listed
from calc.remembered import remembered
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
    return Gap(size.name, size.part, amount, f"The {size.part} {say}.", choices(settled, size, amount))


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
