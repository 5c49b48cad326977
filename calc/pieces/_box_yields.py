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
    """How far down a groove is that must be as the first is: one too high is planed lower, one too low made again.

    What is planed off the top of a wall leaves its groove where it was, above the table.
    """
    over, under = "has its groove {} lower than the other", "has its groove {} higher than the other"
    return Yield(by=(by,), over=over, under=under, play="alike", hollow=True)
