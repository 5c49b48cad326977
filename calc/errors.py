"""What is said when an entry cannot be used: which field, what is wrong, what to type instead."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any


@dataclass(eq=False)
class Refusal(Exception):
    """One entry that cannot be used.

    >>> print(Refusal("“1,500” could mean 1500 or 1.5", "type 1500 or 1.5", field="rise", label="Rise"))
    Rise: “1,500” could mean 1500 or 1.5; type 1500 or 1.5.
    """

    say: str
    instead: str = ""
    field: str = ""
    label: str = ""
    source: str = ""

    def __str__(self) -> str:
        head = f"{self.label or self.field}: " if self.label or self.field else ""
        tail = f"; {self.instead}" if self.instead else ""
        source = f" ({self.source})" if self.source else ""
        say = self.say if head else self.say[:1].upper() + self.say[1:]
        return f"{head}{say}{tail}{source}."

    def about(self, field: str, label: str) -> "Refusal":
        """The same refusal, with the field it concerns put in front."""
        if self.field:
            return self
        return replace(self, field=field, label=label)

    def labelled(self, labels: Mapping[str, str]) -> "Refusal":
        """The same refusal, its field named as it is on the page."""
        return replace(self, label=labels.get(self.field, self.label))


class Refused(Exception):
    """Every entry of one question that cannot be used, in the form's order; `givens` are those that could be read."""

    def __init__(self, refusals: tuple[Refusal, ...], givens: tuple[Any, ...] = ()) -> None:
        super().__init__(" ".join(str(one) for one in refusals))
        self.refusals = refusals
        self.givens = givens


def listed(words: Sequence[str], joint: str = "and") -> str:
    """Words as a sentence lists them.

    >>> listed(["rise", "run", "angle"])
    'rise, run and angle'
    """
    return f" {joint} ".join(part for part in (", ".join(words[:-1]), *words[-1:]) if part)


def meant(name: str, known: Sequence[str]) -> str:
    """What to type instead of a name that is none of these: those spelt like it, else the first six.

    >>> meant("lidlong", ["lid_long", "depth"]), meant("sofa", ["tray", "box"])
    ('perhaps lid_long was meant', 'choose one like tray or box')
    """
    import difflib  # only when something was misspelt

    near = difflib.get_close_matches(name[:40], known, cutoff=0.5)
    return f"perhaps {listed(near, 'or')} was meant" if near else f"choose one like {listed(known[:6], 'or')}"
