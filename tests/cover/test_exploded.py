"""Every piece taken apart: what is near hides what is far, every part is named, and all of it is on the paper."""

from itertools import combinations
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.strategies import DataObject
from shapely.geometry import Point, Polygon, box
from test_sloping_figure import BOXES, walked, words
from test_solids import built, every_piece
from wood import normal

import calc
from calc.bench import Bench
from calc.building.piece import Piece
from calc.drawing.exploded import exploded, parted
from calc.drawing.painting import painted, seen
from calc.drawing.solid import Face, block, prism

EYE = np.ones(3)


def height(face: Face, spot: tuple[float, float]) -> float:
    """How near the eye a face stands over a spot of the paper, by the line of sight through its plane."""
    down, up = -2 * spot[1], spot[0] / (np.sqrt(3) / 2)
    foot, way = np.array([(down - up) / 2, (down + up) / 2, 0.0]), normal(face)
    return float(np.dot(way, np.subtract(face[0], foot)) / np.dot(way, EYE))


def test_lengths_along_all_three_axes_are_to_one_scale() -> None:
    """A hundred millimetres of depth, width or height are a hundred on the paper, at 120 degrees to each other."""
    ways = [np.array(seen(way)) for way in ((100, 0, 0), (0, 100, 0), (0, 0, 100))]
    assert [float(np.linalg.norm(way)) for way in ways] == pytest.approx([100] * 3)
    assert [float(np.dot(a, b)) for a, b in combinations(ways, 2)] == pytest.approx([-5000] * 3)


@every_piece
@settings(max_examples=8)
@given(data=st.data())
def test_no_face_is_painted_over_by_one_behind_it(piece: Piece, data: DataObject) -> None:
    """Wherever two faces cover the same paper, the one painted later is the nearer, by the line of sight."""
    faces = painted(parted(built(piece, data)[1]))
    flat = [Polygon([seen(corner) for corner in face]) for _, face in faces]
    for under, over in combinations(range(len(faces)), 2):
        both = flat[under].intersection(flat[over])
        if both.area > 0.5:
            spot = both.representative_point()
            heights = [height(faces[each][1], (spot.x, spot.y)) for each in (under, over)]
            assert heights[0] <= heights[1] + 1e-3, (faces[under], faces[over])


def test_a_post_before_a_wall_is_painted_after_it() -> None:
    """Whichever is named first, and though the wall's middle is nearer the eye than the post's."""
    wall = block("Wall", (0, 0, 0), (10, 2000, 300), (0, 0, 0))
    post = block("Post", (20, 100, 0), (40, 120, 200), (0, 0, 0))
    for solids in ([wall, post], [post, wall]):
        assert [solids[number].part for number, _ in painted(solids)] == ["Wall"] * 3 + ["Post"] * 3


def drawn(piece: Piece, changed: dict[str, str]) -> dict[str, Any]:
    """The exploded view in the answer of a piece's example, some of it changed."""
    result = calc.answer(piece.id, Bench(), **dict(piece.example.givens) | changed)
    return dict(result.to_dict()["exploded"])


def cases(piece: Piece) -> list[dict[str, str]]:
    """The example, and for the sloping-lid box the extremes that its other drawing is tried at."""
    return list(BOXES.values()) if piece.id == "sloping-lid-box" else [{}]


@every_piece
def test_every_part_is_named_and_no_two_names_overlap(piece: Piece) -> None:
    """Each kind of part that can be seen bears its name as in the list of parts, clear of the other names."""
    for changed in cases(piece):
        figure = drawn(piece, changed)
        found = words(figure)
        solids = piece.solids(calc.answer(piece.id, **dict(piece.example.givens) | changed).values)  # type: ignore
        assert {text for text, _ in found} == {solid.part for solid in solids}
        for (one, first), (other, second) in combinations(found, 2):
            assert first.intersection(second).area < 1, (one, other)


@every_piece
def test_all_of_it_is_on_the_paper(piece: Piece) -> None:
    """Words and wood lie on the paper, which is no wider than a narrow phone; no name is printed over wood."""
    for changed in cases(piece):
        figure = drawn(piece, changed)
        assert figure["width"] <= 340
        paper, found = box(0, 0, figure["width"], figure["height"]).buffer(0.5), words(figure)
        assert all(paper.contains(place) for _, place in found)
        for node in walked(figure["nodes"]):
            if node[0] == "polygon":
                wood = Polygon([tuple(map(float, spot.split(","))) for spot in node[1]["points"].split()])
                assert paper.contains(wood)
                assert not any(place.intersects(wood) for _, place in found)


def test_the_line_from_a_name_ends_on_wood() -> None:
    """A yoke, whose corners have their middle in its gap: the line ends on one of its arms or on what joins them."""
    yoke = [(0, 0), (100, 0), (100, 100), (70, 100), (70, 10), (30, 10), (30, 100), (0, 100)]
    figure = exploded("Yoke", [prism("Yoke", yoke, "x", 0, 5, (0, 0, 0))]).drawn(Bench())
    nodes = list(walked(figure["nodes"]))
    wood = [Polygon([tuple(map(float, spot.split(","))) for spot in node[1]["points"].split()])
            for node in nodes if node[0] == "polygon"]  # fmt: skip
    (told,) = (node[1] for node in nodes if node[0] == "line" and node[1]["class"] == "thin")
    assert any(face.buffer(-1).contains(Point(told["x2"], told["y2"])) for face in wood)


def test_parts_alike_are_drawn_alike() -> None:
    """Two halves of a block, taken apart along its depth, cover as much of the paper each."""
    halves = [block("Half", (at, 0, 0), (at + 50, 100, 100), (way, 0, 0)) for at, way in ((0, -1.0), (50, 1.0))]
    figure = exploded("Block", halves).drawn(Bench())
    tops = [node for node in walked(figure["nodes"]) if node[0] == "polygon"]
    spots = [[tuple(map(float, spot.split(","))) for spot in node[1]["points"].split()] for node in tops]
    assert len(spots) == 6
    first, second = (Polygon([spot for face in some for spot in face]).convex_hull for some in (spots[:3], spots[3:]))
    assert first.area == pytest.approx(second.area, rel=1e-2)


def test_no_line_is_drawn_between_the_flats_of_a_curve() -> None:
    """A round post of 36 flats: its top keeps its outline, and of its sides only the ends of the flats are drawn."""
    around = [(10 * np.cos(turn), 10 * np.sin(turn)) for turn in np.arange(36) * np.pi / 18]
    figure = exploded("Post", [prism("Post", around, "z", 0, 50, (0, 0, 0), (0, 0, 1))]).drawn(Bench())
    edges = [node for node in figure["nodes"] if node[0] == "line" and node[1]["class"] == "edge"]
    upright = [node for node in edges if abs(node[1]["x1"] - node[1]["x2"]) < 0.02]
    assert edges
    assert len(upright) <= 2
