"""What a sum stands on and warns of: where its figures come from, and what can hurt."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

BASES = ("read", "computed", "memory", "common practice", "identity")


@dataclass(frozen=True)
class Source:
    """Where a figure or formula comes from. basis: one of BASES. For "common practice" no work is named."""

    work: str
    where: str = ""
    basis: str = "read"
    note: str = ""

    def __post_init__(self) -> None:
        if self.basis not in BASES:
            raise ValueError(f"source {self.work!r} has basis {self.basis!r}")


@dataclass(frozen=True)
class Caution:
    """A warning beside the number. `when` sees all values; without it the caution always stands."""

    say: str
    when: Callable[[Mapping[str, Any]], bool] | None = None
    source: str = ""
