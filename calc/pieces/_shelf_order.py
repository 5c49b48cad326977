"""The order of work for a wall shelf, each step with its tool and what the tool is set to."""

from calc.declare import Values
from calc.pieces._joints import drill
from calc.pieces._order import Step, glued_first, step


def order(m: Values) -> list[Step]:
    """Glue up; then everything across the grain before anything along it; then the curves; then nail, and hang it."""
    return glued_first(m, _across(m), _along(m), _curves(m), _together(m))


def _across(m: Values) -> list[Step]:
    drop, wide, deep = m["drop"], m["housing_wide"], m["housing_deep"]
    return [
        step("Saw the ends to length, both together", "crosscut saw", m["end_high"]),
        step("Saw shelf and rail to length", "crosscut saw", m["shelf_long"], m["rail_long"]),
        step("Knife the housings: from the foot, then as wide as the shelf is thick", "square, knife", drop, wide),
        step("Saw and chop the housings to the gauge line", "tenon saw, chisel", deep),
    ]


def _along(m: Values) -> list[Step]:
    return [
        step("Ends and shelf to width: ends, shelf", "rip saw, plane", m["depth"], m["shelf_deep"]),
        step("Rail to width", "rip saw, plane", m["rail_wide"]),
    ]


def _curves(m: Values) -> list[Step]:
    low, top = m["curve_low"], m["curve_up"]
    return [
        step("Find the round thing of this radius", "rule", m["radius"]),
        step("Mark where the curves begin: up from the foot, down from the top", "pencil", low, top),
        step("Mark where they end: out from the wall at foot and top", "pencil", m["foot_deep"], m["top_deep"]),
        step("Saw the curves off the line and smooth them, downhill to the grain", "coping saw, spokeshave"),
    ]


def _together(m: Values) -> list[Step]:
    clear = m.get("clear_drill")
    return [
        step("Bore the rail for its screws: in from each end, apart", f"drill {clear}" if clear else "drill",
             m["screw_in"], m["screw_gap"]),
        step("Sink the screw holes in front until the heads lie flush", "countersink"),
        step("Put it together dry; check that it is square", "square"),
        step("Bore the shelf, glue and nail it on the rail, back edges flush", _nailed(m, "shelf_to_rail")),
        step("Bore the ends and nail them to the shelf, no glue", _nailed(m, "ends_to_shelf")),
        step("Bore the ends and nail them to the rail, no glue", _nailed(m, "ends_to_rail")),
        step("Level it on the wall; mark, plug as local practice requires, and screw", "level, drill"),
    ]  # fmt: skip


def _nailed(m: Values, joint: str) -> str:
    return drill(m.get(joint), "hammer", "punch")
