"""Slot: for a folded note, a coin or a card, bored at the ends and chopped out between."""

from fractions import Fraction

from calc.declare import Carry, Caution, Example, Formula, Source, Sum, Values
from calc.errors import Refusal
from calc.sums import _slot_form as form
from calc.sums import _slot_holes as holes
from calc.sums._money import DISAGREE, things
from calc.sums._slot_drawing import figure
from calc.tables import CHECK


def work(
    what: str,
    length: Fraction | None,
    width: Fraction | None,
    thickness: Fraction | None,
    halved: int,
    narrowed: int,
    loft: Fraction,
    leads: str,
    clearance: Fraction,
    ease: Fraction,
    drills: str,
    web: Fraction,
    lid: Fraction | None,
    start: Fraction | None,
    clear_from: Fraction | None,
    clear_to: Fraction | None,
) -> Values:
    """What goes in, folded; the slot that lets it; the holes that start the slot; where they are marked."""
    if halved + narrowed and what in things() and not things()[what].folds:
        raise Refusal("a coin does not fold", "set both folds to 0", "halved" if halved else "narrowed")
    item = holes.thing(what, length, width, thickness)
    folds = "halved" if halved else "narrowed" if narrowed else ""
    packet = holes.folded(item, halved, narrowed, loft, leads)
    slot = holes.cut(packet["side"], packet["thick"], clearance, ease, drills, folds)
    bored = holes.holes(slot["slot_length"], slot["slot_width"], web)
    found = {**item, **packet, **slot, **bored, **holes.placed(slot["slot_length"], lid, start, clear_from, clear_to)}
    return {**found, "centres": holes.centres(found)}


def proof(v: Values) -> dict[str, float]:
    """The wood bored and the wood left between fill the slot; the sheet folded keeps its area."""
    bored = v["holes"] * v["slot_width"] + v["gaps"] * v["waste"]
    marks = [row["mark"] for row in v["centres"]]
    sheet = v["item_length"] * v["item_width"]
    return {
        "holes and the wood between fill the slot": float(bored - v["slot_length"]) / float(v["slot_length"]),
        "the last mark is half a drill from the far end": float(
            (v["begins"] or 0) + v["slot_length"] - marks[-1] - v["slot_width"] / 2
        ),
        "all layers together have the area of the sheet": float(
            v["folded_length"] * v["folded_width"] * v["layers"] - sheet
        )
        / float(sheet),
        "the thing is no wider than the slot": max(0.0, float(v["thick"] - v["slot_width"])),
    }


SUM = Sum(
    id="slot",
    title="Slot",
    moment="fit",
    question="How big a slot for a note, a coin or a card?",
    asks=(
        "note won't fit the slot",
        "slot for a folded note",
        "coin slot size",
        "how wide a slot",
        "slot for a card",
        "which drill for a slot",
        "hole centres for a slot",
        "can a finger get in",
        "money box slot",
        "slot clear of the battens",
    ),
    purpose=(
        "From what goes in and how it is folded: the slot, the drill for its ends, hole centres as running marks, "
        "and whether a finger gets in."
    ),
    givens=form.GIVENS,
    answers=form.ANSWERS,
    work=work,
    formulas=(
        Formula("folded_length", "item_length / 2 ** halved"),
        Formula("folded_width", "item_width / 2 ** narrowed"),
        Formula("layers", "2 ** (halved + narrowed)"),
        Formula("deep", "folded_length + folded_width - side", "the other side of the folded thing"),
        Formula("thick", "layers * ply"),
        Formula("slot_length", "side + 2 * clearance"),
        Formula("room", "thick + 2 * ease", "the drill is the next that is no thinner"),
        Formula("run", "slot_length - slot_width", "half a drill in from each end"),
        Formula("gaps", "max(1, floor(run / (slot_width + web)))"),
        Formula("holes", "gaps + 1"),
        Formula("pitch", "run / gaps"),
        Formula("waste", "pitch - slot_width"),
        Formula("ends", "begins + slot_length"),
        Formula("clear_low", "begins - clear_from"),
        Formula("clear_high", "clear_to - ends"),
        Formula("round_takes", "slot_width / 2 - sqrt((slot_width / 2) ** 2 - (thick / 2) ** 2)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "United States Mint, Coin Specifications; pages quoting the Bureau of Engraving and Printing",
            "",
            "read",
            "US coins and notes.",
        ),
        Source(
            "Decision ECB/2003/4; Croatian National Bank; Regulation (EC) 975/98",
            "",
            "read",
            "Euro notes and the 1 euro coin.",
        ),
        Source(
            "An encyclopedia's table of UK coins; pages quoting the Royal Mint",
            "",
            "read",
            "The 1p is printed 20.03 and 20.3 mm: the larger is taken.",
        ),
        Source(
            "Notes of the UK, Canada, Japan, Australia; Europa series 100 and 200; cards",
            "",
            "memory",
            "Measure one before you cut.",
        ),
        Source("IEC 60529, jointed test finger, 12 mm", "", "memory"),
        Source("Clearances, spring of folded paper, wood between holes, drills on sale", "", "common practice"),
    ),
    cautions=(
        Caution(
            "Clamp the lid with waste wood under it, keep both hands behind the chisel's edge, and chop from "
            "both faces."
        ),
        Caution(
            "Sources disagree about a size of this coin: the larger is taken.", lambda v: DISAGREE in v["size_from"]
        ),
        Caution(
            "This size is from memory and not from a source: measure one before you cut.",
            lambda v: CHECK in v["size_from"],
        ),
        Caution(
            "A finger of 12 mm gets into this slot (the test finger of IEC 60529, its size from memory); a "
            "child's is thinner.",
            lambda v: v["slot_width"] >= holes.FINGER,
        ),
        Caution(
            "The round ends catch the corners of what goes in: chop the ends square, or give more clearance "
            "at each end.",
            lambda v: v["round_takes"] > v["clearance"],
        ),
        Caution(
            "The two end holes would run into each other: bore one, and chop out the rest.", lambda v: v["waste"] < 0
        ),
        Caution(
            "Less wood is left between the two end holes than the least you gave, and the bit wanders: bore one, and "
            "chop out the rest.",
            lambda v: 0 <= v["waste"] < v["web"],
            "common practice",
        ),
        Caution(
            "The length you gave is the shorter side: folds that halve the length halve that.",
            lambda v: v["what"] == "own" and v["item_length"] < v["item_width"],
        ),
        Caution(
            "The slot runs into a batten: move either, or fold what can be folded once more.",
            lambda v: any(v[name] is not None and v[name] < 0 for name in ("clear_low", "clear_high")),
        ),
        Caution(
            "Your own length and width are not used: choose “My own size” to use them.",
            lambda v: v["what"] != "own" and (v["length"] or v["width"]) is not None,
        ),
    ),
    carry_on=(Carry("nail", {}, "Nail the battens so that no point comes through"),),
    limits_of=(
        "Flat things up to 500 mm, folded in half up to three times each way; a slot no wider than 40 mm. It does "
        "not say what a thief could do."
    ),
    example=Example(
        {
            "what": "own",
            "length": "5 in",
            "width": "3 in",
            "halved": "1",
            "thickness": "0.25 mm",
            "lid": "12 in",
            "clear_from": "3 in",
            "clear_to": "9 in",
        },
        "A comment card of 5 in by 3 in, folded once, is to go through the lid of the box between its two battens.",
    ),
)
