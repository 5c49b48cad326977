"""How much finish parts take: their faces, the coats, and the spread that is printed on the tin."""

import math
from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from calc.declare import Values

Row = dict[str, Any]


def work(
    boards: Sequence[Row],
    faces: str,
    batch: int,
    coats: int,
    coverage: Fraction,
    first: Fraction,
    waste: Fraction,
    tin: Fraction | None,
    price: Fraction | None,
) -> Values:
    """The faces added up; then the coats; then the tins, where the size of one is given."""
    rows = [_row(row, faces) for row in boards]
    area = batch * sum(row["all"] for row in rows)
    one = area / coverage
    liquid = one * (coats + first / 100) * (1 + waste / 100)
    return {
        **{"rows": rows, "area": area, "one": one, "liquid": liquid, "covered": area * coats},
        "each": liquid / batch if batch > 1 else None,
        **_tins(liquid, tin, price),
        "share": None if tin is None or price is None else price * liquid / tin / batch,
        "goes": None if tin is None else math.floor(tin * batch / liquid),
    }


def _row(row: Row, faces: str) -> Row:
    thick, wide, long = row["thickness"], row["width"], row["length"]
    one = wide * long
    if faces == "both":
        one = 2 * wide * long
    if faces == "all":
        one = 2 * (wide * long + thick * wide + thick * long)
    return {**row, "each": one, "all": row["count"] * one}


def _tins(liquid: Fraction, tin: Fraction | None, price: Fraction | None) -> Values:
    if tin is None:
        return {"tins": None, "left": None, "cost": None}
    tins = math.ceil(liquid / tin)
    return {"tins": tins, "left": tins * tin - liquid, "cost": None if price is None else tins * price}


def proof(v: Values) -> dict[str, float]:
    """What the tins hold is what is spread, lost and left; a film of it lies as thick as the tin says it would."""
    film = float(v["liquid"] / (1 + v["waste"] / 100)) / (float(v["covered"]) + float(v["area"] * v["first"]) / 100)
    told = {
        "spread thin it lies as thick as the tin's spread": film * float(v["coverage"]) - 1,
        "the rows make up the area": float(v["batch"] * sum(row["all"] for row in v["rows"]) / v["area"]) - 1,
    }
    if v["tins"] is None:
        return told
    return told | {
        "the tins hold what is used and what is left": float((v["tins"] * v["tin"] - v["left"]) / v["liquid"]) - 1,
        "one tin fewer would not do": max(0.0, float(v["left"] / v["tin"]) - 1),
    }
