"""Every drawing is finite, keeps to its sheet, and is made of nothing but the drawing's own few words."""

import math
import re
from collections.abc import Iterator
from typing import Any
from xml.etree import ElementTree

import pytest
from forms import forms
from hypothesis import assume, given
from hypothesis import strategies as st
from strategies import benches

from calc import discover
from calc.bench import Bench
from calc.drawing.figure import Figure, markup
from calc.engine import reckon
from calc.errors import Refused

SUMS = discover.everything()
every_sum = pytest.mark.parametrize("name", [one.id for one in SUMS])
PLACES = {"x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "points", "transform"}
WORDS = {"class", "data-name", "text-anchor", "dominant-baseline"}
TAGS = {"g", "line", "polygon", "polyline", "text", "circle"}
NUMBER = re.compile(r"-?\d+(?:\.\d+)?")


def nodes(drawn: list[Any]) -> Iterator[list[Any]]:
    """Every node of a drawing, with those inside it."""
    for node in drawn:
        if not isinstance(node, str):
            yield node
            yield from nodes(node[2:])


def spots(node: list[Any]) -> Iterator[tuple[float, float]]:
    """The points a node stands on."""
    told = node[1]
    for x, y in (("x", "y"), ("x1", "y1"), ("x2", "y2"), ("cx", "cy")):
        if x in told:
            yield told[x], told[y]
    numbers = [float(number) for number in re.split("[ ,]", told.get("points", "")) if number]
    yield from zip(numbers[::2], numbers[1::2], strict=True)


@every_sum
@given(data=st.data())
def test_a_drawing_is_plain_and_keeps_to_its_sheet(name: str, data: st.DataObject) -> None:
    """Known tags and attributes, finite numbers on the sheet, every handle the name of a given or an answer."""
    one = discover.find(name)
    drawn = drawing(name, data, data.draw(benches))
    assert drawn["title"]
    assert drawn["desc"].endswith(".")
    for tag, told, *_ in nodes(drawn["nodes"]):
        assert tag in TAGS
        assert set(told) <= PLACES | WORDS
        assert all(math.isfinite(value) for value in told.values() if not isinstance(value, str))
        assert not {"nan", "inf"} & set(re.findall("[a-z]+", f"{told.get('points')} {told.get('transform')}"))
        assert told.get("data-name", one.givens[0].name) in {each.name for each in one.named}
        assert all(on_sheet(spot, drawn) for spot in spots([tag, told])), told


def on_sheet(spot: tuple[float, float], drawn: dict[str, Any]) -> bool:
    """True for a point that is not cut away at the edge."""
    return -0.01 <= spot[0] <= drawn["width"] + 0.01 and -0.01 <= spot[1] <= drawn["height"] + 0.01


def drawing(name: str, data: st.DataObject, bench: Bench) -> dict[str, Any]:
    """The figure of some answer, as plain data."""
    one = discover.find(name)
    try:
        return one.figure(reckon(one, data.draw(forms(one)), bench).values).drawn(bench)
    except Refused:
        assume(False)
        raise


@every_sum
def test_a_drawing_is_an_svg(name: str) -> None:
    """The example's figure parses as SVG with its title first, for paper and for readers of screens."""
    one = discover.find(name)
    svg = ElementTree.fromstring(one.figure(reckon(one, one.example.givens, Bench()).values).svg(Bench()))
    assert svg.tag == "{http://www.w3.org/2000/svg}svg"
    assert [child.tag.rpartition("}")[2] for child in svg][:2] == ["title", "desc"]
    assert NUMBER.search(svg.attrib["viewBox"])


def test_words_in_a_drawing_never_become_markup() -> None:
    """What a maker typed is text, whatever signs it holds."""
    assert markup(["text", {"class": '"<&'}, "<b>&"]) == '<text class="&quot;&lt;&amp;">&lt;b&gt;&amp;</text>'


def test_a_drawing_is_to_scale() -> None:
    """A rectangle twice as wide as it is high is drawn so, y up."""
    figure = Figure("Board", "A rectangle.")
    figure.outline([(0, 0), (200, 0), (200, 100), (0, 100)])
    (x0, y0), (x1, _), (_, y2), _ = spots(figure.drawn(Bench())["nodes"][0])
    assert x1 - x0 == pytest.approx(2 * (y0 - y2), abs=0.02)


def test_a_dimension_shows_the_length_of_its_line() -> None:
    """Without a value a dimension measures itself: a 3-4-5 triangle's long side is 5 in."""
    figure = Figure("Triangle", "A triangle.")
    figure.dimension((0, 0), (4 * 25.4, 3 * 25.4))
    texts = [node[2] for node in nodes(figure.drawn(Bench())["nodes"]) if node[0] == "text"]
    assert texts == ["5 in"]


@pytest.mark.parametrize("points", [[], [(0, 0)], [(0, 0), (0, 0)], [(5, 5), (5, 900)]])
def test_a_drawing_of_hardly_anything_is_still_a_drawing(points: list[tuple[float, float]]) -> None:
    """No points, one point or a line without width leave a sheet of finite size."""
    figure = Figure("Nothing", "Nothing much.")
    if points:
        figure.outline(points)
    drawn = figure.drawn(Bench())
    assert 0 < drawn["width"] < 1000
    assert 0 < drawn["height"] < 1000
