"""What a sloping-lid box must satisfy, by another road than its formulas."""

import math

from calc.declare import Values


def proof(v: Values) -> dict[str, float]:
    """Walked round by coordinates, never by the formulas: the lid, the front, the batten on its swing, the inside."""
    c, s = math.cos(math.radians(float(v["angle"]))), math.sin(math.radians(float(v["angle"])))
    size = float(v["lid_long"])
    toe = float(v["lid_under"]) * c, float(v["back_height"] - v["lid_under"] * s)
    heel = toe[0] + float(v["lid_thickness"]) * s - size * c, toe[1] + float(v["lid_thickness"]) * c + size * s
    crown = float(v["back_high"] - v["tail"] - v["crest"])
    face, inner = float(v["depth"] + v["proud"]), float(v["depth"] - v["rabbet"])
    under = [(float(v["back_height"]) - y) * c - x * s for x, y in _lid_line(v, face, inner)]
    return {
        "down the under face, square up, and back up the upper face ends at the back": heel[0] / size,
        "there the back rises by its crest": (heel[1] - crown) / size,
        "the lid hangs over the front by its overhang": (toe[0] - face - float(v["front_overhang"])) / size,
        "the tops of side and front touch the lid": max(map(abs, under)) / size,
        "strip, kerf and moving lid make the lid": float(v["strip"] + v["kerf"] + v["moving"]) / size - 1,
        "the batten swings past the front by its clearance": _swing(v, c, s, inner) / size,
    }


def _lid_line(v: Values, face: float, inner: float) -> list[tuple[float, float]]:
    """The corners that the lid's under face lies on."""
    tops = (float(v["depth"]), v["front_height"]), (face, v["front_outer"]), (inner, v["front_inner"])
    return [(x, float(y)) for x, y in tops]


def _swing(v: Values, c: float, s: float, inner: float) -> float:
    """How much nearer the pin the batten's corner swings than the front's inner arris stands, less its clearance."""
    deep = float(v["lid_thickness"] + v["batten_thickness"])
    crown = float(v["back_high"] - v["tail"] - v["crest"])
    along = float(v["strip"] + v["kerf"] / 2)
    pin = along * c, crown - along * s
    end = float(v["strip"] + v["kerf"] + v["clearance"] + v["batten_long"])
    corner = end * c - deep * s, crown - end * s - deep * c
    return math.dist(pin, (inner, float(v["front_inner"]))) - math.dist(pin, corner) - float(v["clearance"])
