"""Splayed tray: the example by another road, printed compound angles, the order of work, and the drawing."""

import csv
import math
from pathlib import Path

import pytest
from building import METRIC
from drawings import nothing_cut_off, words_apart
from examples import Example

import calc
from calc.answers import Result
from calc.bench import Bench
from calc.declare import Values

TRAY = Example("splayed-tray")
TABLE = Path("tests/published/data/hopper_square_box_bevels.csv")
ROWS = csv.DictReader(TABLE.read_text("utf-8").splitlines())
HOPPERS = [row for row in ROWS if 3 <= float(row["tilt_from_vertical_deg"]) <= 45]


def test_the_example_by_hand() -> None:
    """12 mm sides leaning 15°, 90 high, 260 by 170 on the floor, which lies 3 + 12 above the bench.

    By hand with tan 15° = 2 - √3 and cos 15° = (√6 + √2)/4: over 75 mm each side leans out by 75 (2 - √3); a side is
    12/cos 15° through, level. The ends stand between; the long sides reach over both of them.
    """
    result = TRAY.answer()
    tan, cos = 2 - math.sqrt(3), (math.sqrt(6) + math.sqrt(2)) / 4
    assert result["end_side"] == pytest.approx(170 + 150 * tan)
    assert result["long_side"] == pytest.approx(260 + 150 * tan + 24 / cos)
    assert result["side_wide"] == pytest.approx(90 / cos)
    assert result["blank_wide"] == pytest.approx(90 / cos + 12 * tan)
    assert [float(result[name]) for name in ("inside_deep", "floor_up", "bottom_long", "bottom_wide")] == pytest.approx(
        [75, 15, 260, 170]
    )
    assert result["bottom_under"] == pytest.approx(260 - 24 * tan)
    assert result["nail_line"] == pytest.approx((3 + 6) / cos)


def test_a_butted_blank_is_longer_than_what_is_left_of_it() -> None:
    """By hand: with square edges the inner top arris stands 12 sin 15° above the rim, and either end of it runs out by
    as much times tan 15°; planed level, 1.66 mm of both sides' length is gone. At 30° in 19 mm it is 11.0 mm."""
    sin, tan = math.sin(math.radians(15)), math.tan(math.radians(15))
    result = TRAY.answer()
    for name in ("long", "end"):
        assert result[f"{name}_blank"] - result[f"{name}_side"] == pytest.approx(24 * sin * tan)
    steeper = TRAY.answer(stock_thickness="19 mm", lean="30", handles="none")
    assert steeper["long_blank"] - steeper["long_side"] == pytest.approx(38 / 2 / math.sqrt(3))
    mitred = TRAY.answer(corners="mitre")
    assert mitred["long_blank"] == mitred["long_side"]


def step(result: Result, words: str) -> Values:
    """The step of the order of work that says this."""
    return next(row for row in result["order"] if words in row["do"])


def at(result: Result, words: str) -> int:
    """Where in the order of work that step stands."""
    return list(result["order"]).index(step(result, words))


def test_every_gauge_is_set_before_it_is_used() -> None:
    """Faces, square edges, lean and corners: each has a run and a rise that give its angle, and stands before its work.

    By hand at 15°: tan(face) = sin 15°, tan(edge) = sin 15° tan 15°, and the corner is asin(sin² 15°) past square.
    """
    result, sin = TRAY.answer(), math.sin(math.radians(15))
    tans = {
        "line across the faces": sin,
        "square edges: run": sin * math.tan(math.radians(15)),
        "to the lean": math.tan(math.radians(15)),
        "past square": math.tan(math.asin(sin**2)),
    }
    for words, tan in tans.items():
        found = step(result, words)
        assert float(found["second"] / found["setting"]) == pytest.approx(tan, abs=0.001), words
    assert at(result, "Rip") < at(result, "line across the faces") < at(result, "Mark each outer face")
    assert at(result, "square edges: run") < at(result, "saw to them")
    assert at(result, "to the lean") < at(result, "level, sloping alike")
    assert step(result, "Rip")["setting"] == result["blank_wide"]


