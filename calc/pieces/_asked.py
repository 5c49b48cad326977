"""What a piece asks of the sums, and how it says what to type instead."""

import math
from collections.abc import Mapping
from typing import Any

from calc.declare import Values
from calc.discover import find
from calc.errors import Refusal
from calc.remembered import remembered
from calc.show import plain


def up(size: Any) -> str:
    """A size to type, in millimetres, never less than is needed."""
    return f"{plain(math.ceil(size * 10) / 10, 1)} mm"


def down(size: Any) -> str:
    """A size to type, in millimetres, never more than is had."""
    return f"{plain(math.floor(size * 10) / 10, 1)} mm"


@remembered(512)
def answered(sum_id: str, **numbers: Any) -> Values:
    """Another sum's answers, kept by the numbers and their types: an exact one is never answered from a rounded one."""
    return find(sum_id).of(**numbers)


def ask(sum_id: str, field: str, names: Mapping[str, str], **numbers: Any) -> Values:
    """Another sum's answers; where it refuses, its own words at the field of ours that they concern."""
    try:
        return answered(sum_id, **numbers)
    except Refusal as refusal:
        raise Refusal(refusal.say, refusal.instead, names.get(refusal.field, field), source=refusal.source) from None
