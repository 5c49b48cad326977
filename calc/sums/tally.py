"""Tally: plus, minus, times and divide over lengths in any mix of inches, feet and millimetres."""

from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum
from calc.rows import Reckoning
from calc.sums._tally import figure, overdrawn, proof, work

SUM = Sum(
    id="tally",
    title="Tally",
    moment="mark-out",
    question="What do these sizes come to?",
    asks=(
        "add fractions of an inch",
        "5 3/8 plus 2 7/16",
        "take a saw cut off a length",
        "half of 13 5/8",
        "add inches and millimetres",
        "divide a length into equal parts",
        "how many times does 1 3/4 in go into 4 ft",
        "fractional inch calculator",
        "feet and inches arithmetic",
    ),
    purpose="Lengths added, taken away, multiplied and divided exactly, in any mix of units, and put on a mark.",
    givens=(
        Reckoning(
            name="reckoning",
            label="Reckoning",
            help="Type it out, as 9 3/4 + 2 x 16 mm; a number alone takes your own unit, and brackets may be used.",
        ),
    ),
    answers=(
        Answer(name="result", label="Comes to", kind="length", help="The terms of the tape added up, nothing rounded."),
        Answer(name="ratio", label="Goes", kind="number", places=4, help="How many times one length holds the other."),
        Answer(name="whole", label="Whole times", kind="count", help="Of a length below nothing there are none."),
        Answer(name="exactly", label="Exactly", kind="text"),
        Answer(name="feet_inches", label="In feet and inches", kind="text", help="To a sixty-fourth."),
        Answer(name="decimal_inches", label="In decimal inches", kind="number", places=4),
        Answer(
            name="tape",
            label="Tape",
            kind="rows",
            help="Each term as it was read, what it comes to, and the running total.",
            columns=(
                Answer(name="term", label="Term", kind="text"),
                Answer(name="comes_to", label="Comes to", kind="length"),
                Answer(name="total", label="Total so far", kind="length"),
            ),
        ),
    ),
    work=work,
    formulas=(
        Formula("decimal_inches", "result / inch", "25.4 mm to the inch, exactly"),
        Formula("whole", "floor(ratio)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "International yard and pound agreement (1959), as in the GNU Units database, from NIST SP 811 (2008)",
            "the inch, 25.4 mm exactly",
            "read",
        ),
        Source("ASME A112.18.1-2018/CSA B125.1-18", "annex A: a tie goes to the even mark", "read"),
    ),
    limits_of=(
        "Lengths and plain numbers, up to 200 signs and twenty brackets deep. A length times a length is an area and "
        "is refused; a length divided by a length is a plain number."
    ),
    cautions=(
        Caution(
            "More is taken away than there is: the result is below nothing.",
            when=overdrawn,
            source="arithmetic",
        ),
    ),
    example=Example(
        {"reckoning": "9 3/4 in + 2 x 16 mm"},
        "The back of the comment-card box: 9 3/4 in clear inside, and a 16 mm ash side at each end of it.",
    ),
    carry_on=(
        Carry("slope", {"run": "result"}, "Use it as the run of a slope"),
        Carry("mitre", {"side": "result"}, "Use it as the side of a frame"),
    ),
)
