"""Hinge-strip: the fixed strip at the top of a sloping lid, the kerf, and the moving lid that is left.

The lid is glued up whole, its back end bevelled to meet the back; then the strip is sawn off its top, so that the grain
runs through. The hinge lies opened flat over the kerf, its leaves let into the upper faces by half the knuckle, which
puts the pin level with the faces, over the middle of the kerf.
"""

import math
from fractions import Fraction
from typing import Any

from calc import show, trig
from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum, Values
from calc.errors import Refusal
from calc.kinds import Angle, Length, Limit, Number
from calc.sums._hinge_figure import section

HEAD = Fraction(3, 2)
"""Diameters from a nail's middle to clear of its head: heads are about two and a half diameters across."""


def work(
    leaf: Fraction,
    knuckle: Fraction,
    angle: Any,
    length: Any,
    thickness: Fraction,
    kerf: Fraction,
    nail: Any,
    edge: Fraction,
    strip: Any,
) -> Values:
    """From the kerf back: the leaf, half a nail head, the nail's edge distance, and what the bevel takes away below."""
    bevel = thickness * trig.tan(angle)
    cover, nail_line = leaf - kerf / 2, edge * nail + bevel
    least = nail_line + max(cover + HEAD * nail, edge * nail)
    upper = least if strip is None else strip
    gain = knuckle / 2
    found = {"strip": upper, "strip_under": upper - bevel, "moving": length - upper - kerf, "gain": gain}
    _refuse(found, cover, length, thickness, 2 * edge * nail)
    return {**found, "least": least, "cover": cover, "nail_line": nail_line, "bevel": bevel}


def _refuse(found: Values, cover: Any, length: Any, thickness: Any, room: Any) -> None:
    short, strip = cover - found["moving"], found["strip"]
    if cover > strip:
        say = "the leaf is wider than this strip"
        raise Refusal(say, f"give {_mm(cover)} or more, or choose a hinge with narrower leaves", "strip")
    if found["strip_under"] < room:
        say = "the under face of this strip has no place for a nail with its edge distance on both sides"
        raise Refusal(say, f"give {_mm(strip - found['strip_under'] + room)} or more", "strip")
    if short >= 0:
        say = f"with a strip of {_mm(strip)} off it, this lid is too short to carry the hinge"
        raise Refusal(say, f"give more than {_mm(length + short)}, or a narrower hinge", "length")
    if found["gain"] >= thickness:
        raise Refusal("half this knuckle is as deep as the lid is thick", "choose a smaller hinge", "knuckle")


def _mm(size: Any) -> str:
    return f"{show.plain(Fraction(math.ceil(size * 10), 10), 1)} mm"


def proof(v: Values) -> dict[str, float]:
    """By coordinates: the back end of the strip stands plumb, the nail has its wood, the parts make the whole."""
    sine, cosine = float(trig.sin(v["angle"])), float(trig.cos(v["angle"]))
    low = {name: v[name] * cosine - v["thickness"] * sine for name in ("strip", "nail_line")}
    whole = float(v["length"])
    return {
        "the back end stands plumb": float(low["strip"] - v["strip_under"] * cosine) / whole,
        "below, the nail keeps its distance from the back": float(low["nail_line"] / cosine - v["edge"] * v["nail"])
        / whole,
        "strip, kerf and moving lid make the lid": float(v["strip"] + v["kerf"] + v["moving"]) / whole - 1,
    }


