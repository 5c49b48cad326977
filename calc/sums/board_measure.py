"""Board measure: what a list of boards comes to, exactly and as the hardwood trade tallies, and what it costs."""

from fractions import Fraction
from typing import Any

from calc import show
from calc.declare import Carry, Caution, Example, Formula, Source, Sum, Values
from calc.sums import _boards
from calc.sums import _boards_form as form
from calc.sums._boards_drawing import figure
from calc.units import MM_PER_INCH


def work(boards: tuple[dict[str, Any], ...], rule: str, waste: Fraction, price: Fraction | None) -> Values:
    """Every row reckoned, then the whole; waste and money on top."""
    rows = _boards.reckoned(boards, rule == "rough")
    board_feet, tally = sum(row["all"] for row in rows), sum(row["tally"] for row in rows)
    to_buy = board_feet * (1 + waste / 100)
    return {
        "rows": rows,
        "board_feet": board_feet,
        "exactly": _exactly(board_feet),
        "tally": tally,
        "surface": sum(row["surface"] for row in rows),
        "to_buy": to_buy,
        "volume": sum(row["volume"] for row in rows),
        "counted": sum(row["counted"] for row in rows),
        "cost": None if price is None else to_buy * price,
        "tally_cost": None if price is None else tally * price,
    }


def _exactly(value: Fraction) -> str | None:
    """The board feet as a mixed number, where that is short enough to read."""
    return show.fraction(value) if 1 < value.denominator <= 1728 else None


def proof(v: Values) -> dict[str, float]:
    """Litres and board feet tell one volume, the rows make up the whole, and no board is tallied half a foot off."""
    litres = float(v["counted"]) / 1e6
    off = abs(v["surface"] - sum(row["count"] * _boards.exact_surface(row) for row in v["rows"]))
    return {
        "a board foot is 2.359737216 litres": float(v["board_feet"]) * 2.359737216 / litres - 1,
        "the rows make up the whole": float(sum(row["each"] * row["count"] for row in v["rows"]) / v["board_feet"] - 1),
        "no board is tallied more than half a foot off": max(
            0.0, float(off - sum(row["count"] for row in v["rows"]) / 2)
        ),
        "without its waste, what is bought is the list": float(v["to_buy"] / v["board_feet"] * 100 - v["waste"]) / 100
        - 1,
    }


SUM = Sum(
    id="board-measure",
    title="Board measure",
    moment="stock",
    question="How many board feet is it, and what does it cost?",
    asks=(
        "how many board feet",
        "board foot calculator",
        "what will the wood cost",
        "price per board foot",
        "how much wood to buy",
        "add for waste",
        "board feet to cubic metres",
        "tally of boards",
        "surface measure",
    ),
    purpose=(
        "From a list of boards: board feet exactly, the hardwood trade's tally apart from it, cubic metres, what "
        "to buy with waste added, and the cost."
    ),
    givens=form.GIVENS,
    answers=form.ANSWERS,
    work=work,
    formulas=(
        Formula(
            "board_feet",
            "counted / (foot ** 2 * inch)",
            "a board foot is a foot square and an inch thick, 144 cubic inches",
        ),
        Formula("to_buy", "board_feet * (1 + waste / 100)"),
        Formula("cost", "to_buy * price"),
        Formula("tally_cost", "tally * price"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("I. S. Griffith, Carpentry (1916)", "board measure table", "read", "Board feet of 2 x 4 to 14 x 14."),
        Source(
            "American Hardwood Export Council, grading guide",
            "measurement",
            "read",
            "Surface measure to the nearest whole foot; lengths down to the whole foot.",
        ),
        Source(
            "That exact halves of a foot go up and down in turn",
            "",
            "memory",
            "Read for half inches of width, remembered for half feet of face.",
        ),
        Source(
            "W. Noyes, Handwork in Wood (1910)", "", "read", "A quarter added to the cost for waste in small pieces."
        ),
        Source("That rough boards under an inch count as an inch", "", "common practice"),
    ),
    cautions=(
        Caution(
            "Merchants usually charge a board under an inch thick as an inch: choose “bought rough” to see it.",
            lambda v: v["rule"] == "measured" and any(row["measured"] < MM_PER_INCH for row in v["rows"]),
        ),
        Caution(
            "The tally is the hardwood trade's. Softwood is charged by exact measure of the size it is called, a 2 x 4 "
            "as 2 in by 4 in.",
            lambda v: v["tally"] != v["board_feet"],
            "I. S. Griffith, Carpentry (1916), board measure table",
        ),
        Caution(
            "The hardwood tally drops every broken foot, so boards under a foot long come to nothing in it.",
            lambda v: any(row["length"] < _boards.FOOT for row in v["rows"]),
        ),
        Caution(
            "Nothing is added for waste. For small pieces W. Noyes (1910) adds a quarter.", lambda v: v["waste"] == 0
        ),
        Caution(
            "A face came to an exact half foot: that such halves go up and down in turn is from memory, so "
            "ask how your merchant counts them.",
            lambda v: any(_boards.exact_surface(row) % 1 == _boards.HALF for row in v["rows"]),
        ),
    ),
    carry_on=(Carry("nail", {}, "Choose the nails for these boards"),),
    limits_of=(
        "Square-edged boards, 1 to 100 rows, up to 24 in thick, 2 m wide and 20 m long. Waney boards are measured "
        "at a width you judge."
    ),
    example=Example(
        {
            "boards": "3 x 16 mm x 150 mm x 1.8 m; 1 x 1 in x 6 in x 4 ft",
            "rule": "rough",
            "waste": "25",
            "price": "9.50",
        },
        "Three 16 mm ash boards for the comment-card box and an inch board for its battens; the merchant "
        "counts thin boards as an inch.",
    ),
)
