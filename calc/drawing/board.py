"""The sheet a drawing stands on: its scale, its place, and where a point of the wood falls in ink."""

from dataclasses import dataclass

from calc.drawing.room import Room, about, spread
from calc.drawing.room import scale as fit

Spot = tuple[float, float]


@dataclass(frozen=True)
class Board:
    """The scale and place of a drawing: wood (millimetres, y up) to ink (pixels, y down)."""

    scale: float
    left: float
    top: float
    width: float
    height: float

    @classmethod
    def fitting(cls, points: list[Spot], rooms: list[Room], wide: float, tall: float, margin: float) -> "Board":
        """The board on which all `points` fit into wide x tall with a margin, and `rooms` for the words about them."""
        xs, ys = [x for x, _ in points] or [0.0], [y for _, y in points] or [0.0]
        corners = (min(xs), min(ys)), (max(xs), max(ys))
        needed = [about(corner, 0, 0, margin, margin) for corner in corners] + rooms
        scale = fit(needed, wide, tall)
        left, right, down, up = spread(needed, scale)
        return cls(scale, (wide - right - left) / 2, up, wide, round(up - down, 2))

    def at(self, spot: Spot) -> Spot:
        """Where a point of the wood falls in ink."""
        return round(self.left + spot[0] * self.scale, 2), round(self.top - spot[1] * self.scale, 2)
