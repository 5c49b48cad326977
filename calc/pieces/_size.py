"""A short way to declare a size of a piece."""

from collections.abc import Callable, Mapping
from typing import Any

from calc.building.size import Size, Yield

Made = Callable[..., Size]


def sizes_by(yields: Mapping[str, Yield]) -> Made:
    """What makes a size, with what gives way to it by name."""

    def size(
        name: str, label: str, help: str, work: Callable[..., Any], formula: str = "", note: str = "", **more: Any
    ) -> Size:
        told = {"yields": yields.get(name, Yield()), **more}
        return Size(name=name, label=label, help=help, work=work, formula=formula, note=note, **told)

    return size