def test_lines_run_out_to_the_inner_face_of_a_butted_side_and_in_on_a_mitred_one() -> None:
    """A butted side lies over faces that lean away from it; a mitred one is longest outside."""
    assert "farther out on the inner face" in step(TRAY.answer(), "Carry")["do"]
    assert "farther in on the inner face" in step(TRAY.answer(corners="mitre"), "Carry")["do"]


def test_a_lean_too_slight_for_the_marks_wants_a_square() -> None:
    """At 3° the edges are 0.157° off square, and no two marks of a rule in eighths come so near: the tray is made."""
    result = TRAY.answer(lean="3", mark="1/8")
    assert step(result, "square edges")["setting"] is None
    assert "a square does" in step(result, "square edges")["do"]


def test_what_is_not_there_is_not_eased_and_the_bottom_is_measured_from_somewhere() -> None:
    """Without handles no hand holes are spoken of; the bottom stands above the lower inner arrises."""
    plain = TRAY.answer(handles="none", edges="square")
    assert not any("hand hole" in row["do"] for row in plain["order"])
    assert "above the lower inner arrises" in step(plain, "Press it down")["do"]


@pytest.mark.parametrize("row", HOPPERS, ids=lambda row: row["tilt_from_vertical_deg"])
@pytest.mark.parametrize("corners", ["butt", "mitre"])
def test_its_settings_are_those_of_a_drawn_hopper(row: dict[str, str], corners: str) -> None:
    """Face, edge and bevel as the construction of The Building Trades Pocketbook (source S23) gives them."""
    entry = {"lean": row["tilt_from_vertical_deg"], "corners": corners, "handles": "none"}
    result = TRAY.answer(**entry)
    edge = {"butt": "butt_off_square_deg", "mitre": "miter_off_square_deg"}[corners]
    assert float(result["face_cut"]) == pytest.approx(float(row["face_cut_off_square_deg"]), abs=0.00005)
    assert float(result["square_mark"]) == pytest.approx(float(row[edge]), abs=0.00005)
    assert float(result["dihedral"]) == pytest.approx(float(row["dihedral_between_sides_deg"]), abs=0.00005)
    if corners == "mitre":
        assert float(result["bevel"]) == pytest.approx(float(row["blade_tilt_for_miter_deg"]), abs=0.00005)


def test_across_the_grain_comes_before_along_it_and_nothing_is_glued() -> None:
    """Ends are sawn and holes bored before edges are planed, nails after; no joint of a tray holds by glue."""
    result = TRAY.answer()
    tools = [row["tool"] for row in result["order"]]
    assert max(tools.index("crosscut saw"), tools.index("bit, coping saw")) < tools.index("plane, bevel gauge")
    assert tools.index("plane, bevel gauge") < min(at for at, tool in enumerate(tools) if "hammer" in tool)
    assert all(row["glue"].startswith("none") for row in result["joints"])


BENCHES = {"inch": Bench(), "mm": METRIC, "fine": Bench(mark="1/64")}
SHAPES: dict[str, dict[str, str]] = {
    "example": {},
    "mitred, square": {"corners": "mitre", "edges": "square", "lean": "30"},
    "long": {"long": "30 in", "wide": "8 in", "height": "4 in", "lean": "8"},
    "flat": {"long": "300 mm", "wide": "300 mm", "height": "30 mm", "lean": "45", "handles": "none"},
}


@pytest.mark.parametrize("bench", BENCHES.values(), ids=list(BENCHES))
@pytest.mark.parametrize("changed", SHAPES.values(), ids=list(SHAPES))
def test_the_drawing_can_be_read(changed: dict[str, str], bench: Bench) -> None:
    """No word over another, and nothing cut off."""
    drawn = calc.answer("splayed-tray", bench, **TRAY.givens | changed).to_dict()["figure"]
    words_apart(drawn)
    nothing_cut_off(drawn)
