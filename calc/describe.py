"""A declaration as plain JSON values: the one public description, for page, help, completion and search."""

from typing import Any

from calc import formula
from calc.building.size import Size
from calc.declare import Answer, Sum
from calc.kinds import Choice, Given, Number, Text
from calc.rows import Rows
from calc.search import Search
from calc.typed.scales import SCALES


def describe(one: Sum) -> dict[str, Any]:
    """Everything a page or a machine needs to know of a sum before it is answered."""
    return {
        "id": one.id,
        "title": one.title,
        "moment": one.moment,
        "question": one.question,
        "asks": list(one.asks),
        "purpose": one.purpose,
        "limits_of": one.limits_of,
        "givens": [given(each) for each in one.givens],
        "any_of": {"count": one.any_of.count, "names": list(one.any_of.names)} if one.any_of else None,
        "answers": [answer(each) for each in one.answers],
        "formulas": [
            {
                "name": line.name,
                "label": one.labels[line.name],
                "text": line.text,
                "note": line.note,
                "letters": formula.letters(line.text, one.labels),
            }
            for line in one.formulas
        ],
        "sources": [
            {"work": each.work, "where": each.where, "basis": each.basis, "note": each.note} for each in one.sources
        ],
        "cautions": [{"say": each.say, "source": each.source, "always": each.when is None} for each in one.cautions],
        "example": {"givens": dict(one.example.givens), "story": one.example.story},
        "carry_on": [{"to": each.to, "give": dict(each.give), "why": each.why} for each in one.carry_on],
    }


def given(one: Given) -> dict[str, Any]:
    """One entry: how it is asked for, what it may be."""
    told: dict[str, Any] = {
        "name": one.name,
        "label": one.label,
        "kind": one.kind,
        "help": one.help,
        "default": one.default,
        "default_why": one.default_why,
        "optional": one.optional,
        "limit": {
            "low": one.limit.low,
            "high": one.limit.high,
            "above": one.limit.above,
            "below": one.limit.below,
            "text": one.limit.text(),
        },
    }
    if isinstance(one, Choice):
        told["options"] = [{"key": option.key, "label": option.label} for option in one.options]
    if isinstance(one, Search):
        told["search"] = True
    if isinstance(one, Rows):
        told["columns"] = [given(column) for column in one.columns]
    if isinstance(one, Number):
        told["unit"] = one.unit
    if units := _units(one.kind):
        told["units"] = units
    if isinstance(one, Text):
        told["longest"] = one.longest
    return told


def _units(kind: str) -> list[str]:
    """The units that may stand behind a quantity, each as it is printed."""
    if kind == "temperature":
        return ["°C", "°F"]
    return [names[0] for names in SCALES[kind].units.values()] if kind in SCALES else []


def answer(one: Answer) -> dict[str, Any]:
    """One answer: its name, kind and label; columns for a table."""
    told: dict[str, Any] = {"name": one.name, "label": one.label, "kind": one.kind, "help": one.help}
    if isinstance(one, Size):
        told |= {"part": one.part, "can_be_cut": one.can_be_cut, "limit": one.limit.text()}
    return {**told, "columns": [answer(column) for column in one.columns]} if one.columns else told
