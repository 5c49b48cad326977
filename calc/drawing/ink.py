"""How the drawing words of `calc.drawing.figure` become lines: wood turned into pixels, and one function a word."""

import math
from typing import Any

from calc.drawing.board import Board as Board
from calc.drawing.board import Spot as Spot
from calc.drawing.room import by_angle

Node = list[Any]


def _list(board: Board, spots: list[Spot]) -> str:
    return " ".join(f"{x},{y}" for x, y in map(board.at, spots))


def polygon(board: Board, spots: list[Spot], kind: str) -> Node:
    """A closed outline."""
    return ["polygon", {"class": kind, "points": _list(board, spots)}]


def polyline(board: Board, spots: list[Spot], kind: str) -> Node:
    """An open line through several points."""
    return ["polyline", {"class": f"{kind} open", "points": _list(board, spots)}]


def line(board: Board, start: Spot, end: Spot, kind: str) -> Node:
    """A straight line between two points of the wood."""
    return stroke(board.at(start), board.at(end), kind)


def stroke(a: Spot, b: Spot, kind: str) -> Node:
    """A straight line between two points already in ink."""
    return [
        "line",
        {"class": kind, "x1": round(a[0], 2), "y1": round(a[1], 2), "x2": round(b[0], 2), "y2": round(b[1], 2)},
    ]


def arc_points(centre: tuple[Any, Any], radius: Any, start: Any, end: Any) -> list[Spot]:
    """Points along an arc, close enough together to look round."""
    steps = max(2, math.ceil(abs(float(end) - float(start)) / 4))
    turns = (math.radians(float(start) + (float(end) - float(start)) * step / steps) for step in range(steps + 1))
    return [
        (float(centre[0]) + float(radius) * math.cos(turn), float(centre[1]) + float(radius) * math.sin(turn))
        for turn in turns
    ]


def hatch(board: Board, spots: list[Spot], degrees: float, gap: float = 6, kind: str = "hatch") -> Node:
    """Even lines at `degrees` inside a shape, `gap` pixels apart."""
    inked = [board.at(spot) for spot in spots]
    c, s = math.cos(math.radians(degrees)), -math.sin(math.radians(degrees))
    turned = [(x * c + y * s, -x * s + y * c) for x, y in inked]
    low, high = min(v for _, v in turned), max(v for _, v in turned)
    levels = [low + gap * (n + 0.5) for n in range(min(400, int((high - low) / gap)))]
    cuts = [(level, _crossings(turned, level)) for level in levels]
    back = [
        ((u * c - v * s, u * s + v * c), (uu * c - v * s, uu * s + v * c))
        for v, us in cuts
        for u, uu in zip(us[::2], us[1::2], strict=False)
    ]
    return ["g", {"class": kind}, *(stroke(a, b, kind) for a, b in back)]


def _crossings(shape: list[Spot], level: float) -> list[float]:
    pairs = zip(shape, shape[1:] + shape[:1], strict=True)
    return sorted(
        a + (level - va) * (b - a) / (vb - va) for (a, va), (b, vb) in pairs if (va <= level) != (vb <= level)
    )


def dimension(board: Board, start: Spot, end: Spot, away: float, name: str, text: str, along: float = 0) -> Node:
    """A dimension: two witness lines, the line with its ticks, its figure; a name makes it a place to touch."""
    a, b = board.at(start), board.at(end)
    long = math.dist(a, b) or 1.0
    ux, uy = (b[0] - a[0]) / long, (b[1] - a[1]) / long
    nx, ny = uy, -ux
    side = 1 if away >= 0 else -1
    p, q = (a[0] + nx * away, a[1] + ny * away), (b[0] + nx * away, b[1] + ny * away)
    parts = [
        stroke((s[0] + nx * 4 * side, s[1] + ny * 4 * side), (t[0] + nx * 4 * side, t[1] + ny * 4 * side), "witness")
        for s, t in ((a, p), (b, q))
    ]
    parts += [stroke(p, q, "dim")] + [
        stroke(
            (t[0] - 3.5 * (ux + nx), t[1] - 3.5 * (uy + ny)), (t[0] + 3.5 * (ux + nx), t[1] + 3.5 * (uy + ny)), "tick"
        )
        for t in (p, q)
    ]
    middle = ((p[0] + q[0]) / 2 + nx * 9 * side + ux * along, (p[1] + q[1]) / 2 + ny * 9 * side + uy * along)
    return touch(name, [*parts, label(middle, text, "middle", _upright(math.degrees(math.atan2(uy, ux))))], middle)


def _upright(degrees: float) -> float:
    """The turn of words along a line, never upside down: from -90 up to 90, upright ones read from the right."""
    turned = (degrees + 90) % 180 - 90
    return -90.0 if turned == 90 else turned


def label(at: Spot, text: str, anchor: str, turn: float = 0.0) -> Node:
    """Words in ink, centred on their height."""
    x, y = round(at[0], 2), round(at[1], 2)
    told: dict[str, Any] = {"class": "words", "x": x, "y": y, "text-anchor": anchor, "dominant-baseline": "central"}
    return ["text", told | ({"transform": f"rotate({round(turn, 2)} {x} {y})"} if abs(turn) > 0.01 else {}), text]


def touch(name: str, parts: list[Node], at: Spot) -> Node:
    """The parts as one group; with a name, also a disc 48 pixels across that a thumb can find."""
    if not name:
        return ["g", {"class": "plain"}, *parts]
    disc = ["circle", {"class": "touch", "cx": round(at[0], 2), "cy": round(at[1], 2), "r": 24}]
    return ["g", {"class": "handle", "data-name": name}, *parts, disc]


def angle(
    board: Board, corner: Spot, start: float, end: float, reach: float, name: str, text: str, beside: bool
) -> Node:
    """An angle's arc `reach` pixels from its corner, its figure beyond the arc, or beside an angle too slim."""
    x, y = board.at(corner)
    turns = [math.radians(start + (end - start) * n / 16) for n in range(17)]
    spots = " ".join(f"{round(x + reach * math.cos(t), 2)},{round(y - reach * math.sin(t), 2)}" for t in turns)
    dx, dy, anchor = by_angle(start, end, reach, beside)
    at = (x + dx, y - dy)
    return touch(name, [["polyline", {"class": "dim open", "points": spots}], label(at, text, anchor)], at)


def words(board: Board, spot: Spot, text: str, anchor: str, dx: float, dy: float, name: str) -> Node:
    """A note beside a point of the wood."""
    x, y = board.at(spot)
    at = (x + dx, y - dy)
    return touch(name, [label(at, text, anchor)], at)
