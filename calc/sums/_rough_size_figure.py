"""The finished part inside the rough one, on the face and on the end."""

from calc.declare import Values
from calc.drawing.figure import Figure


def figure(v: Values) -> Figure:
    """The face below, the end above it to the same scale; what comes off is outside the dark lines."""
    drawing = Figure(
        "Rough and finished", "A part inside the rough piece it is cut from, seen on the face and the edge."
    )
    long, wide, thick = (float(v[f"rough_{way}"]) for way in ("length", "width", "thickness"))
    gap = max(0.35 * wide, 0.14 * long)
    _inside(drawing, (0.0, 0.0), (long, wide), (float(v["end"]), float(v["edge"])))
    _inside(drawing, (0.0, wide + gap), (long, thick), (float(v["end"]), float(v["face"])))
    end, edge = float(v["end"]), float(v["edge"])
    drawing.dimension((0, 0), (long, 0), "end", v["rough_length"], away=-44)
    drawing.dimension((end, 0), (long - end, 0), "length", v["length"], away=-20)
    drawing.dimension((long, 0), (long, wide), "edge", v["rough_width"], away=-46)
    drawing.dimension((long, edge), (long, wide - edge), "width", v["width"], away=-20)
    drawing.dimension((0, wide + gap), (0, wide + gap + thick), "face", v["rough_thickness"], away=22)
    return drawing


def _inside(drawing: Figure, corner: tuple[float, float], size: tuple[float, float], off: tuple[float, float]) -> None:
    """A finished outline inside a rough one."""
    (x, y), (long, high), (end, side) = corner, size, off
    drawing.outline([(x, y), (x + long, y), (x + long, y + high), (x, y + high)], "ghost")
    part = [
        (x + end, y + side),
        (x + long - end, y + side),
        (x + long - end, y + high - side),
        (x + end, y + high - side),
    ]
    drawing.outline(part)
    drawing.grain(part)
