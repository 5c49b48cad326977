"""The working of legs: rake and splay as one lean along a sight line, the sizes that follow, and their proof."""

from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal

STEEPEST = 55
"""Degrees a leg may lean: a little over what the greatest rake and splay together give."""


def work(rake: Any, splay: Any, lean: Any, sight: Any, height: Any, seat: Any, thick: Any, holes: Any) -> Values:
    """The tangents of rake and splay first, from whichever two are given: they are the legs of a right triangle."""
    back, out = _tangents(rake, splay, lean, sight)
    along = trig.sqrt(back * back + out * out)
    found = trig.atan(along) if lean is None else lean
    if found > STEEPEST:
        raise Refusal("the leg would all but lie down", f"its whole lean must be {STEEPEST}° or less", "sight")
    turned = _sight(back, out, along) if sight is None else sight
    sizes = {
        "rake": trig.atan(back) if rake is None else rake,
        "splay": trig.atan(out) if splay is None else splay,
        "lean": found,
        "drill": 90 - found,
        "sight": turned,
        "sight_back": None if turned is None else 90 - turned,
    }
    lengths = _lengths(trig.cos(found), height, seat)
    return {**sizes, **lengths, **_feet(height, back, out, along, holes), **_ends(sizes, lengths, along, thick)}


def _tangents(rake: Any, splay: Any, lean: Any, sight: Any) -> tuple[Any, Any]:
    """The tangents of rake and splay."""
    if lean is not None and sight is not None:
        if not lean:
            raise Refusal("an upright leg has no sight line", "give it a lean, or give rake and splay", "sight")
        return trig.tan(lean) * trig.sin(sight), trig.tan(lean) * trig.cos(sight)
    if rake is not None and splay is not None:
        return trig.tan(rake), trig.tan(splay)
    name, leg = ("splay", splay) if rake is None else ("rake", rake)
    other = _by_lean(name, leg, lean) if sight is None else _by_sight(name, leg, sight)
    return (other, trig.tan(leg)) if rake is None else (trig.tan(leg), other)


def _by_lean(name: str, leg: Any, lean: Any) -> Any:
    if leg > lean:
        raise Refusal(f"the whole lean cannot be less than the {name}", f"give {name} or more", "lean")
    return trig.sqrt(trig.tan(lean) ** 2 - trig.tan(leg) ** 2) if leg < lean else 0


def _by_sight(name: str, leg: Any, sight: Any) -> Any:
    """The other tangent. A leg that leans along one line alone shows nothing in the view along that line."""
    blind, plain = (0, 90) if name == "rake" else (90, 0)
    if not leg or sight == blind:
        way = f"along the {blind}° line a leg has no {name}" if leg else f"a {name} of 0° does not say how far it leans"
        raise Refusal(f"{way}, so its lean stays open", "give rake and splay, or the whole lean and this", "sight")
    if sight == plain:
        return 0
    return trig.tan(leg) * (trig.tan(sight) if name == "splay" else 1 / trig.tan(sight))


def _sight(back: Any, out: Any, along: Any) -> Any:
    """Degrees from the line across to the way the leg leans; None for an upright leg, which has none."""
    if not back or not out:
        return (90 if back else 0) if along else None
    return trig.atan(back / out)


def _lengths(cosine: Any, height: Any, seat: Any) -> Values:
    return {"leg": height / cosine, "bore": seat / cosine, "whole": (height + seat) / cosine}


def _feet(height: Any, back: Any, out: Any, along: Any, holes: Any) -> Values:
    return {
        "out": height * out,
        "back": height * back,
        "foot": height * along,
        "feet": None if holes is None else holes + 2 * height * out,
    }


def _ends(angles: Values, lengths: Values, along: Any, thick: Any) -> Values:
    """How the shoulder and the foot are cut."""
    return {
        "front_line": angles["splay"],
        "side_line": angles["rake"],
        "drop": None if thick is None else thick * along,
        "blank": None if thick is None else lengths["whole"] + thick * along,
    }


def proof(v: Values) -> dict[str, float]:
    """The leg as an arrow in space, turned by its sight line and tipped by its lean, casts rake and splay."""
    level = trig.sin(v["lean"])
    arrow = (level * trig.cos(v["sight"] or 0), level * trig.sin(v["sight"] or 0), trig.cos(v["lean"]))
    seen = {"from the front it leans by the splay": ("splay", 0), "from the side it leans by the rake": ("rake", 1)}
    found = {
        say: float(arrow[at] * trig.cos(v[name]) - arrow[2] * trig.sin(v[name])) for say, (name, at) in seen.items()
    }
    corner = v["height"] ** 2 + v["out"] ** 2 + v["back"] ** 2
    return found | {
        "the leg is the diagonal of a box as high as the seat, as wide and as deep as the foot stands off": float(
            corner / v["leg"] ** 2 - 1
        ),
        "the tangents of both shoulder lines make up the tangent of the lean": float(
            trig.tan(v["front_line"]) ** 2 + trig.tan(v["side_line"]) ** 2 - trig.tan(v["lean"]) ** 2
        ),
    }
