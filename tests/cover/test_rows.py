"""Choices, and lists of like things: a cell is refused by its row and column."""

from fractions import Fraction

import pytest
from steps import steps

from calc.bench import Bench
from calc.errors import Refusal
from calc.kinds import Choice, Count, Length, Limit, Option, Text
from calc.rows import Rows

HALVES = Rows(
    name="boards", label="Boards", help="A row.", columns=(Count(name="n", label="Count", help="How many."),) * 1
)

THINGS = Rows(
    name="things",
    label="Things",
    help="A row.",
    columns=(
        Text(name="thing", label="Thing", help="Its name."),
        Length(name="wide", label="Diameter", help="Across.", limit=Limit("1 mm", "2 m")),
    ),
)


def test_a_choice_goes_by_its_key_or_its_label() -> None:
    """In any case and with any spaces; anything else is told the keys."""
    wood = Choice(
        name="wood", label="Wood", help="Which?", options=(Option("ash", "English ash"), Option("oak", "Oak"))
    )
    assert {wood.read(text, Bench()).value for text in ("ASH", " English  Ash ", "ash")} == {"ash"}
    with pytest.raises(Refusal, match="choose ash, oak"):
        wood.read("elm", Bench())


def test_a_row_is_refused_by_its_number_and_column() -> None:
    """The third cell of the second row is named, in words."""
    size = Length(name="width", label="Width", help="Across.", limit=Limit("1 in", "2 m"))
    boards = Rows(
        name="boards", label="Boards", help="A row.", columns=(Count(name="count", label="Count", help="Many."), size)
    )
    assert boards.read("2 × 6 in; 3 x 7", Bench()).value == (
        {"count": 2, "width": Fraction(762, 5)},
        {"count": 3, "width": Fraction(889, 5)},
    )
    for text, say in {
        "2 x 6; 3 x wide": "(?i)row 2, width: “wide”",
        "2 x 6; 3": "(?i)row 2 has 1 part, not 2",
        ";": "0 rows",
        "2 x 9 m": "too large",
    }.items():
        with pytest.raises(Refusal, match=say):
            boards.read(text, Bench())


def test_an_x_in_a_choice_would_part_a_row() -> None:
    """Such a declaration is refused when it is made."""
    with pytest.raises(ValueError, match="an x parts the cells"):
        Rows(
            name="a",
            label="A",
            help="A.",
            columns=(Choice(name="w", label="W", help="W.", options=(Option("box", "Box"),)),),
        )


def test_free_text_keeps_its_own_x_and_its_capitals() -> None:
    """A name may hold an x: the cells after it are counted from the right; spaces are tidied, capitals kept."""
    found = THINGS.read("Box  lid x 70 mm; X-ray film × 4 in; x 30 mm", Bench())
    assert found.value == (
        {"thing": "Box lid", "wide": 70},
        {"thing": "X-ray film", "wide": Fraction("101.6")},
        {"thing": "", "wide": 30},
    )
    assert THINGS.read(found.read, Bench()).value == found.value


def test_free_text_is_kept_as_it_was_typed() -> None:
    """What is a fraction in a size is left alone in a name."""
    assert THINGS.read("½ pint “jar” ✕ 3½ in", Bench()).value == ({"thing": "½ pint “jar”", "wide": Fraction("88.9")},)


def test_free_text_is_short_and_can_be_printed() -> None:
    """Forty-one signs are too many, a bell is no sign; the row and the column are named."""
    for name, say in {"n" * 41: "(?i)row 1, thing: this is 41", "saucer\a": "cannot be printed"}.items():
        with pytest.raises(Refusal, match=say):
            THINGS.read(f"{name} x 70 mm", Bench())
    assert THINGS.read(f"{'n' * 40} x 70 mm", Bench())


def test_free_text_stands_in_the_first_column_only() -> None:
    """Anywhere else an x in it would part the row."""
    with pytest.raises(ValueError, match="in the first only"):
        Rows(name="a", label="A", help="A.", columns=THINGS.columns[::-1])


@pytest.mark.parametrize("piece", ["1 x ", "x", " ", "1;", "9"])
def test_rows_are_read_in_steps_in_proportion_to_their_length(piece: str) -> None:
    """A list twice as long takes at most twice the steps, counted and not timed."""
    short, long = (steps(lambda count=count: HALVES.parse(piece * count, Bench())) for count in (200, 400))
    assert long <= 2 * short + 60
