"""The section drawn for lid-opening: back, strip, the lid shut and as wide open as it goes, its chain or prop."""

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.sums._lid_opening import turned

Spot = tuple[float, float]


def figure(v: Values) -> Figure:
    """The pin in the middle, the back at its left, the lid shut dashed and the lid open in wood."""
    drawing = Figure(
        "Lid as wide open as it goes",
        "A section. The back stands at the left, a fixed strip slopes down from it to the hinge; the lid is drawn "
        f"shut with dashes, and open, where it meets {v['meets']}; a line shows its chain or prop.",
        tall=330,
    )
    _fixed(drawing, v)
    _lid(drawing, v)
    _tie(drawing, v)
    _sizes(drawing, v)
    return drawing


def _fixed(drawing: Figure, v: Values) -> None:
    slope, thick, kerf = v["angle"], float(v["thickness"]), float(v["kerf"])
    across, height = float(v["across"]), float(v["height"])
    foot = turned((float(v["reach"]), -thick), -slope)
    deep = float(v["behind"]) if v["behind"] else thick
    low = min(foot[1], -thick)
    back = [(-across - deep, low), (-across, low), (-across, height), (-across - deep, height)]
    drawing.outline(back)
    drawing.grain(back, 90)
    strip = [turned((-along, deep), -slope) for along, deep in _strip(v, thick)]
    drawing.outline(strip)
    drawing.hatch(strip)
    drawing.line(turned((-kerf / 2, -thick), -slope), foot, "thin")
    if v["behind"] is not None:
        drawing.line((-across - deep, low), (-across - deep, max(height, float(v["rises"]))), "accent")


def _strip(v: Values, thick: float) -> list[Spot]:
    """The fixed strip by how far up the slope from the pin and how far above the faces; its back end plumb."""
    kerf, whole = float(v["kerf"]) / 2, float(v["strip"] + v["kerf"] / 2)
    below = whole - thick * turned((1, 0), v["angle"])[1] / turned((1, 0), v["angle"])[0]
    return [(kerf, 0.0), (whole, 0.0), (max(below, kerf), -thick), (kerf, -thick)]


def lid(v: Values, opening: float) -> list[Spot]:
    """The moving lid's corners at an opening."""
    near, far, thick = float(v["kerf"]) / 2, float(v["reach"]), float(v["thickness"])
    return [
        turned(spot, opening - float(v["angle"])) for spot in ((near, 0.0), (far, 0.0), (far, -thick), (near, -thick))
    ]


def _lid(drawing: Figure, v: Values) -> None:
    drawing.outline(lid(v, 0), "ghost")
    open_ = lid(v, float(v["opening"]))
    drawing.outline(open_)
    drawing.hatch(open_)
    drawing.arc((0, 0), float(v["thickness"]) / 5, 0, 360, "accent")


def _tie(drawing: Figure, v: Values) -> None:
    start, place = -float(v["angle"]), (float(v["fix"]), -float(v["thickness"]))
    drawing.line(turned(place, start), turned(place, start + float(v["hold"])), "accent")
    if v["hold"] < v["opening"]:
        drawing.outline(lid(v, float(v["hold"])), "ghost")


def _sizes(drawing: Figure, v: Values) -> None:
    slope, thick, kerf = v["angle"], float(v["thickness"]), float(v["kerf"]) / 2
    outside = -float(v["across"]) - (float(v["behind"]) if v["behind"] else thick)

    def below(along: float) -> Spot:
        return turned((along, -thick), -slope)

    drawing.angle((0, 0), -slope, v["opening"] - slope, "hold", v["opening"], reach=40)
    drawing.dimension((outside, 0), (outside, float(v["height"])), "height", v["height"], away=16)
    drawing.dimension(below(0), below(float(v["fix"])), "fix", v["fix"], away=-16)
    drawing.dimension(below(kerf), below(float(v["reach"])), "length", v["length"], away=-44)
    if v["strip"]:
        drawing.dimension(below(-float(v["strip"]) - kerf), below(-kerf), "strip", v["strip"], away=-44)
