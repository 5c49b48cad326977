"""The drawings of the plain boxes, looked at as a reader would: words apart, and nothing cut off."""

from typing import Any

import pytest
from drawings import nothing_cut_off, walk, words_apart

import calc
from calc.bench import Bench
from calc.discover import find

BENCHES = (Bench(), Bench(unit="mm", mark="mm"), Bench(mark="1/64"))
FLAT: tuple[dict[str, str], ...] = (
    {},
    {"width": "30 in", "depth": "12 in", "height": "6 in"},
    {"width": "5 in", "depth": "4 in", "height": "10 in"},
    {"end_overhang": "0 mm", "edge_overhang": "0 mm"},
    {"stock_thickness": "1 in"},
    {"stock_thickness": "6 mm"},
)
SLIDING: tuple[dict[str, str], ...] = (
    {},
    {"length": "12 in", "width": "8 in", "height": "3 in"},
    {"length": "5 in", "width": "4 in", "height": "8 in"},
    {"overhang": "10 mm", "sunk": "5 mm"},
    {"stock_thickness": "20 mm"},
    {"length": "20 in", "width": "3 in", "height": "1 in"},
)
DRAWN = [
    (name, changed, bench)
    for name, cases in (("flat-lid-box", FLAT), ("sliding-lid-box", SLIDING))
    for changed in cases
    for bench in BENCHES
]
every_drawing = pytest.mark.parametrize(("name", "changed", "bench"), DRAWN)


def drawing(name: str, changed: dict[str, str], bench: Bench) -> dict[str, Any]:
    """The figure of the example, with some of it changed."""
    figure: dict[str, Any] = calc.answer(name, bench, **{**find(name).example.givens, **changed}).to_dict()["figure"]
    return figure


@every_drawing
def test_no_two_words_overlap_and_nothing_is_cut_off(name: str, changed: dict[str, str], bench: Bench) -> None:
    """Every size can be read: none is printed over another, and all lies on paper no wider than a narrow phone."""
    figure = drawing(name, changed, bench)
    words_apart(figure)
    nothing_cut_off(figure)


@every_drawing
def test_every_touch_finds_something_asked_or_answered(name: str, changed: dict[str, str], bench: Bench) -> None:
    """A dimension that can be touched bears the name of a given or an answer."""
    names = {each.name for each in find(name).named}
    nodes = walk(drawing(name, changed, bench)["nodes"])
    touched = {node[1]["data-name"] for node in nodes if "data-name" in node[1]}
    assert "lid_wide" in touched
    assert touched <= names
