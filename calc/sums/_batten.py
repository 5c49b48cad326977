"""A batten across a lid: how long it may be and still swing past the front, its section, nail and oval holes."""

from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.discover import find
from calc.errors import Refusal
from calc.show import plain
from calc.sums._swing import to_arris, turns_past

WAYS = {"either": (2, "both ways"), "swells": (1, "away from the fast one"), "shrinks": (1, "towards the fast one")}
NAIL = ("nail", "length", "into", "left", "diameter", "hole", "drill", "thickness_from")
NO_NAIL = {**dict.fromkeys(NAIL), "nail": "none of this kind stays inside"}
Row = dict[str, Any]


def work(width: Fraction, thickness: Fraction, near: Fraction, far: Fraction | None, **more: Any) -> Values:
    """The section first, then the length that clears the front, then what holds it."""
    _midmost(more["count"], more["fast"])
    thick = thickness if more["batten_thickness"] is None else more["batten_thickness"]
    wide = 2 * thick if more["batten_width"] is None else more["batten_width"]
    past = _front(width, thickness, thick, more)
    clear = near if far is None and past["reaches"] is None else max(far or 0, width - (past["reaches"] or width))
    long = width - near - clear
    if long < max(wide, 2 * more["end"]):
        say = f"this leaves a batten of {plain(max(0.0, float(long)), 1)} mm, less than its width or its nails want"
        raise Refusal(say, "give a wider lid, or less kept clear", "width" if more["front"] is None else "front")
    nail = _nail(thick, thickness, more)
    shank = nail["diameter"] if more["own_shank"] is None else more["own_shank"]
    if more["own_shank"] is not None:
        nail = {**nail, "thickness_from": "measured by you"}
    found = {"long": long, "batten_thickness": thick, "batten_width": wide, "far": clear, **past, "shank": shank}
    told = {("nail_length" if name == "length" else name): value for name, value in nail.items() if name != "diameter"}
    return {**found, **told, **_holes(width, long, shank, **more)}


def _midmost(count: int, fast: str) -> None:
    """Refuse a fast nail in the middle where no nail stands there."""
    if fast == "middle" and count % 2 == 0:
        instead = f"give {count - 1 if count > 2 else count + 1}, or make the nail at the hinge end the fast one"
        raise Refusal(f"of {count} nails none is in the middle", instead, "count")


def _front(width: Fraction, lid: Fraction, thick: Fraction, more: Values) -> Values:
    """What the front of the box allows; blanks where none is given."""
    if more["front"] is None:
        return {"swing": None, "reaches": None}
    if more["front"] >= width:
        raise Refusal("the front stands beyond the end of the lid", f"give less than {plain(width, 1)} mm", "front")
    away = more["front"] + more["kerf"] / 2
    swing = to_arris(away, lid)
    return {"swing": swing, "reaches": turns_past(swing, away, lid, thick, more["clearance"]) - more["kerf"] / 2}


def _nail(held: Fraction, second: Fraction, more: Values) -> Values:
    """The nail by the sum of that name, through the batten into the lid; where none stays inside, that is said."""
    try:
        found = find("nail").of(held=held, second=second, kind=more["kind"], wood=more["wood"], margin=more["margin"])
    except Refusal:
        return NO_NAIL
    return {name: found[name] for name in NAIL}


def _holes(
    width: Fraction, long: Any, shank: Any, end: Fraction, count: int, fast: str, way: str, **more: Any
) -> Values:
    """A row for each nail: its mark, how far the lid moves there, and how long its hole must be."""
    step = (long - 2 * end) / (count - 1)
    held = count // 2 if fast == "middle" else 0
    share, times = more["movement"], WAYS[way][0]
    rows: list[Row] = []
    for at in range(count):
        moves = None if share is None else share * abs(at - held) * step / width
        hole = None if moves is None or shank is None else shank + times * moves
        grows = "round, fast" if at == held else None if share is None else WAYS[way][1]
        rows.append({"hole": at + 1, "mark": end + at * step, "moves": moves, "oval": hole, "grows": grows})
    most = max((row["moves"] for row in rows if row["moves"] is not None), default=None)
    return {
        "holes": rows,
        "spacing": step,
        "moves": most,
        "oval": None if most is None or shank is None else shank + times * most,
        "times": None if most is None else times,
    }


def proof(v: Values) -> dict[str, float]:
    """The parts make up the lid, the marks end where they began, the corner turns past the front."""
    wide, long, marks = float(v["width"]), float(v["long"]), v["holes"]
    told = {
        "batten and what is kept clear make up the lid": float(v["long"] + v["near"] + v["far"]) / wide - 1,
        "the last nail is as far from its end as the first": float(marks[0]["mark"] + marks[-1]["mark"]) / long - 1,
    }
    if v["swing"] is not None:
        corner = float(v["near"] + v["long"] + v["kerf"] / 2) ** 2 + float(v["thickness"] + v["batten_thickness"]) ** 2
        told["its lower corner turns past the front"] = (
            max(0.0, corner**0.5 - float(v["swing"] - v["clearance"])) / wide
        )
    if v["moves"] is not None and v["movement"]:
        spread = marks[-1]["mark"] - marks[0]["mark"]
        between = float((marks[-1]["moves"] + marks[0]["moves"]) / v["movement"])
        told["between the end nails the lid moves by its share"] = between - float(spread) / wide
    return told
