"""The splayed tray in space: the room inside, the wood, the corners and the hand holes, over its range."""

import math
from fractions import Fraction
from typing import Any

import manifold3d
import numpy as np
import pytest
from examples import Example
from hypothesis import given
from hypothesis import strategies as st
from randomly import sized
from shapely.geometry import LineString
from wood import body

from calc.declare import Values
from calc.drawing.solid import Solid

TRAY = Example("splayed-tray")
TRAYS = st.fixed_dictionaries(
    {
        "stock_width": sized(120, 300),
        "stock_thickness": sized(6, 20),
        "long": sized(150, 500),
        "wide": sized(150, 400),
        "height": sized(80, 160),
        "lean": st.integers(3, 40).map(Fraction),
        "corners": st.sampled_from(["butt", "mitre"]),
        "edges": st.sampled_from(["level", "square"]),
        "handles": st.sampled_from(["holes", "none"]),
        "bottom_up": sized(0, 8),
        "species": st.just("ash-white"),
    }
)


@given(TRAYS)
def test_the_room_inside_is_a_prismatoid_and_a_mesh(givens: dict[str, Any]) -> None:
    """h/6 (floor + 4 · middle + rim), and the hull that manifold3d finds about the corners of floor and rim."""
    v = TRAY.of(**givens)
    sizes = [[float(v[name]) for name in pair] for pair in (("long", "wide"), ("top_long", "top_wide"))]
    (long, wide), (top_long, top_wide) = sizes
    deep = float(v["inside_deep"])
    middle = (long + top_long) * (wide + top_wide) / 4
    assert deep / 6 * (long * wide + 4 * middle + top_long * top_wide) == pytest.approx(float(v["volume"]))
    corners = [
        (x * b / 2, y * a / 2, z) for (a, b), z in zip(sizes, (0, deep), strict=True) for x in (-1, 1) for y in (-1, 1)
    ]
    assert manifold3d.Manifold.hull_points(np.array(corners)).volume() == pytest.approx(float(v["volume"]), rel=1e-6)


@given(TRAYS)
def test_the_wood_is_that_of_its_solids_and_weighs_as_much(givens: dict[str, Any]) -> None:
    """The solids come to the wood answered; times density, to the weight."""
    TRAY.weighs_as_its_solids(TRAY.of(**givens))


@given(TRAYS)
def test_the_corners_of_neighbours_meet(givens: dict[str, Any]) -> None:
    """Of each end two faces' worth of corners lie on the long sides: no gap, and no wood in common."""
    v = TRAY.of(**givens)
    assert TRAY.piece.solids
    bodies = [body(one) for one in TRAY.piece.solids(v)]
    for at, one in enumerate(bodies):
        for other in bodies[at + 1 :]:
            assert (one ^ other).volume() < 1e-6 * min(one.volume(), other.volume())
    swelled = [one.scale([1 + 1e-6] * 3) for one in bodies]
    apart = [one.min_gap(other, 10.0) for one in swelled[:2] for other in swelled[2:]]
    assert max(apart) < 1e-3


@given(TRAYS)
def test_hand_holes_have_wood_all_round(givens: dict[str, Any]) -> None:
    """Beside a hole there are 15 mm of either face; below it lies the floor, and wood in the outer face.

    There it comes out lower, and two butted long sides stand as near each other as inside on that level.
    """
    v = TRAY.of(**givens | {"handles": "holes"})
    lean = math.radians(float(v["lean"]))
    low = float(v["hand_down"] + v["hand_wide"]) * math.cos(lean)
    there = float(v["top_wide"]) - 2 * low * math.tan(lean)
    assert there - float(v["hand_long"]) >= 30 - 1e-9
    assert float(v["inside_deep"]) - low >= 5 * math.cos(lean) - 1e-9
    foot = float(v["height"]) - low - float(v["side_thickness"]) * math.sin(lean)
    beside = float(v["foot_wide"]) + 2 * foot * math.tan(lean) - float(v["hand_long"])
    assert foot >= 5 * math.cos(lean) - 1e-9
    assert beside >= 30 - 1e-9 or v["corners"] == "mitre"


def ends(v: Values) -> list[manifold3d.Manifold]:
    """Both ends of a tray as meshes."""
    assert TRAY.piece.solids
    return [body(one) for one in TRAY.piece.solids(v) if one.part == "End"]


@given(TRAYS)
def test_hand_holes_are_what_a_drill_takes_out_of_the_ends(givens: dict[str, Any]) -> None:
    """manifold3d bores the ends of a tray without holes: two round bits and what lies between them, square to the face.

    The middle is marked down the inner face. What is left agrees with the solid, and shapely's area of a hole, as long
    as the end is thick, is what the wood answered is less by.
    """
    v, bare = (TRAY.of(**givens | {"handles": told}) for told in ("holes", "none"))
    long, wide, thick = (float(v[name]) for name in ("hand_long", "hand_wide", "side_thickness"))
    hole = LineString([(0, 0), (long - wide, 0)]).buffer(wide / 2, quad_segs=1000).area * thick
    assert float(bare["wood_volume"] - v["wood_volume"]) == pytest.approx(2 * hole, rel=1e-5)
    for bored, whole, way in zip(ends(v), ends(bare), (-1, 1), strict=True):
        drilled = whole - drill(v, way)
        assert bored.volume() == pytest.approx(drilled.volume(), abs=1e-4 * hole)
        assert (bored - drilled).volume() + (drilled - bored).volume() < 0.02 * hole


