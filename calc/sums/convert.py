"""Convert: one length on the chosen mark, in decimal inches, millimetres, feet and inches, with its neighbours."""

from calc import rule
from calc.declare import Answer, Carry, Example, Formula, Source, Sum
from calc.kinds import Count, Length, Limit
from calc.sums._convert import figure, proof, work

SUM = Sum(
    id="convert",
    title="Convert",
    moment="mark-out",
    question="What is this length on my rule, and in the other unit?",
    asks=(
        "mm to inches",
        "turn millimetres into inches",
        "inches to mm",
        "16 mm in fractions of an inch",
        "decimal inches to fractions",
        "what is 0.3125 in as a fraction",
        "decimal equivalents of fractions",
        "nearest sixteenth",
        "feet and inches to mm",
        "which mark is 137 mm",
    ),
    purpose=(
        "From a length in any unit, its mark on your rule and what is left over, decimal inches, millimetres, feet and "
        "inches, and a strip of the marks beside it."
    ),
    givens=(
        Length(
            name="length",
            label="Length",
            help="In any unit: 16 mm, 5/8 in, 0.3125 in, 4 ft 3 1/2 in.",
            limit=Limit("0 in", "1000 m"),
        ),
        rule.Mark(
            name="mark",
            label="Finest mark",
            help="The finest mark on the rule you will measure with.",
            default_why="common practice: the rule you always use",
        ),
        Count(
            name="each_side",
            label="Neighbours each side",
            help="How many marks to list below and above; 32 make a table of a whole inch in sixty-fourths.",
            default="4",
            default_why="enough to see which way a slip would go",
            limit=Limit("0", "64"),
        ),
    ),
    answers=(
        Answer(name="on_rule", label="Mark on your rule", kind="length"),
        Answer(name="decimal_inches", label="Decimal inches", kind="number", places=4),
        Answer(name="millimetres", label="Millimetres", kind="number", places=4),
        Answer(name="feet_inches", label="Feet and inches", kind="text", help="To a sixty-fourth."),
        Answer(name="exactly", label="Exactly", kind="text"),
        Answer(
            name="neighbours",
            label="Marks beside it",
            kind="rows",
            help="How far the length lies beyond each mark, below nothing how far short of it.",
            columns=(
                Answer(name="mark", label="Mark", kind="text"),
                Answer(name="decimal_inches", label="Inches", kind="number", places=4),
                Answer(name="millimetres", label="Millimetres", kind="number", places=3),
                Answer(name="off", label="Beyond it by", kind="fine"),
            ),
        ),
        Answer(
            name="rules",
            label="On every rule",
            kind="rows",
            columns=(
                Answer(name="rule", label="Rule", kind="text"),
                Answer(name="mark", label="Nearest mark", kind="text"),
                Answer(name="left", label="Left over", kind="text"),
            ),
        ),
    ),
    work=work,
    formulas=(
        Formula("on_rule", "length", "the same length, on the nearest mark"),
        Formula("decimal_inches", "length / inch", "25.4 mm to the inch, exactly"),
        Formula("millimetres", "length / mm"),
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
        Source(
            "I. S. Griffith, Carpentry (1916)", "table of decimal equivalents, three of its lines misprinted", "read"
        ),
    ),
    limits_of="Lengths from nothing to a kilometre, in inches, feet, yards, millimetres, centimetres or metres.",
    example=Example(
        {"length": "16 mm"},
        "The comment-card box is made of 16 mm ash: the mark to set on an inch rule for its rebates.",
    ),
    carry_on=(
        Carry("tally", {"reckoning": "length"}, "Add to it or take away"),
        Carry("proportion", {"size": "length"}, "Find what goes well beside it"),
    ),
)
