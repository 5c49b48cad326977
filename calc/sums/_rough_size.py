"""The working of rough-size: what every face, edge and end wants on top, and the list to buy by; its proof."""

import math
from fractions import Fraction

from calc.declare import Values
from calc.show import plain
from calc.sums._lumber import least, thicknesses


def work(
    length: Fraction,
    width: Fraction,
    thickness: Fraction,
    count: int,
    face: Fraction,
    edge: Fraction,
    end: Fraction,
    kerf: Fraction,
) -> Values:
    """The rough part, then all of them in one board, end to end or side by side, and what becomes shavings."""
    rough = (length + 2 * end, width + 2 * edge, thickness + 2 * face)
    long, wide, thick = rough
    quarters = least("hardwood", 0, thick)
    finished_volume, rough_volume = count * length * width * thickness, count * long * wide * thick
    return {
        "rough_length": long,
        "rough_width": wide,
        "rough_thickness": thick,
        "boards": " x ".join([str(count), *(f"{plain(size, 6)} mm" for size in (thick, wide, long))]),
        "quarters": quarters.name if quarters else None,
        "layers": None if quarters else _layers(thickness, face),
        "end_to_end": count * long + (count - 1) * kerf,
        "side_by_side": count * wide + (count - 1) * kerf,
        "finished_volume": finished_volume,
        "rough_volume": rough_volume,
        "kept": 100 * finished_volume / rough_volume,
    }


def _layers(thickness: Fraction, face: Fraction) -> int:
    """The fewest layers of the thickest board, each planed on both faces, that make a thickness."""
    return math.ceil(thickness / (thicknesses("hardwood")[-1].called[0] - 2 * face))


def proof(v: Values) -> dict[str, float]:
    """Planed back from both sides the rough part is the finished one; sawn one by one the parts use up the board."""
    trimmed = [
        v["rough_length"] - v["end"] - v["end"] - v["length"],
        v["rough_width"] - v["edge"] - v["edge"] - v["width"],
    ]
    trimmed.append(v["rough_thickness"] - v["face"] - v["face"] - v["thickness"])
    cuts = v["count"] - 1
    left = v["end_to_end"] - sum((v["rough_length"] + v["kerf"] for _ in range(cuts)), v["rough_length"])
    sides = [v["length"] / v["rough_length"], v["width"] / v["rough_width"], v["thickness"] / v["rough_thickness"]]
    return {
        "planed back from both sides it is the finished part": float(max(map(abs, trimmed)) / v["length"]),
        "sawn one by one they use up the board": float(left / v["end_to_end"]),
        "what is kept is what is kept each way": float(v["kept"] / 100 - sides[0] * sides[1] * sides[2]),
    }
