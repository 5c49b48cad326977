"""Griffith's table of board measure, and worked examples from four books, as checks of board-measure."""

import tomllib
from collections.abc import Iterator, Mapping
from fractions import Fraction
from typing import Any

from published import HERE, Check, table

TWELFTHS = ("essex", "noyes")
"""Examples that print board feet exactly: in feet and twelfths, or as a decimal."""


def checks() -> Iterator[Check]:
    """Every board of the table, printed in whole feet, and every worked example of board measure."""
    yield from (_printed(row) for row in table("board_measure_table.csv"))
    examples = tomllib.loads((HERE / "data" / "worked_examples.toml").read_text("utf-8"))["example"]
    yield from (_exact(one) for one in examples if one["id"].startswith(TWELFTHS))
    yield from (_surface(one) for one in examples if one["id"].startswith("ahec_sm"))


def _printed(row: Mapping[str, str]) -> Check:
    exact = float(row["board_feet_exact_computed"])
    return Check(
        sum="board-measure",
        given={"boards": f"1 x {row['thickness_in']} in x {row['width_in']} in x {row['length_ft']} ft"},
        expect={"board_feet": int(row["board_feet_printed"])},
        within={"board_feet": 0.5},
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
        misprint="misprint" in row["note"],
        exact={"board_feet": exact} if "misprint" in row["note"] else {},
    )


def _board(given: Mapping[str, Any]) -> str:
    return f"1 x {given['thickness_in']} in x {given['width_in']} in x {given['length_ft']} ft"


def _exact(one: Mapping[str, Any]) -> Check:
    feet = sum(Fraction(part) for part in str(one["result"]["bf"]).split())
    return Check(
        sum="board-measure",
        given={"boards": _board(one["given"])},
        expect={"board_feet": float(feet)},
        within={"board_feet": 1e-9},
        source=f"{one['source']}, {one['id']}",
        basis=one["basis"],
        printed=one["result"]["bf"],
    )


def _surface(one: Mapping[str, Any]) -> Check:
    return Check(
        sum="board-measure",
        given={"boards": _board(one["given"])},
        expect={"surface": one["result"]["sm"], "tally": one["result"]["bf"]},
        source=f"{one['source']}, {one['id']}",
        basis=one["basis"],
        printed=one["result"]["raw_sm"],
    )
