"""The drawing of price: where the money goes, a bar for each thing, all to one scale."""

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.show import decimal

STEP, BAR = 30.0, 16.0
LONG = 190.0
NAMES = {"work": "rate", "overheads": "overhead", "once for the batch": "once", "nails and screws": "nails"}


SHORT = {"once for the batch": "once", "nails and screws": "nails"}


def figure(v: Values) -> Figure:
    """A bar for every row of the cost of one, its amount at its end; the rest that the gain adds comes last."""
    bars = [(row["what"], row["each"]) for row in v["rows"]]
    bars += [("gain", v["gained"])] if v["gained"] else []
    drawing = Figure("What one costs", f"{len(bars)} bars, one for each thing that costs money, all to one scale.")
    most = max(float(money) for _, money in bars)
    for at, (what, money) in enumerate(bars):
        long, low = LONG * float(money) / most, -STEP * at
        drawing.outline([(0, low), (long, low), (long, low + BAR), (0, low + BAR)])
        drawing.note((0, low + BAR / 2), SHORT.get(what, what), "end", dx=-6, name=NAMES.get(what, what))
        drawing.note((long, low + BAR / 2), decimal(money, 2), "start", dx=6)
    foot = -STEP * len(bars)
    drawing.line((0, BAR + 4), (0, foot), "thin")
    drawing.note((0, foot), f"one: {decimal(v['each'], 2)}", "start", name="batch", dy=-8)
    return drawing
