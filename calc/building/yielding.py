"""What gives way when a part comes out of the saw other than it was worked out, and what is said where nothing does."""

from dataclasses import dataclass


@dataclass(frozen=True, kw_only=True)
class Yield:
    """What gives way when a size comes out of the saw other than it was worked out.

    by: givens that may take up the difference, in order, each within its own limit.
    over, under: said of the part for what they cannot take up, the amount at {}: "stands {} proud at the front";
    "" where too large, or too small, does no harm.
    play: a given or size; a difference of no more than it does no harm either way.
    trims: sizes of other parts that may be cut differently instead.
    hollow: True for what is cut out of a part: one too small is cut larger, and one too large has to be made again.
    """

    by: tuple[str, ...] = ()
    over: str = "is {} too large"
    under: str = "is {} too small"
    trims: tuple[str, ...] = ()
    play: str = ""
    hollow: bool = False

    def __post_init__(self) -> None:
        if any(say and say.count("{}") != 1 for say in (self.over, self.under)):
            raise ValueError(f"{self.over!r} and {self.under!r} need one {{}} each, where the amount stands")

    @property
    def matters(self) -> bool:
        """False where a cut contradicts nothing, whatever it comes out at."""
        return bool(self.by or self.over or self.under)
