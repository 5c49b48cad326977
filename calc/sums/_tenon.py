"""The working of tenon: by the rule of thirds or the chisel in hand: tenon, shoulders, haunch, mortise; its proof."""

from fractions import Fraction

from calc.declare import Values
from calc.errors import Refusal
from calc.show import fraction, plain
from calc.units import MM_PER_INCH

THIRD = Fraction(1, 3)
CHISELS = {
    "in": tuple(Fraction(size, 16) for size in (2, 3, 4, 5, 6, 8, 10, 12)),
    "mm": tuple(Fraction(size) for size in (3, 4, 5, 6, 8, 10, 12, 16, 20)),
}
"""Mortise chisels as they are sold, in their own unit: common practice."""


def work(
    thickness: Fraction,
    width: Fraction,
    into: Fraction,
    place: str,
    kind: str,
    chisel: Fraction | None,
    groove: Fraction | None,
    edge: Fraction,
    share: Fraction,
    extra: Fraction,
    between: Fraction | None,
) -> Values:
    """The thickness first, then what haunch and shoulders leave of the width, then how far it goes in."""
    tenon = thickness * THIRD if chisel is None else chisel
    if tenon >= thickness:
        raise Refusal("this chisel is as wide as the rail is thick", "choose a narrower one", "chisel")
    found = {**_across(width, place, edge if groove is None else groove), **_along(into, kind, share, extra)}
    return {
        **found,
        **_haunch(found, place, tenon, groove),
        "third": thickness * THIRD if chisel is None else None,
        "tenon": tenon,
        "shoulder": (thickness - tenon) / 2,
        "gauge_far": (thickness + tenon) / 2,
        "rail": None if between is None else between + 2 * found["length"],
        "area": 2 * found["tenon_width"] * min(found["length"], found["mortise"]),
        "chisels": tuple(_chisel(thickness, unit) for unit in CHISELS),
    }


def _across(width: Fraction, place: str, inner: Fraction) -> Values:
    """From the rail's outer edge: the haunch or a shoulder, the tenon, the shoulder at the inner edge."""
    outer = width * THIRD if place == "corner" else inner
    if outer + inner >= width:
        taken = "haunch and shoulder" if place == "corner" else "both shoulders"
        raise Refusal(f"{taken} take the whole of this rail", "give a wider rail, or less shoulder or groove", "width")
    return {
        "mortise_from": outer,
        "mortise_to": width - inner,
        "inner": inner,
        "tenon_width": width - inner - outer,
    }


def _along(into: Fraction, kind: str, share: Fraction, extra: Fraction) -> Values:
    deep, beyond = (Fraction(1), extra) if kind == "through" else (share, -extra)
    if into * deep + beyond <= 0:
        raise Refusal("this leaves no tenon in so narrow a stile", "give less room at the bottom", "extra")
    return {"deep": deep, "beyond": beyond, "mortise": into * deep, "length": into * deep + beyond}


def _haunch(found: Values, place: str, tenon: Fraction, groove: Fraction | None) -> Values:
    """The haunch at a corner: its width was left for it, its length fills the groove, which any tenon must leave."""
    long = tenon if groove is None else groove
    if place != "corner":
        if groove is not None and groove >= found["length"]:
            say = "the tenon would not come out of the panel's groove"
            raise Refusal(say, "give a wider stile, or a shallower groove", "into")
        return {"haunch_width": None, "haunch_long": None}
    if long >= found["length"]:
        raise Refusal("the haunch would be as long as the tenon", "give a wider stile, or a shallower groove", "into")
    return {"haunch_width": found["mortise_from"], "haunch_long": long}


def _chisel(thickness: Fraction, unit: str) -> Values:
    """The chisel on sale nearest a third of the stock, and the tenon it makes."""
    mm = MM_PER_INCH if unit == "in" else Fraction(1)
    size = min(CHISELS[unit], key=lambda one: abs(one * mm - thickness * THIRD))
    name = f"{fraction(size)} in" if unit == "in" else f"{plain(size)} mm"
    return {"chisel": name, "shoulder": (thickness - size * mm) / 2, "part": 100 * size * mm / thickness}


def proof(v: Values) -> dict[str, float]:
    """Shoulders and tenon make up the rail both ways, and the frame closes."""
    width, thickness = float(v["width"]), float(v["thickness"])
    left = v["rail"] - 2 * v["length"] - v["between"] if v["rail"] is not None else 0
    wood = v["tenon_width"] * v["tenon"] + 2 * v["shoulder"] * v["width"]
    rest = (v["mortise_from"] + v["inner"]) * v["tenon"]
    return {
        "the end of the rail is the tenon, two cheeks, and what haunch and shoulders take of the middle": float(
            wood + rest
        )
        / (width * thickness)
        - 1,
        "mortise, haunch and shoulder make up the rail's width": float(v["mortise_to"] + v["inner"] - v["width"])
        / width,
        "both gauge lines stand alike from both faces": float(v["gauge_far"] + v["shoulder"] - v["thickness"])
        / thickness,
        "the rail less its tenons is the frame's inside": float(left) / width,
    }
