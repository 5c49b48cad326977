"""What gives way in plain boxes alike: walls that go in pairs, and a bottom let into its rabbets."""

from calc.building.size import Yield

BOTTOM = {
    "bottom_long": Yield(
        over="is {} too long, more than its allowance, and does not go in",
        under="is {} too short, and leaves gaps beside its allowance",
        play="allowance",
    ),
    "bottom_across": Yield(
        over="is {} too wide, more than its allowance, and bursts the box in damp weather",
        under="is {} too narrow, and leaves gaps beside its allowance",
        play="allowance",
    ),
}


def alike(first: str, by: str, does: str = "is") -> Yield:
    """A size that must be as the first of its kind is. `does` tells how it is not: "stands", "has its groove"."""
    over, under = f"{does} {{}} more than the other", f"{does} {{}} less than the other"
    return Yield(by=(by,), over=over, under=under, trims=(first,), play="alike")
