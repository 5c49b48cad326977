"""The works behind the figures: what stands for S10 and its like, as `data/SOURCES.md` lists them."""

import re
from functools import cache

from published import HERE, Check

from calc import tables

REMARK = re.compile(r", stored|, quoted|: | \((?![\dL])")
"""Where the name of a work ends in the list and what was seen of it begins."""


def works(check: Check) -> list[str]:
    """The works a check's figure was read in, by name; what its source says where it names none."""
    named = list(dict.fromkeys(re.findall(r"\bS\d\d[a-z]?\b", check.source)))
    if named:
        return [name(each) for each in named]
    return ["figures from memory" if "memory" in check.basis else check.source or "worked out here"]


def name(found: str) -> str:
    """The work an id stands for, as the sums name it or, for one that only the checks use, as it is listed here."""
    known = {row["id"]: row["work"] for row in tables.rows("sources")}
    return known.get(found) or REMARK.split(_listed()[found])[0]


@cache
def _listed() -> dict[str, str]:
    rows = re.findall(r"^\| (S\w+) \| (.+?) \|", (HERE / "data" / "SOURCES.md").read_text("utf-8"), re.MULTILINE)
    return dict(rows)
