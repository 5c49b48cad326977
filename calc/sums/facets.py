"""Facets: an edge rounded by flats: where each one starts, how steep it is, and the ridges that are left."""

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Count, Length, Limit
from calc.sums._facets import MOST, figure, proof, work

SIZE = Limit("0.5 mm", "300 mm")

SUM = Sum(
    id="facets",
    title="Edge rounded by flats",
    moment="mark-out",
    question="Where does each flat start when I round an edge with a plane?",
    asks=(
        "round over an edge with a hand plane",
        "round an edge without a moulding plane",
        "facets for a rounded edge",
        "elliptical edge on a table top",
        "chamfer lines before rounding",
        "how many flats for a round edge",
        "bullnose by hand",
        "gauge lines for a thumbnail edge",
        "how high are the ridges between flats",
    ),
    purpose=(
        "From how far the rounding reaches on face and edge, and the number of flats or the ridge allowed: the gauge "
        "lines, the slope and place of every flat, all touching the same curve, and the ridges left to take off."
    ),
    givens=(
        Length(
            name="width",
            label="Reach on the face",
            help="How far in from the edge the rounding begins, as if a rebate so wide were cut.",
            limit=SIZE,
        ),
        Length(
            name="depth",
            label="Reach down the edge",
            help="How far down from the face the rounding ends, as if a rebate so deep were cut.",
            limit=SIZE,
        ),
        Count(name="flats", label="Flats", help="How many flats to plane.", limit=Limit("1", str(MOST))),
        Length(
            name="allowed",
            label="Ridge allowed",
            help="The tallest ridge you mean to scrape or sand away; the fewest flats that do it are found.",
            limit=Limit("0.001 mm", "50 mm"),
        ),
    ),
    any_of=AnyOf(1, ("flats", "allowed")),
    answers=(
        Answer(name="flats", label="Flats", kind="count", help="The fewest that leave no taller ridge."),
        Answer(
            name="face_line", label="Line on the face, from the edge", kind="length", help="Where the first starts."
        ),
        Answer(name="edge_line", label="Line on the edge, from the face", kind="length", help="Where the last ends."),
        Answer(name="ridge", label="Tallest ridge left", kind="fine", help="Square to the curve, at an arris."),
        Answer(name="least_ridge", label="Lowest ridge left", kind="fine", help="Square to the curve, at an arris."),
        Answer(name="chamfer", label="Middle flat, off the face", kind="angle", help="Plane this one first."),
        Answer(name="chamfer_face", label="Its line on the face", kind="length", help="From the edge, uncut."),
        Answer(name="chamfer_edge", label="Its line on the edge", kind="length", help="From the face, uncut."),
        Answer(name="step", label="Step between flats, on a circle", kind="angle", help="Stretched with the curve."),
        Answer(
            name="rows",
            label="The flats, from face to edge",
            kind="rows",
            help="Lines on face and edge are those of each flat planed alone on the square corner.",
            columns=(
                Answer(name="flat", label="Flat", kind="count"),
                Answer(name="angle", label="Off the face", kind="angle"),
                Answer(name="on_face", label="Line on the face", kind="length"),
                Answer(name="on_edge", label="Line on the edge", kind="length"),
                Answer(name="starts_in", label="Starts, in from the edge", kind="length"),
                Answer(name="starts_down", label="Starts, down from the face", kind="length"),
                Answer(name="wide", label="Width of the flat", kind="length"),
            ),
        ),
    ),
    work=work,
    formulas=(
        Formula("step", "90 / (flats + 1)", "a quarter turn shared evenly"),
        Formula("face_line", "width * (1 - tan(step / 2))", "two tangents of a circle meet half a step from each"),
        Formula("edge_line", "depth * (1 - tan(step / 2))"),
        Formula("chamfer", "atan(depth / width)"),
        Formula("chamfer_face", "width * (2 - sqrt(2))"),
        Formula("chamfer_edge", "depth * (2 - sqrt(2))"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "An ellipse is a circle evenly stretched",
            "tangents stay tangents",
            "identity",
            "Of a round edge all ridges are alike; of a stretched one the tallest is told.",
        ),
        Source("Rounding by flats, the middle one first, then each arris", "", "common practice"),
    ),
    limits_of=(
        "A quarter of an ellipse from face to edge, at most 20 times as wide as deep or the reverse. For a full nose "
        "work each half apart."
    ),
    cautions=(
        Caution(
            "Plane across the grain first and along it after, so that the corners that break out are planed away; "
            "clamp the board, and keep fingers off the fresh arrises, which are sharp.",
            source="general hand-tool practice, from memory",
        ),
    ),
    example=Example(
        {"width": "12 mm", "depth": "8 mm", "flats": "3"},
        "The front edge of the comment-card box's lid, 16 mm ash, is rounded above so that it is kind to the hand: "
        "12 mm back on the face, 8 mm down the edge, in three flats.",
    ),
    carry_on=(
        Carry("bevel", {"angle": "chamfer"}, "Set a gauge to the middle flat"),
        Carry("ellipse", {}, "Mark out an oval for the top itself"),
    ),
)
