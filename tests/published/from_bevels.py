"""Chords, sines and pitches, as checks of bevel."""

import re
from collections.abc import Iterator

from published import Check, table

PITCH = re.compile(r"rise (\d+) in 12")
PAIR = re.compile(r"([\d.]+) deg = atan\(b/a\)")


def checks() -> Iterator[Check]:
    """Chords of n equal parts, sines as half-chords, angles of printed pairs, and pairs of printed pitches."""
    yield from (_chord(row) for row in table("chord_per_radius.csv") if int(row["divisions"]) > 4)
    yield from (
        _half_chord(row)
        for row in table("trig_table_griffith1916.csv")
        if row["function"] == "sin" and row["angle_deg"] != "45"
    )
    yield from (_pair(row) for row in table("polygon_settings.csv") if PAIR.match(row["printed_decimal_or_angle"]))
    for row in table("slopes_and_pitches.csv"):
        if pitch := PITCH.fullmatch(row["item"]):
            yield _pitch(row, int(pitch[1]))


def _chord(row: dict[str, str]) -> Check:
    angle = f"{360 / int(row['divisions']):.12f}"
    return Check(
        sum="bevel",
        given={"angle": angle, "radius": "1 in"},
        expect={"chord": row["chord_per_radius"]},
        unit={"chord": "in"},
        source=row["source"],
        basis=row["basis"],
        note=f"{row['divisions']} parts",
    )


def _half_chord(row: dict[str, str]) -> Check:
    """The sine printed is half the chord of twice the angle, so the whole chord where the radius is 1/2."""
    return Check(
        sum="bevel",
        given={"angle": str(2 * int(row["angle_deg"])), "radius": "1/2 in"},
        expect={"chord": row["value"]},
        unit={"chord": "in"},
        source=row["source"],
        basis=row["basis"],
        note=f"sine of {row['angle_deg']} degrees",
    )


def _pair(row: dict[str, str]) -> Check:
    run, rise = row["printed"].split(" and ")
    angle = PAIR.match(row["printed_decimal_or_angle"])
    return Check(
        sum="bevel",
        given={"run": f"{run} in", "rise": f"{rise} in"},
        expect={"angle": angle[1] if angle else ""},
        source=row["source"],
        basis=f"{row['basis']} (pair) / computed (angle)",
        note=row["note"],
    )


def _pitch(row: dict[str, str], rise: int) -> Check:
    """Two marks a whole number of inches long are on any rule: the gauge is set with nothing left over."""
    return Check(
        sum="bevel",
        given={"run": "12 in", "rise": f"{rise} in", "longest": "24 in"},
        expect={"set_angle": row["value"], "error": 0, "drift": 0},
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
    )
