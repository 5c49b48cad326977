"""Panels by two printed tables at once: moisture from the one of climates, movement from the coefficients."""

from collections.abc import Iterator

from published import Check, table

WARM, DRY, NOW, DAMP = "70", "35", "9", "70"
"""Degrees Fahrenheit, relative humidities, and a moisture content: all of them keep wood within 6 to 14 percent."""
ROUNDED = 0.06
"""Percent of moisture that a cell of the table may be rounded by."""
WOODS = ("Ash, white", "Cherry, black", "Walnut, black", "Maple, sugar", "Beech, American", "Birch, paper")


def checks() -> Iterator[Check]:
    """What each wood's panel grows from 9 percent to the dampest cell, and loses to the driest, both ways across."""
    cells = {
        row["rh_percent"]: float(row["emc_percent"]) for row in table("wood_emc_table.csv") if row["temp_degF"] == WARM
    }
    for row in table("wood_dimensional_change_coefficients.csv"):
        if row["species"] in WOODS:
            for cut, column in (("flat", "C_T_per_pct_mc"), ("quarter", "C_R_per_pct_mc")):
                yield _check(row, cut, 100 * float(row[column]), cells)


def _check(row: dict[str, str], cut: str, percent: float, cells: dict[str, float]) -> Check:
    swells, shrinks = (percent * (cells[air] - float(NOW)) for air in (DAMP, DRY))
    return Check(
        sum="groove",
        given={
            "species": row["species"],
            "cut": cut,
            "opening": "10 in",
            "depth": "3/8 in",
            "moisture_now": NOW,
            "temperature": f"{WARM} °F",
            "humidity_damp": DAMP,
            "humidity_dry": DRY,
            "spare": "0",
        },
        expect={"swells": swells, "shrinks": shrinks, "panel": 10.75 / (1 + swells / 100)},
        within=dict.fromkeys(("swells", "shrinks"), percent * ROUNDED) | {"panel": 10.75 * percent * ROUNDED / 100},
        unit={"panel": "in"},
        source=f"S01 and {row['source']}",
        basis=row["basis"],
        note=row["note"],
    )
