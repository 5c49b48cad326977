"""Price: what a thing costs its maker and what to ask for it, one or a batch, with nothing assumed."""

from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Count, Given, Limit, Money, Number
from calc.sums._price import proof, work
from calc.sums._price_figure import figure
from calc.typed.measures import Percent

NONE = "nothing is added that you have not asked for"
MOST = Limit("0", "1000000")


def _money(name: str, label: str, help: str) -> Given:
    return Money(name=name, label=label, help=help, limit=MOST, default="0", default_why=NONE)


def _answer(name: str, label: str, help: str = "", kind: str = "money") -> Answer:
    return Answer(name=name, label=label, kind=kind, help=help)


SUM = Sum(
    id="price",
    title="Price",
    moment="finish",
    question="What does it cost to make, and what to ask for it?",
    asks=(
        "what does it cost to make",
        "what should i charge",
        "price of a box",
        "cost each in a batch of ten",
        "hours and rate",
        "what do i earn by the hour",
        "cost of stock and hinges",
        "price for a commission",
        "add for overheads",
    ),
    purpose="From what is bought, the hours and their rate: the cost of one and of a batch, the price with overheads "
    "and gain, and what a price that is asked leaves for an hour of work.",
    givens=(
        _money("stock", "Stock", "The wood in one piece, waste included: the sum called board-measure prices it."),
        _money("nails", "Nails and screws", "For one piece."),
        _money("hinges", "Hinges", "For one piece, and other fittings."),
        _money("finish", "Finish", "For one piece: the share of the tin it takes."),
        _money("other", "Other things bought", "For one piece: glue, paper, packing."),
        Number(
            name="hours",
            label="Hours on one piece",
            help="From the first line to the last coat: 2.5 or 2 1/2.",
            default="0",
            default_why=NONE,
            limit=Limit("0", "10000"),
        ),
        _money("rate", "Rate for an hour", "What an hour of your work is to bring."),
        _money("once", "Bought once for the batch", "Such as a sharpened saw, a drill, a tin that is not used up."),
        Number(
            name="setting_up",
            label="Hours once for the batch",
            help="Setting up, making a jig, fetching the wood.",
            default="0",
            default_why=NONE,
            limit=Limit("0", "10000"),
        ),
        Percent(
            name="overhead",
            label="Overheads",
            help="Rent, light, wear of tools, in percent of what is bought and worked.",
            default="0",
            default_why=NONE,
            limit=Limit("0", "500"),
        ),
        Percent(
            name="gain",
            label="Gain",
            help="Added to the cost, in percent of it; also for taxes on sales, if you charge any.",
            default="0",
            default_why=NONE,
            limit=Limit("0", "1000"),
        ),
        Count(
            name="batch",
            label="How many alike",
            help="Made as one batch.",
            default="1",
            limit=Limit("1", "100000"),
        ),
        Money(
            name="asked",
            label="Price that could be asked",
            help="To see what it leaves for your work; or leave it empty.",
            optional=True,
            limit=MOST,
        ),
    ),
    answers=(
        _answer("each", "Price of one"),
        _answer("all", "Price of all", "Reckoned exactly, before any rounding."),
        _answer("cost", "Cost of one"),
        _answer("cost_all", "Cost of all"),
        _answer("earned", "Earned by the hour at the price asked"),
        _answer("left", "Left for the work on one at the price asked"),
        _answer("goods", "Bought for one"),
        _answer("labour", "Work on one"),
        _answer("over", "Overheads on one"),
        _answer("gained", "Gain on one"),
        _answer("time", "Hours on one with its share", "Of what is done once for the batch.", "number"),
        _answer("all_time", "Hours in all", "", "number"),
        _answer("lost", "Lost by rounding", "What all cost over so many at the price of one to two places."),
        _answer("won", "Won by rounding", "What so many at the price of one to two places bring over all."),
        Answer(
            name="rows",
            label="Where the money goes",
            kind="rows",
            columns=(
                _answer("what", "What", "", "text"),
                _answer("each", "For one"),
                _answer("all", "For all"),
                Answer(name="share", label="Share of the cost", kind="percent", places=1),
            ),
        ),
    ),
    work=work,
    formulas=(
        Formula("goods", "stock + nails + hinges + finish + other + once / batch"),
        Formula("time", "hours + setting_up / batch"),
        Formula("labour", "time * rate"),
        Formula("over", "(goods + labour) * overhead / 100"),
        Formula("cost", "goods + labour + over"),
        Formula("gained", "cost * gain / 100"),
        Formula("each", "cost + gained"),
        Formula("all", "each * batch"),
        Formula("cost_all", "cost * batch"),
        Formula("all_time", "time * batch"),
        Formula("left", "asked / (1 + overhead / 100) - goods", "overheads take their share of it"),
        Formula("earned", "left / time"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Addition of what is spent, shared among a batch", "", "identity"),
        Source("Overheads on goods and work alike, gain on the cost", "", "common practice"),
    ),
    limits_of="Money in one currency, whose sign is yours to choose; amounts are exact and printed to two places, ties "
    "to the even penny. Nothing is known of taxes, fees or what your hour is worth.",
    cautions=(
        Caution(
            "The price asked does not even pay for what is bought.",
            lambda v: v["asked"] is not None and v["asked"] < v["goods"],
        ),
        Caution(
            "The price asked pays for what is bought, but not for the overheads as well: nothing is left for the work.",
            lambda v: v["left"] is not None and v["left"] < 0 and v["asked"] >= v["goods"],
        ),
        Caution(
            "No work is counted: type your hours and their rate, unless you mean to give them away.",
            lambda v: not v["labour"],
        ),
        Caution(
            "The price of one, to two places, times how many is not quite the price of all: say which you mean.",
            lambda v: v["lost"] is not None or v["won"] is not None,
        ),
    ),
    example=Example(
        {
            "stock": "14.20",
            "nails": "0.65",
            "hinges": "3.90",
            "finish": "1.10",
            "hours": "3.5",
            "rate": "18",
            "setting_up": "2",
            "overhead": "10",
            "batch": "6",
            "asked": "95",
        },
        "Six reading rooms want a comment-card box each: ash, brass hinges and oil, and an evening to set up.",
    ),
    carry_on=(Carry("board-measure", {}, "What the wood costs"), Carry("weight", {}, "What it weighs to send")),
)
