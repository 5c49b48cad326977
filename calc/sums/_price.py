"""What a thing costs its maker: what is bought, once or for each, and hours at a rate; money exact throughout."""

from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.errors import Refusal

BOUGHT = {"stock": "stock", "nails": "nails and screws", "hinges": "hinges", "finish": "finish", "other": "other"}
"""What is bought for each piece, as it is told."""


def work(
    hours: Fraction,
    rate: Fraction,
    once: Fraction,
    setting_up: Fraction,
    overhead: Fraction,
    gain: Fraction,
    batch: int,
    asked: Fraction | None,
    **bought: Fraction,
) -> Values:
    """One piece, then the batch: what is bought and worked once is shared out among the pieces."""
    goods = sum(bought.values(), Fraction(0)) + once / batch
    time = hours + setting_up / batch
    labour = time * rate
    over = (goods + labour) * overhead / 100
    cost = goods + labour + over
    if not cost:
        raise Refusal("nothing here costs anything", "type what the stock costs, or hours and a rate", "stock")
    price = cost * (1 + gain / 100)
    rows = _rows({**bought, "once": once / batch, "labour": labour, "over": over}, cost, batch)
    return {
        **{"each": price, "all": price * batch, "cost": cost, "cost_all": cost * batch},
        **{"goods": goods, "labour": labour, "over": over, "gained": price - cost, "time": time},
        **_earned(asked, goods, time, overhead),
        **_rounded(price * batch - round(price, 2) * batch),
        "rows": rows,
        "all_time": time * batch,
    }


def _rounded(apart: Fraction) -> Values:
    """What so many at the price of one to two places lose, or win, against the exact price of all."""
    return {"lost": apart if apart > 0 else None, "won": -apart if apart < 0 else None}


def _rows(parts: Values, cost: Fraction, batch: int) -> list[dict[str, Any]]:
    told = BOUGHT | {"once": "once for the batch", "labour": "work", "over": "overheads"}
    return [
        {"what": told[name], "each": money, "all": money * batch, "share": 100 * money / cost}
        for name, money in parts.items()
        if money
    ]


def _earned(asked: Fraction | None, goods: Fraction, time: Fraction, overhead: Fraction) -> Values:
    """What a price leaves for the work: over and above what is bought, and what overheads take of both."""
    if asked is None:
        return {"left": None, "earned": None}
    left = asked / (1 + overhead / 100) - goods
    return {"left": left, "earned": left / time if time else None}


def proof(v: Values) -> dict[str, float]:
    """From the rows and from the batch as a whole, the money comes to the same."""
    bought = sum((v[name] for name in BOUGHT), Fraction(0)) * v["batch"] + v["once"]
    worked = (v["hours"] * v["batch"] + v["setting_up"]) * v["rate"]
    whole = (bought + worked) * (100 + v["overhead"]) * (100 + v["gain"]) / 10000
    told = {
        "the batch reckoned as one comes to the same": float(whole / v["all"] - 1),
        "the rows make up the cost": float(sum(row["all"] for row in v["rows"]) / v["cost_all"] - 1),
        "their shares make up the whole": float(sum(row["share"] for row in v["rows"]) / 100 - 1),
    }
    if v["earned"] is not None:
        back = (v["earned"] * v["time"] + v["goods"]) * (1 + v["overhead"] / 100)
        told["work at what is earned costs what is asked"] = float((back - v["asked"]) / (v["asked"] + v["cost"]))
    return told
