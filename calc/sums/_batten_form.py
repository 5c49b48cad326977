"""What batten asks for, and what it tells."""

from dataclasses import replace

from calc.declare import Answer
from calc.kinds import Choice, Count, Given, Length, Limit, Option
from calc.sums._nail_form import GIVENS as NAILS

THICK = Limit("3 mm", "60 mm")


def _length(name: str, label: str, help: str, limit: Limit, default: str = "", why: str = "") -> Length:
    return Length(
        name=name, label=label, help=help, limit=limit, default=default, default_why=why, optional=not default
    )


GIVENS: tuple[Given, ...] = (
    Length(
        name="width",
        label="Lid across the grain",
        help="Of the moving lid, the way the battens run: from the sawn edge to the front end.",
        limit=Limit("30 mm", "3 m"),
    ),
    Length(name="thickness", label="Lid thickness", help="Measured square to the face.", limit=THICK),
    _length(
        "movement",
        "Movement across the grain",
        "How much the whole width swells or shrinks: the sum called movement finds it.",
        Limit("0 mm", "60 mm"),
    ),
    Choice(
        name="way",
        label="It will",
        help="Does the lid swell, shrink, or go both ways with the seasons?",
        default="either",
        options=(Option("either", "Move both ways"), Option("swells", "Swell"), Option("shrinks", "Shrink")),
    ),
    _length(
        "near",
        "Kept clear at the hinge end",
        "From the sawn edge to the batten; the same at the front unless you say otherwise.",
        Limit("0 mm", "500 mm"),
        "15 mm",
        "common practice: clear of hinges and of what the lid shuts on",
    ),
    _length("far", "Kept clear at the front end", "From the batten to the lid's front end.", Limit("0 mm", "500 mm")),
    _length(
        "front",
        "Sawn edge to the inside of the front",
        "Along the lid's under face, where it shuts on a box: then the batten is short enough to swing past.",
        Limit("20 mm", "2 m"),
    ),
    _length(
        "clearance",
        "Clearance as it swings",
        "Between the batten's lower corner and the front's inner arris.",
        Limit("0 mm", "20 mm"),
        "3 mm",
        "common practice: free in damp weather too",
    ),
    _length(
        "kerf",
        "Kerf",
        "The gap at the hinge, over whose middle the pin stands.",
        Limit("0 mm", "6 mm"),
        "1.5 mm",
        "a back saw with its set",
    ),
    _length("batten_thickness", "Thickness of the batten", "Leave it empty for the lid's own thickness.", THICK),
    _length("batten_width", "Width of the batten", "Leave it empty for twice its thickness.", Limit("6 mm", "200 mm")),
    Count(
        name="count",
        label="Nails in a batten",
        help="One is fast, the others have oval holes; an odd number has one in the middle.",
        default="3",
        default_why="common practice: one in the middle and one near each end",
        limit=Limit("2", "30"),
    ),
    Choice(
        name="fast",
        label="Fast nail",
        help="Which one does not slide?",
        default="middle",
        default_why="the least movement at the ends",
        options=(Option("middle", "In the middle"), Option("near", "At the hinge end")),
    ),
    _length(
        "end",
        "End of the batten to the first nail",
        "Ten nail diameters and more, or the end splits.",
        Limit("3 mm", "300 mm"),
        "25 mm",
        "common practice: ten diameters of a nail of 2.5 mm",
    ),
    *(one for one in NAILS if one.name in ("kind", "wood")),
    *(
        replace(one, default="2 mm", default_why="common practice for thin lids")
        for one in NAILS
        if one.name == "margin"
    ),
    _length(
        "own_shank",
        "Thickness of your own nail or screw",
        "For the oval holes; leave it empty for the nail that is answered.",
        Limit("0.5 mm", "8 mm"),
    ),
)
ANSWERS = (
    Answer(name="long", label="Length of the batten", kind="length"),
    Answer(name="batten_width", label="Width of the batten", kind="length", help="Twice its thickness, unless given."),
    Answer(name="batten_thickness", label="Thickness of the batten", kind="length", help="The lid's, unless given."),
    Answer(name="nail", label="Nail", kind="text"),
    Answer(name="nail_length", label="Length of the nail", kind="length", help="The longest needed that stays inside."),
    Answer(name="into", label="In the lid", kind="length", help="By the sum called nail."),
    Answer(name="left", label="Lid beyond the point", kind="length", help="By the sum called nail."),
    Answer(name="oval", label="Longest oval hole", kind="fine"),
    Answer(name="shank", label="Width of the oval holes", kind="fine", help="The shank's own thickness, sliding."),
    Answer(
        name="holes",
        label="Holes from the hinge end",
        kind="rows",
        columns=(
            Answer(name="hole", label="Hole", kind="count"),
            Answer(name="mark", label="Mark on the batten", kind="length"),
            Answer(name="moves", label="Lid moves there", kind="fine"),
            Answer(name="oval", label="Hole in the batten, long", kind="fine"),
            Answer(name="grows", label="Lengthened", kind="text"),
        ),
    ),
    Answer(name="moves", label="Most the lid moves at a nail", kind="fine", help="One way, as far from the fast nail."),
    Answer(name="times", label="Ways it moves", kind="count", help="Two where the seasons take it both ways."),
    Answer(name="spacing", label="From nail to nail", kind="length"),
    Answer(name="far", label="Kept clear at the front end", kind="length", help="As given, or as the front wants it."),
    Answer(name="swing", label="Hinge pin to the front's inner arris", kind="length"),
    Answer(name="reaches", label="Sawn edge to where the batten must end", kind="length"),
    Answer(name="hole", label="Widest hole for the nail in the lid", kind="fine", help="By the sum called nail."),
    Answer(name="drill", label="Drill for it", kind="text"),
    Answer(name="thickness_from", label="The nail's thickness is from", kind="text"),
)
