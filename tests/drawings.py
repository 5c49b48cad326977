"""A drawing looked at as a reader would: words apart, nothing cut off."""

from collections.abc import Iterator
from itertools import combinations
from typing import Any

from shapely import affinity
from shapely.geometry import Polygon, box

LETTER, HEIGHT = 5.5, 9.0
"""Pixels a letter is wide and a line of words high, in the drawings' 11 px."""


def walk(nodes: list[Any]) -> Iterator[list[Any]]:
    """Every node of a figure, groups opened."""
    for node in nodes:
        if isinstance(node, list):
            yield node
            yield from walk(node[2:])


def words(figure: dict[str, Any]) -> list[tuple[str, Polygon]]:
    """Each text of a figure, and the patch of paper it covers."""
    return [(node[2], _patch(node[1], node[2])) for node in walk(figure["nodes"]) if node[0] == "text"]


def _patch(told: dict[str, Any], text: str) -> Polygon:
    wide = len(text) * LETTER
    left = told["x"] - {"start": 0, "middle": wide / 2, "end": wide}[told["text-anchor"]]
    flat = box(left, told["y"] - HEIGHT / 2, left + wide, told["y"] + HEIGHT / 2)
    turn = float(told["transform"].removeprefix("rotate(").split()[0]) if "transform" in told else 0
    return affinity.rotate(flat, turn, origin=(told["x"], told["y"]))


def words_apart(figure: dict[str, Any]) -> None:
    """No word is printed over another."""
    for (one, first), (other, second) in combinations(words(figure), 2):
        assert first.intersection(second).area < 1, (one, other)


def nothing_cut_off(figure: dict[str, Any]) -> None:
    """Words and wood lie on the paper, which is no wider than a narrow phone."""
    assert figure["width"] <= 340
    paper = box(0, 0, figure["width"], figure["height"]).buffer(0.5)
    for text, place in words(figure):
        assert paper.contains(place), text
    for node in walk(figure["nodes"]):
        spots = [spot.split(",") for spot in node[1].get("points", "").split()]
        assert all(0 <= float(x) <= figure["width"] and 0 <= float(y) <= figure["height"] for x, y in spots), node