def drill(v: Values, way: int) -> manifold3d.Manifold:
    """What bores the end on this side: upright at first, then turned and moved to the mark on the inner face."""
    lean, half, radius = math.radians(float(v["lean"])), float(v["hand_long"] - v["hand_wide"]) / 2, v["hand_wide"] / 2
    bit = manifold3d.Manifold.cylinder(500, float(radius), circular_segments=600, center=True)
    both = manifold3d.Manifold.batch_hull([bit.translate([side * half, 0, 0]) for side in (-1, 1)])
    down = float(v["hand_down"] + radius)
    level = float(v["height"]) - down * math.cos(lean)
    out = float(v["top_long"]) / 2 - down * math.sin(lean)
    return both.rotate([-way * (90 + float(v["lean"])), 0, 0]).translate([0, way * out, level])


def outer_top(solid: Solid, along: int) -> np.ndarray:
    """The two ends of a side's arris that stands farthest out: the top one of its outer face."""
    spots = np.unique(np.round([spot for face in solid.faces for spot in face], 9), axis=0)
    out = np.abs(spots[:, 1 - along])
    return spots[out > out.max() - 1e-6]


def across(solid: Solid, along: int, thick: float) -> float:
    """How long a side with square edges is along the arris straight through the board from its outer top one.

    That arris goes on until it meets the planes of the sawn ends, each by three corners of the end's face.
    """
    arris = outer_top(solid, along)
    inner = np.array(solid.faces[0])
    square = np.cross(inner[1] - inner[0], inner[2] - inner[0])
    square /= np.linalg.norm(square)
    start = arris[0] - thick * square * np.sign((arris[0] - inner[0]) @ square)
    way = np.eye(3)[along]
    reaches = []
    for end in map(np.array, solid.faces[4:6]):
        normal = np.cross(end[1] - end[0], end[2] - end[0])
        reaches.append((end[0] - start) @ normal / (way @ normal))
    return float(abs(reaches[0] - reaches[1]))


@given(TRAYS)
def test_sides_are_marked_along_the_outer_top_arris(givens: dict[str, Any]) -> None:
    """The lengths to mark are those of the solids along the arris farthest out, whatever the corners and the edges."""
    v = TRAY.of(**givens | {"handles": "none"})
    assert TRAY.piece.solids
    for solid in TRAY.piece.solids(v)[:4]:
        name, along = ("long_side", 1) if solid.part == "Long side" else ("end_side", 0)
        arris = outer_top(solid, along)
        assert np.ptp(arris[:, along]) == pytest.approx(float(v[name]), abs=1e-6)


@given(TRAYS)
def test_the_blank_is_as_long_as_its_longest_arris(givens: dict[str, Any]) -> None:
    """Sawn with square edges, a side is longest along its outer top arris or along the one straight through from it."""
    v = TRAY.of(**givens | {"handles": "none"})
    assert TRAY.piece.solids
    for solid in TRAY.piece.solids(v)[:4]:
        name, along = ("long", 1) if solid.part == "Long side" else ("end", 0)
        longest = max(np.ptp(outer_top(solid, along)[:, along]), across(solid, along, float(v["side_thickness"])))
        assert longest == pytest.approx(float(v[f"{name}_blank"]), abs=1e-6)


@given(TRAYS)
def test_the_board_to_buy_is_as_long_as_the_blanks(givens: dict[str, Any]) -> None:
    """Where each side takes a width of stock to itself, the run of its thickness has room for two of each blank."""
    v = TRAY.of(**givens | {"stock_width": givens["height"] + 60, "height": givens["height"]})
    runs = {row["thickness"]: row["length"] for row in v["buy"]}
    if 2 * v["blank_wide"] > v["stock_width"] >= v["blank_wide"]:
        assert runs[v["side_thickness"]] >= 2 * (v["long_blank"] + v["end_blank"])


@given(TRAYS)
def test_a_level_nail_at_its_line_meets_the_middle_of_the_bottoms_edge(givens: dict[str, Any]) -> None:
    """Measured up the outer face of the solid from its lower arris, the nail line lies level with the bottom's middle.

    Level through the side, a nail passes the thickness over cos(lean); square to it, it would rise as it goes in.
    """
    v = TRAY.of(**givens | {"handles": "none"})
    assert TRAY.piece.solids
    *sides, bottom = TRAY.piece.solids(v)
    levels = [spot[2] for face in bottom.faces for spot in face]
    outer = np.array(sides[0].faces[1])
    foot, top = outer[outer[:, 2].argmin()], outer[outer[:, 2].argmax()]
    up = (top - foot) * (1, 0, 1)
    there = foot + up / np.linalg.norm(up) * float(v["nail_line"])
    assert there[2] == pytest.approx((min(levels) + max(levels)) / 2, abs=1e-6)
    wall = float(v["side_thickness"]) / math.cos(math.radians(float(v["lean"])))
    held = [row["held"] for row in v["joints"] if row["length"] is not None]
    assert [float(one) for one in held] == pytest.approx([wall] * len(held))
