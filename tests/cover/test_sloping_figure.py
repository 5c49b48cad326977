"""The drawings of sloping-lid box and hinge-strip, looked at as a reader would: words apart, and nothing cut off."""

from collections.abc import Iterator
from itertools import combinations
from typing import Any

import pytest
from shapely import affinity
from shapely.geometry import Polygon, box

import calc
from calc.bench import Bench
from calc.discover import find

LETTER, HEIGHT = 5.5, 9.0
"""Pixels a letter is wide and a line of words high, in the drawings' 11 px."""
BENCHES = {"inch": Bench(), "mm": Bench(unit="mm", mark="mm"), "fine": Bench(mark="1/64")}
BOXES = {
    "example": {},
    "flat and wide": {"inside_width": "30 in", "depth": "12 in", "back_height": "6 in", "front_height": "5 in"},
    "tall and steep": {
        "stock_thickness": "12 mm",
        "inside_width": "110 mm",
        "depth": "140 mm",
        "back_height": "644 mm",
        "front_height": "420 mm",
        "batten_width": "15 mm",
        "leaf": "10 mm",
    },
    "bare": dict.fromkeys(("crest", "tail", "front_overhang", "side_overhang"), "0 mm"),
    "thick": {"stock_thickness": "1 1/4 in", "lid_thickness": "5/8 in", "batten_thickness": "3/4 in"},
}
STRIPS = {
    "example": {},
    "level": {"angle": "0", "length": "900 mm", "leaf": "60 mm", "knuckle": "12 mm", "thickness": "9 mm"},
    "steep": {"angle": "58", "length": "70 mm", "leaf": "8 mm", "knuckle": "3 mm", "thickness": "20 mm"},
}
DRAWN = [
    (sum_id, changed, bench)
    for sum_id, cases in (("sloping-lid-box", BOXES), ("hinge-strip", STRIPS))
    for changed in cases.values()
    for bench in BENCHES.values()
]
every_drawing = pytest.mark.parametrize(
    ("sum_id", "changed", "bench"), DRAWN, ids=lambda each: each if isinstance(each, str) else ""
)


def drawing(sum_id: str, changed: dict[str, str], bench: Bench) -> dict[str, Any]:
    """The figure of the example, with some of it changed."""
    result = calc.answer(sum_id, bench, **{**find(sum_id).example.givens, **changed})
    return result.to_dict()["figure"]


def walked(nodes: list[Any]) -> Iterator[list[Any]]:
    """Every node of a figure, groups opened."""
    for node in nodes:
        if isinstance(node, list):
            yield node
            yield from walked(node[2:])


def words(figure: dict[str, Any]) -> list[tuple[str, Polygon]]:
    """Each text of a figure, and the patch of paper it covers."""
    return [(node[2], patch(node[1], node[2])) for node in walked(figure["nodes"]) if node[0] == "text"]


def patch(told: dict[str, Any], text: str) -> Polygon:
    """A box about the words, set by their start, middle or end and turned as they are."""
    wide = len(text) * LETTER
    left = told["x"] - {"start": 0, "middle": wide / 2, "end": wide}[told["text-anchor"]]
    flat = box(left, told["y"] - HEIGHT / 2, left + wide, told["y"] + HEIGHT / 2)
    turn = float(told["transform"].removeprefix("rotate(").split()[0]) if "transform" in told else 0
    return affinity.rotate(flat, turn, origin=(told["x"], told["y"]))


@every_drawing
def test_no_two_words_overlap(sum_id: str, changed: dict[str, str], bench: Bench) -> None:
    """Every size can be read: none is printed over another."""
    for (one, first), (other, second) in combinations(words(drawing(sum_id, changed, bench)), 2):
        assert first.intersection(second).area < 1, (one, other)


@every_drawing
def test_nothing_is_cut_off(sum_id: str, changed: dict[str, str], bench: Bench) -> None:
    """Words and wood lie on the paper, which is no wider than a narrow phone."""
    figure = drawing(sum_id, changed, bench)
    assert figure["width"] <= 340
    paper = box(0, 0, figure["width"], figure["height"])
    for text, place in words(figure):
        assert paper.buffer(0.5).contains(place), text
    for node in walked(figure["nodes"]):
        spots = [spot.split(",") for spot in node[1].get("points", "").split()]
        assert all(0 <= float(x) <= figure["width"] and 0 <= float(y) <= figure["height"] for x, y in spots), node


@every_drawing
def test_every_touch_finds_something_asked_or_answered(sum_id: str, changed: dict[str, str], bench: Bench) -> None:
    """A dimension that can be touched bears the name of a given or an answer."""
    names = {each.name for each in find(sum_id).named}
    touched = {
        node[1]["data-name"] for node in walked(drawing(sum_id, changed, bench)["nodes"]) if "data-name" in node[1]
    }
    assert {"strip", "angle"} <= touched | {"angle"}
    assert touched <= names
