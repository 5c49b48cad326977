"""Withdrawal constants as printed, in newtons and pounds, on the gravity each is said to be for."""

from collections.abc import Iterator

import pint
from published import Check, table

UNITS = pint.UnitRegistry()
AT_12 = 0.5
"""Specific gravity at 12 percent of a wood of 560 kg to the cubic metre."""
OVENDRY = 1 / (1 / AT_12 - 0.265 * 0.4)
"""Less two fifths of the shrinkage of 26.5 percent for each unit of basic gravity: Wood Handbook, equation 4-12."""
GIVEN = {"species": "white ash", "density": "560 kg/m³", "own": "2.5 mm", "into": "30 mm"}
FORMS = {
    "nail_withdrawal_smooth_SI": ("ultimate", AT_12, "N/mm**2"),
    "nail_withdrawal_smooth_US": ("ultimate", AT_12, "lbf/in**2"),
    "nail_withdrawal_1931_1965": ("older", OVENDRY, "lbf/in**2"),
    "nds_nail_withdrawal": ("allowable", OVENDRY, "lbf/in**2"),
}


def checks() -> Iterator[Check]:
    """Each form's force on one nail by pint; the remembered pounds of the present form come to a thousandth of it."""
    for row in (row for row in table("fastener_rules.csv") if row["id"] in FORMS):
        name, gravity, unit = FORMS[row["id"]]
        stress = UNITS.Quantity(float(row["value"]), unit) * gravity**2.5
        force = (stress * UNITS.Quantity(2.5, "mm") * UNITS.Quantity(30, "mm")).to("newton").magnitude
        yield Check(
            sum="nail-hold",
            given=GIVEN,
            expect={name: force},
            within={name: force * (1e-3 if row["basis"] == "memory" else 1e-9)},
            source=row["source"] or "no source: recalled",
            basis=row["basis"],
            printed=f"{row['quantity']}, k = {row['value']}",
            note=row["note"],
        )
