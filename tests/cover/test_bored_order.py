"""What is bored for nails and wall screws, as the order of work has it, and the screws to buy for the wall."""

from building import begun
from examples import Example

from calc.answers import Result
from calc.building.settle import settle
from calc.declare import Values

TRAY, SHELF = Example("splayed-tray"), Example("wall-shelf")


def step(result: Result, words: str) -> Values:
    """The step of the order of work that says this."""
    return next(row for row in result["order"] if words in row["do"])


def holes(result: Result) -> dict[str, object]:
    """The hole for the nails of each joint, as the table of joints has it."""
    return {row["joint"]: row["hole"] for row in result["joints"]}


def test_a_tray_is_bored_as_its_joints_say() -> None:
    """Corners, long sides and ends; a hole that no table has is left blank."""
    result = TRAY.answer()
    assert all(holes(result).values())
    told = {
        "Bore the corners": "Corners",
        "bore the long sides": "Long sides to bottom",
        "Bore the ends level": "Ends to bottom",
    }
    assert {joint: step(result, words)["hole"] for words, joint in told.items()} == holes(result)
    thin = TRAY.answer(stock_thickness="10 mm")
    assert holes(thin)["Corners"] is step(thin, "Bore the corners")["hole"] is None


def test_a_shelf_is_bored_as_its_joints_and_settings_say() -> None:
    """Nail holes, the clearance drill and the countersink; what the wall is bored with is the plug's affair."""
    result = SHELF.answer(stock_thickness="12 mm", inside_width="300 mm")
    assert all(holes(result).values())
    bored = [row["hole"] for row in result["order"] if "nail" in row["do"]]
    assert bored == list(holes(result).values())
    assert step(result, "Bore the rail for its screws")["tool"] == f"drill {result['clear_drill']}"
    assert step(result, "Sink the screw holes")["hole"] == result["head"]


def test_the_order_stands_while_the_nail_is_not_decided() -> None:
    """Only its holes are blank."""
    order = settle(SHELF.piece, begun(SHELF.piece, **SHELF.givens | {"nails": "?"})).values["order"]
    assert [row["hole"] for row in order if "nail" in row["do"]] == [None] * 3


def test_the_wall_screws_are_bought_too() -> None:
    """As many as are counted; how long they must be is the wall's affair, and is left blank."""
    result = SHELF.answer()
    (row,) = result["screw_list"]
    assert (row["count"], row["length"]) == (result["screws"], None)
    assert row["nail"].startswith("No. 8 countersunk")
