"""The working of rabbet: its width and depth, the plane's settings, the lengths of both boards; proof and drawing."""

from fractions import Fraction

from calc.declare import Values
from calc.drawing.figure import Figure


def work(
    thickness: Fraction,
    let_in: Fraction,
    kept: Fraction,
    proud: Fraction,
    inside: Fraction | None,
    between: Fraction | None,
) -> Values:
    """The rabbet is as wide as the board let in, with what is planed off after; the share kept says how deep."""
    width, tongue = let_in + proud, thickness * kept
    depth = thickness - tongue
    return {
        "width": width,
        "depth": depth,
        "tongue": tongue,
        "shows": tongue,
        "fence": width,
        "stop": depth,
        "long": None if inside is None else inside + 2 * width,
        "outside_wide": None if inside is None else inside + 2 * let_in,
        "let_long": None if between is None else between + 2 * depth,
        "outside_deep": None if between is None else between + 2 * thickness,
    }


def proof(v: Values) -> dict[str, float]:
    """The corner in section: the wood taken out and the tongue are the whole; both ways of measuring the box agree."""
    corner = float(v["thickness"] * v["width"])
    found = {
        "rabbet and tongue fill the corner": float((v["depth"] + v["tongue"]) * v["width"]) / corner - 1,
        "the tongue is to the rabbet as what is kept to what is not": float(
            v["tongue"] * (1 - v["kept"]) - v["depth"] * v["kept"]
        )
        / float(v["thickness"]),
    }
    if v["inside"] is not None:
        over = v["long"] - v["outside_wide"] - 2 * v["proud"]
        found["the rabbeted board ends flush but for what is planed off"] = float(over) / float(v["long"])
    if v["between"] is not None:
        ends = v["outside_deep"] - v["let_long"] - 2 * v["tongue"]
        found["beyond the boards let in there are two tongues"] = float(ends) / float(v["outside_deep"])
    return found


def figure(v: Values) -> Figure:
    """The corner from above: the rabbeted board along the bottom, the board let in standing in it."""
    thick, inner, wide, tongue, proud = (float(v[name]) for name in ("thickness", "let_in", "width", "tongue", "proud"))
    far, high = wide + 1.6 * max(thick, inner), thick + 1.2 * max(thick, inner)
    drawing = Figure(
        "Rabbeted corner",
        "A corner from above: one board along the bottom with a rabbet at its end, another standing in the rabbet.",
    )
    drawing.outline([(0, 0), (far, 0), (far, thick), (wide, thick), (wide, tongue), (0, tongue)])
    drawing.grain([(0, 0), (far, 0), (far, tongue), (0, tongue)])
    drawing.grain([(wide, tongue), (far, tongue), (far, thick), (wide, thick)])
    board = [(proud, tongue), (wide, tongue), (wide, high), (proud, high)]
    drawing.outline(board)
    drawing.grain(board, 90)
    drawing.dimension((far, 0), (far, thick), "thickness", v["thickness"], away=-20)
    drawing.dimension((proud, high), (wide, high), "let_in", v["let_in"])
    drawing.dimension((0, 0), (wide, 0), "width", v["width"], away=-20)
    drawing.dimension((0, 0), (0, tongue), "kept", v["tongue"], away=18)
    drawing.dimension((0, tongue), (0, thick), "depth", v["depth"], away=46)
    return drawing
