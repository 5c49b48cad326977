"""The working of splay: the angles of leaning sides, the size of each part, and the proof by plane normals."""

import math
from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.sums._either import by_angle

STEEPEST = 80
"""Degrees of lean past which the sides are all but a floor."""


def work(
    sides: int,
    joint: str,
    size: Any,
    other: Any,
    lean: Any,
    rise: Any,
    run: Any,
    height: Any,
    slant: Any,
    thickness: Any,
) -> Values:
    """The angles from lean and number of sides; the sizes from where planes of the faces meet."""
    _four(sides, joint, other)
    tilt = lean if by_angle("lean", lean, rise, run) else trig.atan(run / rise)
    if tilt > STEEPEST:
        raise Refusal("the sides lean too far to be worked as boards", f"lean them {STEEPEST}° or less", "run")
    upright = slant * trig.cos(tilt) if height is None else height
    sizes = {
        "lean": tilt,
        "height": upright,
        "slant": upright / trig.cos(tilt) if slant is None else slant,
        "spread": upright * trig.tan(tilt),
        "wall": thickness / trig.cos(tilt),
    }
    half = Fraction(180, sides)
    return {
        **sizes,
        **_angles(tilt, half, joint),
        "blank_width": sizes["slant"] + thickness * trig.tan(tilt),
        "top_size": size + 2 * sizes["spread"] * trig.tan(half),
        "parts": _parts(sides, joint, size, other or size, sizes["spread"], sizes["wall"]),
    }


def _four(sides: int, joint: str, other: Any) -> None:
    if sides != 4 and joint == "butt":
        raise Refusal("butted corners are worked out for four sides only", "choose mitre, or 4 sides", "joint")
    if sides != 4 and other is not None:
        raise Refusal("only four sides can be of two lengths", "leave this empty, or choose 4 sides", "other")


def _angles(tilt: Any, half: Fraction, joint: str) -> Values:
    sin, cos = trig.sin(tilt), trig.cos(tilt)
    bevel = trig.asin(cos * trig.sin(half)) if tilt else half
    mitre = {"mitre_bevel": bevel, "mitre_mark": trig.atan(cos * trig.tan(half)) if tilt else half}
    butt = {"butt_bevel": trig.asin(sin**2), "butt_mark": trig.atan(sin * trig.tan(tilt))}
    return {
        "face_cut": trig.atan(sin * trig.tan(half)),
        "dihedral": 180 - 2 * bevel,
        "level_bevel": tilt,
        **dict.fromkeys((*mitre, *butt)),
        **(mitre if joint == "mitre" else butt),
    }


def _parts(sides: int, joint: str, size: Any, other: Any, spread: Any, wall: Any) -> tuple[Values, ...]:
    """The four edges of each kind of side: on its outer and inner face, along the top and along the bottom."""
    if joint == "butt":
        return (
            _part("Side between the others", 2, size, 0, spread),
            _part("Side over their ends", 2, other + 2 * wall, 0, spread),
        )
    out, lean = wall * trig.tan(Fraction(180, sides)), spread * trig.tan(Fraction(180, sides))
    if size == other:
        return (_part("Side", sides, size, out, lean),)
    return _part("Side, first pair", 2, size, out, lean), _part("Side, second pair", 2, other, out, lean)


def _part(name: str, count: int, inside: Any, out: Any, lean: Any) -> Values:
    return {
        "part": name,
        "count": count,
        "outside_top": inside + 2 * out + 2 * lean,
        "outside_bottom": inside + 2 * out,
        "inside_top": inside + 2 * lean,
        "inside_bottom": inside,
    }


def proof(v: Values) -> dict[str, float]:
    """Two neighbouring faces as planes: their normals, and the planes sawn along, give the same angles."""
    lean, half = math.radians(v["lean"]), math.pi / v["sides"]
    across = math.cos(lean) ** 2 * math.cos(2 * half) + math.sin(lean) ** 2
    face, part = math.radians(v["face_cut"]), v["parts"][0]
    slopes = float(part["inside_top"] - part["inside_bottom"]) / 2 / float(v["slant"])
    found = {
        "the normals of two neighbouring faces": math.cos(math.radians(v["dihedral"])) + across,
        "half of what a side gains from bottom to top is the slant times the tangent of the face cut": (
            slopes - math.tan(face)
        ),
        "height and spread are the legs of the slant": math.hypot(v["height"], v["spread"]) / float(v["slant"]) - 1,
    }
    return found | (_mitre_proof(v, face, half) if v["mitre_bevel"] is not None else _butt_proof(v, face, lean))


def _mitre_proof(v: Values, face: float, half: float) -> dict[str, float]:
    bevel, mark = math.radians(v["mitre_bevel"]), math.radians(v["mitre_mark"])
    return {
        "the mitre's plane turns by 180/n along the side": math.cos(bevel) * math.cos(face) - math.cos(half),
        "face line, edge line and bevel lie in one plane": math.tan(bevel) - math.tan(mark) * math.cos(face),
    }


def _butt_proof(v: Values, face: float, lean: float) -> dict[str, float]:
    bevel, mark = math.radians(v["butt_bevel"]), math.radians(v["butt_mark"])
    return {
        "the end's plane leans as the side it meets": math.cos(bevel) * math.cos(face) - math.cos(lean),
        "face line, edge line and bevel lie in one plane": math.tan(bevel) - math.tan(mark) * math.cos(face),
    }
