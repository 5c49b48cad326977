"""A nail asked for: one of the tables, or the maker's own by its thickness."""

from calc.kinds import Length, Limit, Option
from calc.search import Search
from calc.sums._nails import named

NAIL = Search(
    name="nail",
    label="Nail",
    help="One of the tables: 6d common, 4d finish, 1 in wire brad 17 gauge.",
    options=tuple(Option(key, nail.name) for key, nail in named().items()),
    what="nail",
    by="size and kind, such as 6d common",
)
OWN = Length(
    name="own",
    label="Thickness of your own nail",
    help="Instead of a nail of the tables: measured across the shank with callipers.",
    limit=Limit("0.5 mm", "8 mm"),
)
