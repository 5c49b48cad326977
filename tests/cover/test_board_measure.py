"""Board measure: exact board feet, the trade's tally, waste and cost."""

from fractions import Fraction

import pint
import pytest

import calc
from calc.sums import _boards

FOOT, INCH = Fraction("304.8"), Fraction("25.4")


def board(width: str, feet: str, count: int = 1, thickness: str = "1") -> dict[str, object]:
    """A row of boards of so many inches by so many feet."""
    size = {"thickness": Fraction(thickness) * INCH, "width": Fraction(width) * INCH, "length": Fraction(feet) * FOOT}
    return {"count": count, **size}


@pytest.mark.parametrize("sizes", [("1", "11", "14"), ("2", "6.25", "8"), ("0.625", "5.9375", "3.5")])
def test_a_board_foot_is_what_a_general_units_library_says(sizes: tuple[str, str, str]) -> None:
    """pint's own default registry defines the board foot; ours is exact and equal."""
    registry = pint.UnitRegistry(cache_folder=None)
    thick, wide, long = (float(size) for size in sizes)
    volume = thick * registry.inch * wide * registry.inch * long * registry.foot
    found = calc.answer("board-measure", boards=f"1 x {thick} in x {wide} in x {long} ft")
    assert float(found["board_feet"]) == pytest.approx(volume.to("board_foot").magnitude, rel=1e-12)
    assert float(found["volume"]) == pytest.approx(volume.to("mm**3").magnitude, rel=1e-12)


def test_board_feet_stay_exact() -> None:
    """11 in by 14 ft is 12 10/12 board feet (Noyes 1910, from the Essex board measure), not 12.83."""
    found = calc.answer("board-measure", boards="1 x 1 in x 11 in x 14 ft")
    assert (found["board_feet"], found["exactly"]) == (Fraction(77, 6), "12 5/6")


def test_rows_are_reckoned_apart_and_together() -> None:
    """Each row has its own board feet, and they make up the whole."""
    found = calc.answer("board-measure", boards="2 x 1 in x 6 in x 8 ft; 3 x 2 in x 4 in x 6 ft")
    assert [row["all"] for row in found["rows"]] == [8, 12]
    assert found["board_feet"] == 20


def test_the_tally_drops_a_broken_foot_of_length() -> None:
    """8 1/2 ft is tallied as 8 ft (American Hardwood Export Council, grading guide)."""
    assert _boards.exact_surface(board("6", "8.5")) == _boards.exact_surface(board("6", "8")) == 4


def test_the_tally_goes_to_the_nearest_whole_foot() -> None:
    """4 1/6 square feet of face count as 4 (American Hardwood Export Council), 4 5/6 as 5."""
    assert _boards.surfaces([board("6.25", "8"), board("7.25", "8")]) == [4, 5]


def test_softwood_is_told_apart_from_the_hardwood_tally() -> None:
    """A 2 x 4 of 26 ft: Griffith's table (1916) prints 17, the exact 17 1/3 in whole feet; hardwood would tally 18."""
    found = calc.answer("board-measure", boards="1 x 2 in x 4 in x 26 ft")
    assert (round(found["board_feet"]), found["tally"]) == (17, 18)
    assert "Board feet as the hardwood trade tallies: 18" in found.text
    assert "Softwood is charged by exact measure" in found.text
    assert "Softwood" not in calc.answer("board-measure", boards="1 x 1 in x 6 in x 8 ft").text


def test_exact_halves_go_up_and_down_in_turn() -> None:
    """6 in by 9 ft has 4 1/2 square feet: 5, 4, 5, 4 ..., from one row into the next (from memory, no source read)."""
    assert _boards.surfaces([board("6", "9")] * 4) == [5, 4, 5, 4]
    assert _boards.surfaces([board("6", "9", 3), board("6", "8"), board("6", "9", 2), board("6", "9")]) == [14, 4, 9, 4]


def test_a_thin_board_bought_rough_counts_as_an_inch() -> None:
    """Common practice, no source; the volume stays that of the wood."""
    thin = "1 x 1/2 in x 12 in x 10 ft"
    measured, rough = (calc.answer("board-measure", boards=thin, rule=rule) for rule in ("measured", "rough"))
    assert (measured["board_feet"], rough["board_feet"]) == (5, 10)
    assert measured["volume"] == rough["volume"]
    assert "bought rough" in measured.text
    assert "bought rough" not in rough.text


def test_waste_is_added_on_top_of_the_list() -> None:
    """A quarter on 8 board feet is 10, as Noyes (1910) adds it; the price falls on all of it."""
    found = calc.answer("board-measure", boards="2 x 1 in x 6 in x 8 ft", waste="25", price="9.50")
    assert (found["to_buy"], found["cost"], found["tally_cost"]) == (10, 95, 76)


def test_without_a_price_nothing_is_said_of_cost() -> None:
    """No price, no cost, and no nought in its place."""
    found = calc.answer("board-measure", boards="2 x 1 in x 6 in x 8 ft")
    assert not {"cost", "tally_cost"} & {answer.name for answer in found.answers}


@pytest.mark.parametrize(
    "boards", ["2 x 1 in x 6 in", "0 x 1 in x 6 in x 8 ft", "1 x 0 in x 6 in x 8 ft", "1 x 1 x 6 x 8 oz"]
)
def test_a_row_that_is_not_boards_is_refused_in_words(boards: str) -> None:
    """The refusal names the row and what is wrong in it."""
    with pytest.raises(calc.Refused, match="row 1") as refused:
        calc.answer("board-measure", boards=boards)
    assert refused.value.refusals[0].field == "boards"