SUM = Sum(
    id="hinge-strip",
    title="Hinge strip",
    moment="fit",
    question="How wide is the strip that stays, and what is left of the lid?",
    asks=(
        "how wide is the hinge strip",
        "fixed strip of a sloping lid",
        "where to saw the lid",
        "moving lid after the kerf",
        "leaf of a hinge let into the strip",
        "gain for a hinge",
        "hinge on a sloping box",
    ),
    purpose="The strip that stays nailed at the top of a sloping lid, wide enough for the hinge leaf and a line of "
    "nails; the moving lid that is left after the saw; how deep the hinge is let in.",
    givens=(
        Length(
            name="leaf",
            label="Hinge leaf",
            help="From the middle of the pin to the edge of one leaf: half the open width.",
            limit=Limit("5 mm", "150 mm"),
        ),
        Length(
            name="knuckle",
            label="Knuckle",
            help="The thickness of the hinge's barrel, across the pin.",
            limit=Limit("1 mm", "30 mm"),
        ),
        Angle(
            name="angle",
            label="Slope of the lid",
            help="The slope from level, in degrees or as 1 in 7; the back end is bevelled to the same angle.",
            limit=Limit("0", "60"),
        ),
        Length(
            name="length",
            label="Lid along the slope",
            help="The whole lid before the strip is sawn off, measured down the slope on the upper face.",
            limit=Limit("20 mm", "2 m"),
        ),
        Length(
            name="thickness", label="Lid thickness", help="Measured square to the face.", limit=Limit("3 mm", "60 mm")
        ),
        Length(
            name="kerf",
            label="Kerf",
            help="What the saw takes, and what cleaning up both sawn edges takes with it.",
            default="1.5 mm",
            default_why="a back saw with its set; try yours in scrap",
            limit=Limit("0 mm", "6 mm"),
        ),
        Length(
            name="nail",
            label="Nail diameter",
            help="The shank of the nails that hold the strip.",
            default="2 mm",
            default_why="a nail fine enough for a small box",
            limit=Limit("0.5 mm", "6 mm"),
        ),
        Number(
            name="edge",
            label="Edge distance in diameters",
            help="Nail diameters from the middle of the nail to the nearest edge of the strip.",
            default="5",
            default_why="5 diameters without a pre-bored hole, 3 are enough with one; dense wood wants 7",
            limit=Limit("2", "20"),
        ),
        Length(
            name="strip",
            label="Fixed strip, upper face",
            help="Leave empty to have it answered, or give the width you have settled on.",
            optional=True,
            limit=Limit("5 mm", "500 mm"),
        ),
    ),
    answers=(
        Answer(name="strip", label="Fixed strip, upper face", kind="length", help="The least, unless you give it."),
        Answer(name="strip_under", label="Fixed strip, under face", kind="length", help="Less, by the back bevel."),
        Answer(name="moving", label="Moving lid along the slope", kind="length", help="The same on both faces."),
        Answer(name="gain", label="Gain depth", kind="fine", help="How deep each leaf is let in at the kerf."),
        Answer(name="nail_line", label="Nail line from the back", kind="length", help="On the upper face."),
        Answer(name="cover", label="Leaf on the strip", kind="length", help="How far the leaf reaches from the cut."),
        Answer(name="bevel", label="Taken by the back bevel", kind="length"),
        Answer(name="least", label="Least strip for leaf and nails", kind="length", help="Measured on the upper face."),
    ),
    work=work,
    formulas=(
        Formula("bevel", "thickness * tan(angle)", "upper face longer than under face"),
        Formula("cover", "leaf - kerf / 2", "the pin stands over the middle of the kerf"),
        Formula(
            "nail_line", "edge * nail + bevel", "the edge distance counts on the under face, where the wood is less"
        ),
        Formula(
            "least",
            "nail_line + max(cover + 1.5 * nail, edge * nail)",
            "one and a half diameters keep the nail's head off the leaf",
        ),
        Formula("strip_under", "strip - bevel"),
        Formula("moving", "length - strip - kerf"),
        Formula("gain", "knuckle / 2"),
    ),
    proof=proof,
    figure=section,
    sources=(
        Source("W. Noyes, Handwork in Wood (1910)", "butt hinges", "read", "Gain depth is half the knuckle."),
        Source(
            "LVL Handbook Europe (2025)",
            "table 5.1, restating EN 1995-1-1 table 8.2",
            "read",
            "Unloaded edge: 5 diameters, 7 in denser wood, 3 in a pre-bored hole.",
        ),
        Source(
            "common practice",
            "",
            "common practice",
            "The head's one and a half diameters; strip sawn off the whole lid.",
        ),
    ),
    limits_of="For hinges opened flat over the kerf, their leaves let into the upper faces. Butts let into the sawn "
    "edges need no room on the strip. The cut between strip and lid is square to the face.",
    cautions=(
        Caution(
            "This strip is narrower than leaf and nails together want: nails land under the leaf or too near the back. "
            "Nail it clear of the hinges, and pre-bore.",
            lambda v: v["strip"] < v["least"],
            "common practice",
        ),
        Caution(
            "Half this knuckle is more than half the lid's thickness: the wood left under the hinge is thin.",
            lambda v: v["gain"] * 2 > v["thickness"],
            "common practice",
        ),
        Caution(
            "Keep fingers clear of the lid's swing, and fit a chain or stop if it does not stay open by itself.",
            None,
            "common practice",
        ),
    ),
    example=Example(
        {"leaf": "14 mm", "knuckle": "5 mm", "angle": "1 in 3", "length": "200 mm", "thickness": "16 mm"},
        "The comment-card box for the reading room has a lid of 16 mm ash, falling 1 in 3, on two small brass hinges.",
    ),
    carry_on=(
        Carry("bevel", {"angle": "angle"}, "Set a bevel gauge for the back bevel"),
        Carry("slope", {"angle": "angle"}, "See the slope as rise and run"),
    ),
)
