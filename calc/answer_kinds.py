"""What a sum can answer: the kinds of answer, each printed in its own way by `calc.cells`."""

from dataclasses import dataclass

from calc.given import Given

KINDS = (
    *("length", "fine", "angle", "number", "count", "percent", "money", "board-feet", "volume", "text", "rows"),
    *("temperature", "mass", "force", "pressure", "area", "liquid", "density", "spread", "coverage", "capacity"),
)


@dataclass(frozen=True, kw_only=True)
class Answer:
    """One thing a sum answers. `kind` decides how it prints; "rows" is a table with `columns` of Answers.

    "fine" is a length too small for a rule, such as the thickness of a nail. Volumes are in cubic millimetres,
    board feet in board feet, percents in hundredths (12 prints 12%), temperatures in degrees Celsius; masses, forces
    and their like in the base unit of their scale in `calc.typed.scales`.
    `places` is for numbers and percents. An answer whose value is None is not shown; nor one with `shown` False, which
    says another again, until a part is cut otherwise.
    """

    name: str
    label: str
    kind: str
    help: str = ""
    places: int = 2
    columns: tuple["Answer", ...] = ()
    shown: bool = True

    def __post_init__(self) -> None:
        if self.kind not in KINDS or bool(self.columns) != (self.kind == "rows"):
            raise ValueError(f"answer {self.name!r} has kind {self.kind!r}")


def as_answer(given: Given, places: int = 2) -> Answer:
    """How a given prints: as an answer of its kind does, a number in percent as a percentage."""
    kind = "percent" if getattr(given, "unit", "") == "%" else given.kind if given.kind in KINDS else "number"
    return Answer(name=given.name, label=given.label, kind=kind, places=places)
