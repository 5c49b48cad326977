"""What a sloping-lid box answers, the most wanted first."""

from calc.declare import Answer


def _size(name: str, label: str, help: str = "", kind: str = "length") -> Answer:
    return Answer(name=name, label=label, kind=kind, help=help)


THICK = {"side": "sides", "front": "front", "lid": "lid", "back": "back", "bottom": "bottom", "batten": "battens"}


def _rows(name: str, label: str, columns: dict[str, tuple[str, str]], help: str = "") -> Answer:
    made = tuple(Answer(name=key, label=told, kind=kind) for key, (told, kind) in columns.items())
    return Answer(name=name, label=label, kind="rows", help=help, columns=made)


PARTS = _rows(
    "parts",
    "Parts",
    {
        "part": ("Part", "text"),
        "count": ("Count", "count"),
        "length": ("Along the grain", "length"),
        "width": ("Across the grain", "length"),
        "thickness": ("Thick", "length"),
        "grain": ("Grain runs", "text"),
        "bevel": ("Angle", "angle"),
        "cut": ("Ends and edges", "text"),
        "short": ("Shorter face or edge", "length"),
        "strips": ("Widths of stock", "count"),
        "joins": ("Joins", "text"),
    },
    "Finished sizes. Strip and moving lid are sawn out of the lid.",
)
JOINTS = _rows(
    "joints",
    "Joints",
    {
        "joint": ("Joint", "text"),
        "nail": ("Nail", "text"),
        "length": ("Length", "length"),
        "hole": ("Hole, at most", "fine"),
        "count": ("Nails", "count"),
        "glue": ("Glue", "text"),
    },
)
NAILS = _rows(
    "nail_list",
    "Nails to buy",
    {"nail": ("Nail", "text"), "length": ("Length", "length"), "count": ("Count", "count")},
)
BUY = _rows(
    "buy",
    "Board to cut it from",
    {"thickness": ("Thick", "length"), "width": ("Wide", "length"), "length": ("Run of board", "length")},
    "Before waste is added.",
)
ORDER = _rows(
    "order",
    "Order of work",
    {
        "do": ("Do", "text"),
        "tool": ("Tool", "text"),
        "setting": ("Setting", "length"),
        "second": ("Second setting", "length"),
        "angle": ("Angle", "angle"),
    },
    "Across the grain before along it.",
)
ANSWERS = (
    _size("set_run", "Bevel gauge, run", "The nearest pair of marks on your rule."),
    _size("set_rise", "Bevel gauge, rise", "Square to the run."),
    _size("angle", "Slope of the lid", kind="angle"),
    _size("lid_long", "Lid down the slope, upper face", "The size to cut, before the strip is sawn off."),
    _size("lid_wide", "Lid side to side", "Along its grain."),
    _size("lid_strips", "Widths of stock in the lid", "Glued up edge to edge.", "count"),
    _size("strip", "Fixed strip, upper face", "Wide enough for the hinge leaf and a line of nails."),
    _size("moving", "Moving lid down the slope", "The same on both faces."),
    PARTS,
    JOINTS,
    ORDER,
    BUY,
    NAILS,
    _size("board_feet", "Board feet to buy", "Waste added.", "board-feet"),
    _size("cost", "Cost of the wood", "By exact measure, waste added.", "money"),
    _size("nail_count", "Nails in all", "By their spacing, two at least to a joint.", "count"),
    _size("volume", "Inside volume", kind="volume"),
    _size("back_height", "Height of the back edge"),
    _size("front_height", "Height of the front edge"),
    _size("front_inner", "Front, height at its inner face", "The size to cut, before the bevel."),
    _size("front_outer", "Front, height at its outer face"),
    _size("proud", "Front stands proud of the sides"),
    _size("lid_under", "Lid down the slope, under face"),
    _size("lid_bevel", "Taken by the back bevel"),
    _size("outside", "Outside width", "Of front and back."),
    _size("back_high", "Back from crest to tail"),
    _size("bottom_deep", "Bottom, back to front"),
    _size("bottom_wide", "Bottom, side to side"),
    _size("strip_under", "Fixed strip, under face"),
    _size("nail_line", "Nail line on the strip", "From the back, on the upper face."),
    _size("gain", "Gain depth of the hinges", kind="fine"),
    _size("batten_long", "Length of the battens"),
    _size("swing", "Hinge pin to the front's inner arris"),
    _size("batten_in", "Battens in from the ends of the lid"),
    _size("slot_length", "Length of the slot", "Over its round ends."),
    _size("slot_width", "Width of the slot", "The drill's own diameter."),
    Answer(name="drill", label="Drill for the slot", kind="text"),
    _size("slot_down", "Slot's middle, down from the sawn edge", "On the moving lid."),
    _size("slot_begins", "Slot begins, in from the lid's end"),
    _size("slot_room", "Between the battens"),
    _size("slot_spare", "Wood between slot and hinge leaf or front", "The nearer of the two."),
    Answer(name="size_from", label="Where the size of what goes in comes from", kind="text"),
    _size("rabbet", "Depth of the front's rabbet", "Half the front's thickness, unless given."),
    *(
        _size(f"{part}_thickness", f"Thickness of the {told}", "The stock's own, unless given.")
        for part, told in THICK.items()
    ),
)
