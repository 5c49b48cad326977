"""The order of work for a splayed tray, each step with its tool and what the tool is set to."""

from calc.declare import Values
from calc.pieces._joints import drill
from calc.pieces._order import Step, glued_first, step

INNER = {"butt": "farther out on the inner face", "mitre": "farther in on the inner face"}
"""Which way the line across an edge runs from the outer face: a butted side is longer inside, a mitred one shorter."""


def order(m: Values) -> list[Step]:
    """Glue up and rip; saw and bore across the grain, then plane along it; then nail, and fit the bottom last.

    The ends are sawn on a board with square edges: the line across its edge is that of the splay sum, whatever the
    edges are planed to afterwards.
    """
    return glued_first(m, _marked(m), _across(m), _along(m), _together(m), _bottom(m))


def _marked(m: Values) -> list[Step]:
    return [
        step("Rip sides and ends to width, edges planed square", "rip saw, plane", m["blank_wide"]),
        step("Crosscut them no shorter than: sides, ends", "crosscut saw", m["long_blank"], m["end_blank"]),
        step("Set a gauge for the line across the faces: run, rise", "bevel gauge", m["face_run"], m["face_rise"],
             m["face_cut"]),
        step("Mark each outer face, wider above, along its top arris: sides, ends", "bevel gauge, knife",
             m["long_side"], m["end_side"], m["face_cut"]),
        _finely(m, "edge", "Set a second gauge for the line across the square edges", m["square_mark"]),
    ]  # fmt: skip


def _across(m: Values) -> list[Step]:
    holes = [
        step("Mark the hand holes on the outer face: middle down from its top edge, in from the end of that", "gauge",
             m["hand_mark"], m["hand_in"]),
        step("Bore both ends of each hand hole, saw and file between: bit, length", "bit, coping saw",
             m["hand_wide"], m["hand_long"]),
    ]  # fmt: skip
    told = f"Carry the lines over both edges, {INNER[m['corners']]}; saw to them"
    return [step(told, "knife, crosscut saw", angle=m["bevel"]), *(holes if m["handles"] == "holes" else [])]


def _along(m: Values) -> list[Step]:
    lean = step("Set the gauge to the lean: run, rise", "bevel gauge", m["lean_run"], m["lean_rise"], m["lean"])
    told = "Plane both edges of sides and ends level, sloping alike: width up the face"
    level = step(told, "plane, bevel gauge", m["side_wide"], angle=m["lean"])
    return [lean, level] if m["edges"] == "level" else [lean]


def _together(m: Values) -> list[Step]:
    return [
        step("Bore the corners level, along the length of the ends, and nail them",
             drill(m.get("corner_joint"), "hammer", "punch")),
        _finely(m, "corner", "Test the corners inside, past square by the second gauge", m["dihedral"]),
    ]  # fmt: skip


def _bottom(m: Values) -> list[Step]:
    eased = "the arrises and the hand holes" if m["handles"] == "holes" else "the arrises"
    return [
        step("Saw the bottom to the size of its upper face", "panel saw", m["bottom_long"], m["bottom_wide"]),
        step("Plane its end-grain edges to the lean, then its long edges; try it in from above", "block plane",
             angle=m["lean"]),
        step("Press it down till it is tight all round: its under face above the lower inner arrises by", "rule",
             m["bottom_up"]),
        step("Mark its nail line up the outer faces from their lower arris; bore the long sides level and nail",
             drill(m.get("long_to_bottom"), "gauge", "hammer"), m["nail_line"]),
        step("Bore the ends level on that line and nail them too; no glue", drill(m.get("end_to_bottom"), "hammer")),
        step(f"Clean off the corners; ease {eased}", "block plane, file"),
    ]  # fmt: skip


def _finely(m: Values, gauge: str, told: str, angle: object) -> Step:
    """A gauge set by run and rise; a square, where no two marks of the rule come so near square."""
    run, rise = m[f"{gauge}_run"], m[f"{gauge}_rise"]
    return step(f"{told}: run, rise" if run else f"{told}: so little that a square does", "second gauge", run, rise,
                angle)  # fmt: skip
