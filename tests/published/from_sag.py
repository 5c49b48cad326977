"""Beam formulas of the Wood Handbook and of Record (1914), as checks of sag."""

from collections.abc import Iterator, Mapping
from fractions import Fraction

from published import Check, table

LOADS = {
    "uniform": "uniform",
    "concentrated midspan": "centre",
    "two at quarter points": "quarters",
    "concentrated free end": "end",
}
HELD = {"simply supported": "simple", "both clamped": "clamped", "cantilever": "cantilever"}
SHELF = {
    "species": "own",
    "own": "10 GPa",
    "span": "1 m",
    "width": "120 mm",
    "thickness": "10 mm",
    "load": "1 kg",
}
"""Stiffness times second moment 10⁸ N mm², load 9.80665 N, no weight of its own: it bends 98.0665 mm a coefficient."""


def checks() -> Iterator[Check]:
    """Each bending coefficient of table 9-1 where the beam bends most; the beam formula of 1914; creep."""
    rows = table("beam_deflection_coefficients.csv")
    yield from (_coefficient(row) for row in rows if row["load"] in LOADS and row["at"] != "load point")
    yield _record()


def _coefficient(row: Mapping[str, str]) -> Check:
    sag = float(Fraction(row["kb"]) * Fraction("98.0665"))
    return Check(
        sum="sag",
        given={**SHELF, "case": f"{LOADS[row['load']]}-{HELD[row['support']]}"},
        expect={"sag": sag, "sag_later": 2 * sag, "coefficient": float(Fraction(row["kb"]))},
        within={"sag": 1e-9, "sag_later": 1e-9, "coefficient": 1e-12},
        source=f"{row['source']}, table 9-1; the double in the long run S09, note to table 22",
        basis=row["basis"],
        printed=row["kb"],
    )


def _record() -> Check:
    """E = P l³ / (4 D b h³): the deflection of a load at the middle, D = P l³ / (4 E b h³)."""
    deflection = 9.80665 * 1000**3 / (4 * 10000 * 120 * 10**3)
    return Check(
        sum="sag",
        given={**SHELF, "case": "centre-simple"},
        expect={"sag": deflection},
        within={"sag": 1e-9},
        source="S09, S. J. Record, The Mechanical Properties of Wood (1914)",
        basis="read",
        printed="E = P l^3/(4 D b h^3)",
    )
