"""What is bored for nails and wall screws, as the order of work has it, and the screws to buy for the wall."""

from building import begun
from examples import Example

from calc.answers import Result
from calc.building.settle import settle
from calc.declare import Values
from calc.sums._drills import under

TRAY, SHELF = Example("splayed-tray"), Example("wall-shelf")


def step(result: Result, words: str) -> Values:
    """The step of the order of work that says this."""
    return next(row for row in result["order"] if words in row["do"])


def drills(result: Result) -> dict[str, str]:
    """The drill for the nails of each joint, by the hole in the table of joints; none where that has none."""
    holes = {row["joint"]: row["hole"] for row in result["joints"]}
    return {joint: f"drill {under(hole)[0]}; " if hole else "drill, " for joint, hole in holes.items()}


def test_a_tray_is_bored_as_its_joints_say() -> None:
    """Corners, long sides and ends; with no drill's size where no table has the hole."""
    told = {
        "Bore the corners": ("Corners", "hammer, punch"),
        "bore the long sides": ("Long sides to bottom", "gauge, hammer"),
        "Bore the ends level": ("Ends to bottom", "hammer"),
    }
    for result in (TRAY.answer(), TRAY.answer(stock_thickness="10 mm")):
        for words, (joint, more) in told.items():
            assert step(result, words)["tool"] == drills(result)[joint] + more
    assert "drill, " in drills(result).values()


def test_a_shelf_is_bored_as_its_joints_and_settings_say() -> None:
    """Nail holes and the clearance drill; what the wall is bored with is the plug's affair."""
    result = SHELF.answer(stock_thickness="12 mm", inside_width="300 mm")
    bored = [row["tool"] for row in result["order"] if "nail" in row["do"]]
    assert bored == [f"{drill}hammer, punch" for drill in drills(result).values()]
    assert "drill, " not in drills(result).values()
    assert step(result, "Bore the rail for its screws")["tool"] == f"drill {result['clear_drill']}"


def test_the_order_stands_while_the_nail_is_not_decided() -> None:
    """Only its drills are without a size."""
    order = settle(SHELF.piece, begun(SHELF.piece, **SHELF.givens | {"nails": "?"})).values["order"]
    assert [row["tool"] for row in order if "nail" in row["do"]] == ["drill, hammer, punch"] * 3


def test_the_wall_screws_are_bought_too() -> None:
    """As many as are counted; how long they must be is the wall's affair, and is left blank."""
    result = SHELF.answer()
    (row,) = result["screw_list"]
    assert (row["count"], row["length"]) == (result["screws"], None)
    assert row["nail"].startswith("No. 8 countersunk")
