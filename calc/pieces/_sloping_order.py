"""The order of work for a sloping-lid box, each step with its tool and what the tool is set to."""

from calc.declare import Values
from calc.pieces._joints import drill
from calc.pieces._order import Step, glued_first, step

CLEAR = "drill that clears the screws chosen for the wall"


def order(m: Values) -> list[Step]:
    """Glue up; then everything across the grain before anything along it; then nail, and hang the lid last.

    A cut across the grain breaks out at its far edge, and what is planed along the grain afterwards takes that away.
    """
    return glued_first(m, _across(m), _along(m), _lid(m), _together(m), _hung(m))


def _across(m: Values) -> list[Step]:
    back, front, angle = m["back_height"], m["front_height"], m["angle"]
    return [
        step("Set the gauge: run, then rise square to it", "bevel gauge", m["set_run"], m["set_rise"], angle),
        step("Saw the sides: back edge, front edge, top end to the gauge", "crosscut saw", back, front, angle),
        step("Saw front and lid to length", "crosscut saw", m["front_long"], m["lid_wide"]),
        step("Saw back and bottom to length", "crosscut saw", m["back_high"], m["bottom_wide"]),
        step("Saw the battens to length", "crosscut saw", m["batten_long"]),
        step("Rabbet the front's ends: fence, depth", "rabbet plane", m["side_thickness"], m["rabbet"]),
    ]


def _along(m: Values) -> list[Step]:
    inner, outer, angle = m["front_inner"], m["front_outer"], m["angle"]
    return [
        step("Bevel the front's top edge: inner height, outer height", "plane", inner, outer, angle),
        step("Bevel the lid's back edge: upper face, under face", "plane", m["lid_long"], m["lid_under"], angle),
        step("Sides and back to width", "rip saw, plane", m["depth"], m["back_wide"]),
        step("Bottom to width, try it in; battens to width", "rip saw, plane", m["bottom_deep"], m["batten_width"]),
        *_wall(m),
    ]


def _wall(m: Values) -> list[Step]:
    """The holes by which the box hangs, in the middle of what stands above the lid and of what hangs below."""
    places = {"down from its top": m["crest"], "up from its foot": m["tail"]}
    told = [(place, size / 2) for place, size in places.items() if size]
    if not told:
        return [step("Bore the back for the wall's screws, inside the box", CLEAR)]
    words = f"Bore the back for the wall's screws: {', '.join(place for place, _ in told)}"
    return [step(words, CLEAR, *(size for _, size in told))]


def _lid(m: Values) -> list[Step]:
    down, begins = m["slot_down"], m["slot_begins"]
    return [
        step("Saw the strip off the lid, clean both edges: strip, moving lid", "rip saw", m["strip"], m["moving"]),
        step("Place the slot: middle down from the sawn edge, end in from the lid's end", "gauge", down, begins),
        step("Bore and chop the slot: length, width", "drill, chisel", m["slot_length"], m["slot_width"]),
        step("Let in the hinges at the saw cut, half the knuckle deep: in from the lid's ends, each so long",
             "knife, chisel", m["hinge_in"], m["hinge_size"]),
    ]  # fmt: skip


def _together(m: Values) -> list[Step]:
    return [
        step("Bore and nail the front to the sides, no glue", drill(m.get("front_to_sides"), "hammer", "punch")),
        step("Nail the bottom in, glue along the front only", "hammer, punch"),
        step("Nail the back on, glue along the sides' edges only; check for square", "hammer, punch"),
        step("Nail the strip, no glue, one nail into each side: nail line from the back, on the upper face",
             "hammer, punch", m["nail_line"]),
        step("Nail the back to the strip from behind, bit and nails down the slope",
             drill(m.get("back_to_strip"), "hammer"), angle=m["angle"]),
    ]  # fmt: skip


def _hung(m: Values) -> list[Step]:
    gap, inset = m["clearance"], m["batten_in"]
    return [
        step("Nail the battens under the moving lid, no glue: in from its sawn edge, in from its ends", "hammer", gap,
             inset),
        step("Bore for the hinge screws and hang the lid; see that the battens clear the front as it opens",
             drill(m.get("hinges_to_lid"), "screwdriver")),
    ]  # fmt: skip
