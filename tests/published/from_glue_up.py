"""Clamp pressures as the adhesives chapter is remembered, in both its units, as checks of glue-up."""

import re
from collections.abc import Iterator

from published import Check, table

WOODS = {"clamp_low": "light", "clamp_high": "dense"}
PANEL = {"panel_width": "300 mm", "panel_length": "400 mm", "thickness": "16 mm", "strip_width": "110 mm"}


def checks() -> Iterator[Check]:
    """The kilopascals used, and that the pounds to the square inch beside them say the same within a twentieth."""
    for row in (row for row in table("finish_and_glue.csv") if row["id"] in WOODS):
        kilopascals, psi = map(float, re.findall(r"\d+", row["value"]))
        for megapascals, within in ((kilopascals / 1000, 1e-12), (psi * 0.006894757, 0.05 * kilopascals / 1000)):
            yield Check(
                sum="glue-up",
                given={**PANEL, "wood": WOODS[row["id"]]},
                expect={"pressure": megapascals},
                within={"pressure": within},
                source=row["source"] or "no source: the Wood Handbook's chapter on adhesives, recalled",
                basis=row["basis"],
                printed=row["value"],
            )
