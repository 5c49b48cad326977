"""The working of screw: thickness by its number, holes by its root, length by what must be in the wood."""

from fractions import Fraction
from typing import Any

from calc import tables
from calc.declare import Values
from calc.errors import Refusal
from calc.show import plain
from calc.sums import _drills
from calc.tables import CHECK
from calc.units import MM_PER_INCH

LENGTHS = tuple(
    Fraction(n, part) * MM_PER_INCH
    for part, some in ((8, range(2, 9)), (4, range(5, 13)), (2, range(7, 13)))
    for n in some
)
"""Lengths sold, in millimetres: by 1/8 in to 1 in, by 1/4 in to 3 in, by 1/2 in to 6 in. Common practice."""
SLIPS = Fraction(1, 5)
"""Millimetres that a clearance hole is wider than the screw, at least, so that it slips through: common practice."""
SUNK = Fraction("0.58")
"""Thicknesses that a countersunk head, twice as wide as the screw, is deep at 82°: common practice."""
SOLD = (3, 18)
"""Thicknesses that screws are long, from the shortest to the longest as most are sold: common practice."""
PRINTED = {"wood_screw_diameter_1916": "screw_gauge", "wood_screw_diameter_wood_handbook": "screw_number"}
"""Other tables of thickness, and what each calls the number."""


def rule(name: str) -> Fraction:
    """A rule for screws from the table, as a plain number."""
    return tables.figure(next(row for row in tables.rows("screw_rules") if row["id"] == name)).value


def by_number(number: int) -> Fraction:
    """The thickness of the plain part in millimetres: 0.060 in, and 0.013 in for each number."""
    return (rule("screw_number") + number * rule("screw_step")) * MM_PER_INCH


def work(
    number: int | None,
    own: Fraction | None,
    held: Fraction,
    second: Fraction | None,
    measured: Fraction | None,
    margin: Fraction,
) -> Values:
    """Thickness first, then the root, the three holes, and the length that puts thread enough in the second piece."""
    thick = own if own is not None else by_number(number or 0)
    if measured is not None and measured >= thick:
        raise Refusal("the root is thicker than the plain part", "measure between the threads", "measured")
    root = measured if measured is not None else rule("screw_root") * thick
    soft, hard = (rule(f"screw_lead_hole_{wood}wood") * root for wood in ("soft", "hard"))
    (soft_drill, soft_size), (hard_drill, hard_size) = _drills.under(soft), _drills.under(hard)
    clear, clear_size = _drills.over(thick + SLIPS, "own")
    return {
        "diameter": thick,
        "root": root,
        "root_ratio": None if measured is not None else 100 * rule("screw_root"),
        "root_from": "measured by you" if measured is not None else f"two thirds of the plain part, {CHECK}",
        "pilot_soft": soft,
        "soft_drill": soft_drill,
        "soft_size": soft_size,
        "pilot_hard": hard,
        "hard_drill": hard_drill,
        "hard_size": hard_size,
        "clear_drill": clear,
        "clear_size": clear_size,
        "head": 2 * thick,
        "others": _others(number, thick) if number is not None else None,
        **_long(thick, held, second, margin),
    }


def _long(thick: Fraction, held: Fraction, second: Fraction | None, margin: Fraction) -> Values:
    """The shortest length that grips as it should and stays inside; else the longest that stays inside."""
    grip, share = rule("screw_penetration") * thick, rule("screw_thread")
    wanted, room = max(held + grip, grip / share), None if second is None else held + second - margin
    fits = [size for size in LENGTHS if size > held and (room is None or size <= room)]
    if not fits:
        raise Refusal(f"no length sold is longer than {plain(held, 1)} mm and stays inside", *_instead(room, held))
    long = next((size for size in fits if size >= wanted), fits[-1])
    return {
        "length": long,
        "wanted": wanted,
        "room": room,
        "thread": share * long,
        "into": long - held,
        "gripping": min(long - held, share * long),
        "gripped": min(long - held, share * long) / thick,
        "left": None if room is None else room + margin - long,
    }


def _instead(room: Fraction | None, held: Fraction) -> tuple[str, str]:
    if room is not None and room <= held:
        return "leave less beyond the point", "margin"
    return "choose a deeper second piece, or leave less beyond the point", "second"


def _others(number: int, thick: Fraction) -> list[dict[str, Any]] | None:
    """What other tables print for the same number, and how they differ from the rule."""
    found = [
        _other(tables.figure(row, *column), thick)
        for name, key in PRINTED.items()
        for row in tables.rows(name)
        if row[key] == str(number)
        for column in [("diameter_in", MM_PER_INCH) if "diameter_in" in row else ("shank_diameter_mm", 1)]
    ]
    return found or None


def _other(printed: tables.Figure, thick: Fraction) -> dict[str, Any]:
    apart = printed.value - thick
    word = "thinner" if apart < 0 else "thicker"
    told = f"{plain(abs(apart), 2)} mm {word}" if abs(apart) >= Fraction(5, 1000) else "the same to 0.01 mm"
    return {"table": tables.work(printed.source), "printed": printed.value, "differs": told}


def proof(v: Values) -> dict[str, float]:
    """Parts make up the screw; hard wood's hole is to soft wood's as nine to seven; drills keep their side."""
    plain_part = v["length"] - v["thread"]
    return {
        "plain part and thread make the screw, two to one": float((v["thread"] - 2 * plain_part) / v["length"]),
        "held and second make the screw": float((v["held"] + v["into"] - v["length"]) / v["length"]),
        "the holes are as nine to seven": float(7 * v["pilot_hard"] - 9 * v["pilot_soft"]) / float(v["root"]),
        "no pilot drill is thicker than its hole": max(
            0.0, float(v["soft_size"] - v["pilot_soft"]), float(v["hard_size"] - v["pilot_hard"])
        ),
        "the screw slips through its clearance hole": max(0.0, float(v["diameter"] + SLIPS - v["clear_size"])),
        "the point stays inside": max(0.0, float(v["margin"] - v["left"])) if v["left"] is not None else 0.0,
    }
