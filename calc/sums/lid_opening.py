"""Lid-opening: how wide a hinged lid opens, whether it stays there by itself, and a chain or prop for it."""

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Angle, Length, Limit
from calc.sums._lid_opening import FACE, STRIP, WALL, proof, work
from calc.sums._lid_opening_figure import figure

SUM = Sum(
    id="lid-opening",
    title="Lid opening",
    moment="fit",
    question="How wide does the lid open, and does it stay open?",
    asks=(
        "how wide does the lid open",
        "will the lid stay open by itself",
        "lid falls shut",
        "length of a lid chain",
        "length of a prop for a lid",
        "lid stay",
        "does the lid hit the wall",
        "how high may the back be for the lid to lean on",
        "room above a box to open its lid",
    ),
    purpose="From the strip, the lid and the back that rises behind them: how far the lid turns and what stops it, "
    "whether its weight is past the hinge there, and how long a chain or prop must be.",
    givens=(
        Length(
            name="strip",
            label="Fixed strip, upper face",
            help="From the back's face to the saw cut, down the slope; nothing where a level lid is hinged there.",
            limit=Limit("0 mm", "500 mm"),
        ),
        Length(
            name="length",
            label="Moving lid along the slope",
            help="From the saw cut to the lid's front end, on the upper face.",
            limit=Limit("20 mm", "2 m"),
        ),
        Length(
            name="thickness", label="Lid thickness", help="Measured square to the face.", limit=Limit("3 mm", "60 mm")
        ),
        Angle(
            name="angle",
            label="Slope of the lid",
            help="The slope from level of the shut lid, in degrees or as 1 in 7.",
            default="0",
            default_why="a level lid",
            limit=Limit("0", "60"),
        ),
        Length(
            name="crest",
            label="Back rises above the lid",
            help="Plumb, from the upper face of the strip where it meets the back, to the back's top.",
            limit=Limit("0 mm", "1 m"),
        ),
        Length(
            name="height",
            label="Back above the hinge line",
            help="Instead of that: plumb, from the level of the hinge pin to the back's top.",
            limit=Limit("0 mm", "1.5 m"),
        ),
        Length(
            name="kerf",
            label="Kerf",
            help="The gap between strip and moving lid, over whose middle the pin stands.",
            default="1.5 mm",
            default_why="a back saw with its set",
            limit=Limit("0 mm", "6 mm"),
        ),
        Length(
            name="behind",
            label="Back's face to the wall",
            help="The thickness of the back and any gap, where the box hangs on a wall; else leave it empty.",
            optional=True,
            limit=Limit("1 mm", "1 m"),
        ),
        Angle(
            name="keep",
            label="Lean that counts as safe",
            help="How far past its balance the lid must lean to be said to stay open.",
            default="5",
            default_why="common practice: a knock or a draught does not shut it",
            limit=Limit("0", "30"),
        ),
        Angle(
            name="hold",
            label="Opening at which it is held",
            help="For the chain or prop; leave empty for as little as stays open, or as wide as it goes.",
            optional=True,
            limit=Limit("10", "180"),
        ),
        Length(
            name="fix",
            label="Chain or prop from the hinge line",
            help="Down the under face of the lid, and the same along the top of the side; else a third of the lid.",
            optional=True,
            limit=Limit("5 mm", "2 m"),
        ),
    ),
    any_of=AnyOf(1, ("crest", "height")),
    answers=(
        Answer(name="opening", label="Opens to", kind="angle", help="Turned from shut."),
        Answer(name="stays", label="Stays open by itself", kind="text"),
        Answer(name="meets", label="Stopped by", kind="text"),
        Answer(name="lean", label="Lean past upright", kind="angle", help="Of the upper face, as wide as it goes."),
        Answer(name="balance", label="Lean at which it balances", kind="angle", help="Its middle is over the pin."),
        Answer(name="spare", label="Lean past that balance", kind="angle", help="Less than nothing falls shut."),
        Answer(name="tie", label="Chain or prop between its fixings", kind="length"),
        Answer(name="tie_is", label="It is", kind="text"),
        Answer(name="hold", label="Opening at which it is held", kind="angle", help="Least that stays, or as wide."),
        Answer(name="fix", label="Chain or prop from the hinge line", kind="length", help="On lid and side alike."),
        Answer(name="touch_up", label="Touches above the hinge line", kind="length", help="Where a felt pad goes."),
        Answer(name="touch_across", label="Touches behind the hinge line", kind="length", help="Measured level."),
        Answer(name="rises", label="Room above the hinge line", kind="length", help="The highest a corner swings."),
        Answer(name="height", label="Back above the hinge line", kind="length"),
        Answer(name="crest", label="Back rises above the lid", kind="length"),
        Answer(name="across", label="Back to the hinge line", kind="length", help="Measured level."),
        Answer(name="reach", label="Pin to the lid's end", kind="length"),
    ),
    work=work,
    formulas=(
        Formula("across", "(strip + kerf / 2) * cos(angle)", "the pin is over the middle of the kerf"),
        Formula("height", "crest + (strip + kerf / 2) * sin(angle)"),
        Formula("crest", "height - (strip + kerf / 2) * sin(angle)", within=1e-6),
        Formula("reach", "kerf / 2 + length"),
        Formula("lean", "atan(touch_across / touch_up)", "the upper face lies on a line through the pin"),
        Formula("opening", "90 + angle + lean"),
        Formula("balance", "atan(thickness / (kerf + length))", "half the thickness against half the length"),
        Formula("spare", "lean - balance", within=1e-7),
        Formula("tie", "2 * sqrt(fix ** 2 + thickness ** 2) * sin(hold / 2)", "a chord about the pin"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "Moments about the hinge pin; a chord is twice its radius times the sine of half the angle", "", "identity"
        ),
        Source("Five degrees past balance; chain a third of the way down the lid", "", "common practice"),
    ),
    limits_of="A lid of even thickness, alone: a heavy pull, lip or batten moves its balance. The pin stands level "
    "with the upper faces, and the hinge itself must open as far. Stiff hinges and worn ones differ.",
    cautions=(
        Caution(
            "A lid that falls shut hurts fingers: fit the prop, or a stay that holds it, where children reach it.",
            lambda v: v["spare"] < v["keep"],
            "common practice",
        ),
        Caution("Keep fingers clear of the hinge side and of the back while it swings.", None, "common practice"),
        Caution(
            "The lid bears on the wall and not on the box, and the hinge takes the strain: fit a chain that stops it.",
            lambda v: v["meets"] == WALL,
            "common practice",
        ),
        Caution(
            "The lid's end meets the back below its top: it will mark it. A chain or a felt pad spares both.",
            lambda v: v["meets"] == FACE,
            "common practice",
        ),
        Caution(
            "The lid turns right over on to its strip: see that the hinges open so far, or stop it with a chain.",
            lambda v: bool(v["strip"]) and (v["meets"] == STRIP or v["opening"] > 175),
            "common practice",
        ),
        Caution(
            "The lid turns right over behind its hinge: see that the hinges open so far, or stop it with a chain.",
            lambda v: not v["strip"] and v["opening"] > 175,
            "common practice",
        ),
    ),
    example=Example(
        {
            "strip": "32 mm",
            "length": "165 mm",
            "thickness": "16 mm",
            "angle": "1 in 3",
            "crest": "40 mm",
            "behind": "16 mm",
        },
        "The lid of the comment-card box, hung on the wall of the reading room, swings up against its own back.",
    ),
    carry_on=(Carry("hang", {}, "What the fixings on the wall must hold"),),
)
