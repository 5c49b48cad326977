"""The order of work for a splayed tray, each step with its tool and what the tool is set to."""

from calc.declare import Values
from calc.pieces._order import Step, glued_first, step


def order(m: Values) -> list[Step]:
    """Glue up; saw and bore across the grain, then plane along it; then nail, and fit the bottom last.

    The ends are sawn on a board with square edges: the line across its edge is that of the splay sum, whatever the
    edges are planed to afterwards.
    """
    return glued_first(m, _across(m), _along(m), _together(m))


def _across(m: Values) -> list[Step]:
    face, mark = m["face_cut"], m["square_mark"]
    holes = [
        step("Mark the hand holes on the outer face: middle down from its top edge, in from the end of that", "gauge",
             m["hand_mark"], m["hand_in"]),
        step("Bore both ends of each hand hole, saw and file between: bit, length", "bit, coping saw",
             m["hand_wide"], m["hand_long"]),
    ]  # fmt: skip
    return [
        step("Set a gauge for the line across the faces: run, rise", "bevel gauge", m["face_run"], m["face_rise"],
             face),
        step("Mark the line across the square edges off square", "second gauge", angle=mark),
        step("Saw sides and ends to the lines, longest edge: sides, ends", "crosscut saw", m["long_side"],
             m["end_side"], m["bevel"]),
        *(holes if m["handles"] == "holes" else []),
    ]  # fmt: skip


def _along(m: Values) -> list[Step]:
    told = "Plane both edges of sides and ends level: width up the face"
    bevel = step(told, "plane, bevel gauge", m["side_wide"], angle=m["lean"])
    square = step("Plane sides and ends to width, edges square", "plane", m["side_wide"])
    return [bevel if m["edges"] == "level" else square]


def _together(m: Values) -> list[Step]:
    return [
        step("Set the gauge to the lean: run, rise", "bevel gauge", m["lean_run"], m["lean_rise"], m["lean"]),
        step("Bore and nail the corners; test them inside with the gauge", "hammer, punch", angle=m["dihedral"]),
        step("Saw the bottom to the size of its upper face", "panel saw", m["bottom_long"], m["bottom_wide"]),
        step("Plane its end-grain edges to the lean, then its long edges; try it in from above", "block plane",
             angle=m["lean"]),
        step("Press it down till it is tight all round: its under face stands up by", "rule", m["bottom_up"]),
        step("Bore and nail it through the sides, no glue", "hammer, punch"),
        step("Clean off the corners; ease the arrises and the hand holes", "block plane, file"),
    ]  # fmt: skip
