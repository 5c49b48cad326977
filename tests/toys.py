"""Two small pieces to try the engine on: a tray, all straight relations, and a sloping rest, which has curved ones."""

from fractions import Fraction
from typing import Any

from hypothesis import strategies as st
from hypothesis.strategies import SearchStrategy

from calc import trig
from calc.building.piece import Piece
from calc.building.size import Match, Size, Step, Table, Yield
from calc.declare import Answer, AnyOf, Example, Source, Values
from calc.drawing.figure import Figure
from calc.kinds import Angle, Length, Limit

OURS = (Source("common practice", "", "common practice"),)
ACROSS, SQUARE = "inside + 2 * thickness", "so that it stands square"


def across(inside: Any, thickness: Any) -> Any:
    """Over both sides."""
    return inside + 2 * thickness


def rectangle(v: Values) -> Figure:
    """A plain drawing."""
    drawing = Figure("Toy", "A rectangle.")
    drawing.outline([(0, 0), (100, 0), (100, 50), (0, 50)])
    return drawing


def length(name: str, default: str = "", low: str = "1 mm", high: str = "2 m", **more: Any) -> Length:
    """A length to give."""
    why = "as good as any" if default else ""
    return Length(name=name, label=name.replace("_", " ").capitalize(), help="Measured.", default=default,
                  default_why=why, limit=Limit(low, high), **more)  # fmt: skip


def size(name: str, work: Any, formula: str = "", part: str = "", by: tuple[str, ...] = (), **more: Any) -> Size:
    """A size of a part."""
    yields = Yield(by=by, over="stands {} proud", under="leaves a gap of {}", trims=more.pop("trims", ()))
    return Size(name=name, label=name.replace("_", " ").capitalize(), help="A size.", work=work, formula=formula,
                part=part, yields=yields, **more)  # fmt: skip


TRAY = Piece(
    id="tray",
    title="Tray",
    question="What are its parts?",
    asks=("how large are the parts of a tray",),
    purpose="A tray of four sides and a bottom.",
    givens=(
        length("width"),
        length("depth"),
        length("height", "40 mm"),
        length("thickness", "10 mm", high="60 mm"),
        length("slack", "1 mm", "0 mm", "3 mm"),
        length("lip", "5 mm", "0 mm", "20 mm"),
    ),
    answers=(
        Table(
            name="parts",
            label="Parts",
            columns=(Answer(name="part", label="Part", kind="text"), Answer(name="long", label="Long", kind="length")),
            work=lambda v: [{"part": "Front", "long": v["front_long"]}, {"part": "Bottom", "long": v["bottom_wide"]}],
        ),
        size("bottom_wide", lambda inside, slack: inside - slack, "inside - slack", "bottom", ("slack", "width")),
        size("bottom_deep", lambda left_deep, slack: left_deep - slack, "left_deep - slack", "bottom", ("slack",),
             trims=("left_deep",)),
        size("front_long", across, ACROSS, "front", ("width",)),
        size("back_long", across, ACROSS, "back", ("width",), limit=Limit("20 mm", "1.5 m")),
        size("left_deep", lambda depth: depth, "depth", "left side", ("depth",)),
        size("right_deep", lambda depth: depth, "depth", "right side", ("depth",)),
        size("inside", lambda width: width, "width"),
        size("cover_wide", lambda front_long, lip: front_long + 2 * lip, "front_long + 2 * lip", "cover",
             ("lip", "width")),
        size("diagonal", lambda width, depth: trig.sqrt(width**2 + depth**2), "sqrt(width ** 2 + depth ** 2)"),
        size("area", lambda width, depth: width * depth, "width * depth", kind="number"),
    ),
    matches=(
        Match(names=("front_long", "back_long"), within=lambda thickness: thickness / 20, why=SQUARE),
        Match(names=("left_deep", "right_deep"), within=lambda: Fraction(3, 10), why=SQUARE),
    ),
    proof=lambda v: {"the front is the inside and two thicknesses": v["front_long"] - v["width"] - 2 * v["thickness"]},
    figure=rectangle,
    sources=OURS,
    example=Example({"width": "12 in", "depth": "8 in"}, "A tray for the reading room's tea."),
    limits_of="Square corners.",
)  # fmt: skip

REST = Piece(
    id="rest",
    title="Sloping rest",
    question="What are its parts?",
    asks=("how large are the parts of a sloping rest",),
    purpose="A sloping rest: two sides with sloping tops, and a board on them.",
    givens=(
        length("depth"),
        length("back_height"),
        length("front_height"),
        Angle(name="angle", label="Slope", help="In degrees.", limit=Limit("1", "60")),
        length("overhang", "12 mm", "0 mm", "30 mm"),
        length("thickness", "16 mm", "3 mm", "40 mm"),
        length("board_thickness", optional=True, low="3 mm", high="40 mm"),
    ),
    any_of=AnyOf(2, ("back_height", "front_height", "angle")),
    steps=(Step(name="rise", work=lambda back_height, front_height: {"rise": back_height - front_height}),),
    answers=(
        size("board_long", lambda depth, overhang, secant: (depth + overhang) * secant, "(depth + overhang) * secant",
             "board", ("overhang", "front_height", "depth"), trims=("back_height",)),
        size("angle", lambda back_height, front_height, depth: trig.atan((back_height - front_height) / depth),
             "atan((back_height - front_height) / depth)", "side", ("front_height",), kind="angle",
             limit=Limit("1", "60")),
        size("back_height", lambda front_height, angle, depth: front_height + depth * trig.tan(angle),
             "front_height + depth * tan(angle)", "side", ("front_height", "angle")),
        size("front_height", lambda back_height, angle, depth: back_height - depth * trig.tan(angle),
             "back_height - depth * tan(angle)", "side", ("back_height", "angle")),
        size("secant", lambda rise, depth: trig.sqrt(1 + (rise["rise"] / depth) ** 2), kind="number"),
        size("board_thickness", lambda thickness: thickness, "thickness", "board"),
        size("bevel", lambda board_thickness, angle: board_thickness * trig.tan(angle), "board_thickness * tan(angle)",
             "board", ("angle",)),
    ),
    proof=lambda v: {"the board foreshortened": float(v["board_long"] / v["secant"] - v["depth"] - v["overhang"])},
    figure=rectangle,
    sources=OURS,
    example=Example({"depth": "200 mm", "back_height": "200 mm", "front_height": "140 mm"}, "For the visitors' book."),
    limits_of="Any slope from 1° to 60°.",
)  # fmt: skip


def millimetres(piece: Piece, name: str) -> SearchStrategy[str]:
    """What may be typed for a length or angle of a piece: whole millimetres or degrees within its limit."""
    low, high = piece.given(name).ends
    unit = "°" if piece.given(name).kind == "angle" else " mm"
    return st.integers(int(low), min(int(high), 600)).map(lambda number: f"{number}{unit}")


def filled(piece: Piece) -> SearchStrategy[dict[str, str]]:
    """A form filled in: all that must be given, two of an "any two of", some of the rest."""
    some = piece.any_of.names if piece.any_of else ()
    must = {one.name for one in piece.givens if not (one.default or one.optional or one.name in some)}
    rest = {one.name: millimetres(piece, one.name) for one in piece.givens if one.default or one.optional}
    picked = st.permutations(some).map(lambda names: names[: piece.any_of.count]) if piece.any_of else st.just([])
    return picked.flatmap(
        lambda names: st.fixed_dictionaries({one: millimetres(piece, one) for one in {*must, *names}}, optional=rest)
    )
