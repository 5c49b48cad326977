"""Drawing words: outlines, dimensions, arcs, hatching, grain. Wood is drawn in millimetres, to scale; ink in pixels.

A figure is data: nested lists ["line", {"x1": 0, ...}, ...children]. The page makes elements of it one by one, the
documents print it as SVG; neither ever parses text as markup. x runs right and y runs up, as on a drawing board.
"""

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from html import escape
from typing import Any

from calc import show
from calc.bench import Bench
from calc.drawing import ink
from calc.drawing.room import Room, of_angle, of_dimension, of_words

Point = tuple[Any, Any]
Node = list[Any]
WIDE, TALL, MARGIN = 340.0, 250.0, 12.0


@dataclass
class Figure:
    """A drawing to scale. `title` names it and `desc` says in words what it shows, for those who cannot see it.

    Kinds of line: "wood" (filled outline), "edge", "thin", "hidden" (dashed), "ghost" (what was or will be), "accent".
    """

    title: str
    desc: str
    wide: float = WIDE
    tall: float = TALL
    points: list[tuple[float, float]] = field(default_factory=list)
    rooms: list[Room] = field(default_factory=list)
    strokes: list[Callable[["ink.Board", Bench], Node]] = field(default_factory=list)

    def _see(self, *points: Point) -> list[tuple[float, float]]:
        seen = [(float(x), float(y)) for x, y in points]
        self.points += seen
        return seen

    def outline(self, points: Sequence[Point], kind: str = "wood") -> None:
        """A closed shape."""
        seen = self._see(*points)
        self.strokes.append(lambda board, _: ink.polygon(board, seen, kind))

    def line(self, start: Point, end: Point, kind: str = "edge") -> None:
        """A straight line."""
        seen = self._see(start, end)
        self.strokes.append(lambda board, _: ink.line(board, seen[0], seen[1], kind))

    def arc(self, centre: Point, radius: Any, start: Any, end: Any, kind: str = "edge") -> None:
        """An arc about `centre` from angle `start` to `end`, degrees anticlockwise from the right."""
        self.curve(ink.arc_points(centre, radius, start, end), kind)

    def curve(self, points: Sequence[Point], kind: str = "edge") -> None:
        """An open line through points close enough together to look smooth."""
        seen = self._see(*points)
        self.strokes.append(lambda board, _: ink.polyline(board, seen, kind))

    def hatch(self, points: Sequence[Point], degrees: float = 45) -> None:
        """End grain: slanted lines inside a convex shape."""
        seen = self._see(*points)
        self.strokes.append(lambda board, _: ink.hatch(board, seen, degrees))

    def grain(self, points: Sequence[Point], degrees: float = 0) -> None:
        """Long grain: a few fine lines along `degrees` inside a convex shape."""
        seen = self._see(*points)
        self.strokes.append(lambda board, _: ink.hatch(board, seen, degrees, gap=9, kind="grain"))

    def dimension(
        self,
        start: Point,
        end: Point,
        name: str = "",
        value: Any = None,
        away: float = 22,
        label: str = "",
        along: float = 0,
    ) -> None:
        """A dimension line `away` pixels to the left of the way from start to end (negative: to the right).

        `name` is the given or answer it shows, so that a touch finds its field. `value` in millimetres; without it the
        distance itself. `label` stands before the figure, `along` pixels from the middle towards the end.
        """
        (a, b) = self._see(start, end)
        size = math.dist(a, b) if value is None else value
        self.rooms += of_dimension(a, b, away, label, along)
        self.strokes.append(
            lambda board, bench: ink.dimension(
                board, a, b, away, name, f"{label} {show.length(size, bench).text}".strip(), along
            )
        )

    def angle(
        self,
        corner: Point,
        start: Any,
        end: Any,
        name: str = "",
        value: Any = None,
        reach: float = 46,
        label: str = "",
        beside: bool = False,
    ) -> None:
        """An angle at `corner` from `start` to `end` degrees, `reach` pixels out; `beside` sets words past `end`."""
        (at,) = self._see(corner)
        size = end - start if value is None else value
        self.rooms.append(of_angle(at, start, end, reach, label, beside))
        self.strokes.append(
            lambda board, bench: ink.angle(
                board,
                at,
                float(start),
                float(end),
                reach,
                name,
                f"{label} {show.angle(size, bench).text}".strip(),
                beside,
            )
        )

    def note(self, at: Point, text: str, anchor: str = "middle", dx: float = 0, dy: float = 0, name: str = "") -> None:
        """Words at a point, moved by pixels right and up; anchor start, middle or end."""
        (seen,) = self._see(at)
        self.rooms.append(of_words(seen, text, anchor, dx, dy))
        self.strokes.append(lambda board, _: ink.words(board, seen, text, anchor, dx, dy, name))

    def drawn(self, bench: Bench) -> dict[str, Any]:
        """The figure as plain data: {"width", "height", "title", "desc", "nodes"}."""
        board = ink.Board.fitting(self.points, self.rooms, self.wide, self.tall, MARGIN)
        nodes = [stroke(board, bench) for stroke in self.strokes]
        return {"width": board.width, "height": board.height, "title": self.title, "desc": self.desc, "nodes": nodes}

    def svg(self, bench: Bench) -> str:
        """The figure as an SVG document, for paper and documents."""
        drawn = self.drawn(bench)
        head = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {drawn["width"]} {drawn["height"]}" role="img">'
        words = f"<title>{escape(self.title)}</title><desc>{escape(self.desc)}</desc>"
        return head + words + "".join(markup(node) for node in drawn["nodes"]) + "</svg>"


def markup(node: Node | str) -> str:
    """One node and its children as SVG text, everything escaped."""
    if isinstance(node, str):
        return escape(node)
    tag, attributes, *children = node
    told = "".join(f' {name}="{escape(str(value))}"' for name, value in attributes.items())
    return f"<{tag}{told}>{''.join(markup(child) for child in children)}</{tag}>"
