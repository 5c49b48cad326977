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


def as_long(first: str, by: str) -> Yield:
    """A length that must be as the first of its kind is."""
    over, under = "is {} longer than the other", "is {} shorter than the other"
    return Yield(by=(by,), over=over, under=under, trims=(first,), play="alike")


def as_high(first: str, by: str) -> Yield:
    """A height that must be as the first of its kind is."""
    over, under = "stands {} higher than the other", "is {} lower than the other"
    return Yield(by=(by,), over=over, under=under, trims=(first,), play="alike")


def grooved(by: str) -> Yield:
    """The wood above a groove that must be as on the first: with more, the groove is too low, and the part made again.

    Wood above a groove does not grow, and what is planed off the top leaves the groove where it was. So of one too high
    only its match tells, and that its lower edge can be pared.
    """
    return Yield(by=(by,), over="has its groove {} lower than the other", under="", play="alike", hollow=True)
