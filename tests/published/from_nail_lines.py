"""Distances in diameters as the handbook prints them, each turned to the direction of load that wants the most."""

import re
from collections.abc import Iterator, Mapping

import numpy as np
import sympy
from published import Check, table

TURNS = np.radians(np.arange(0, 91))
PLACES = {
    "a1": ("along", "apart_by"),
    "a2": ("across", "apart_by"),
    "a3": ("along", "end_by"),
    "a4": ("along", "beside_by"),
}
THICKNESSES = {"d<5": "4.9 mm", "d>=5": "5 mm"}


def checks() -> Iterator[Check]:
    """A check for each printed row but the remembered ones, which are rules of another sort."""
    for row in table("ec5_nail_spacing.csv"):
        if row["basis"] == "read" and row["distance"][:2] in PLACES:
            yield _check(row)


def _check(row: Mapping[str, str]) -> Check:
    run, name = PLACES[row["distance"][:2]]
    bored = row["condition"].startswith("predrilled")
    given = {"hole": "bored" if bored else "none", "wood": "medium" if "denser" in row["condition"] else "light"}
    thick = next(
        (size for sign, size in THICKNESSES.items() if re.search(f"{sign}(?![0-9])|{sign}mm", row["condition"])), "3 mm"
    )
    return Check(
        sum="nail-line",
        given={**given, "line": "2 m", "own": thick, "run": run, "load": "no" if ",c" in row["distance"] else "yes"},
        expect={name: most(row["expression (multiple of d)"])},
        within={name: 1e-9},
        source=row["source"],
        basis=row["basis"],
        printed=row["expression (multiple of d)"],
        note=row["note"],
    )


def most(printed: str) -> float:
    """The greatest that a printed expression comes to, for a load at any whole degree to the grain."""
    plain = re.sub(r"\|(.*?)\|", r"Abs(\1)", re.sub(r"(cos|sin) a", r"\1(a)", printed))
    plain = re.sub(r"(\d)(?=[A-Za-z])", r"\1*", plain)
    turned = sympy.lambdify(sympy.Symbol("a"), sympy.sympify(plain), "numpy")
    return float(np.max(turned(TURNS) * np.ones_like(TURNS)))
