"""What the fixings of a thing hung on a wall must hold: weight down, and a pull out of the wall, by moments."""

from fractions import Fraction

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.show import plain
from calc.units import factor


def work(
    mass: Fraction,
    contents: Fraction,
    projection: Fraction,
    centre: Fraction | None,
    lever: Fraction,
    top: int,
    lower: int,
    lower_height: Fraction,
    pull: Fraction,
    reach: Fraction | None,
    rating: Fraction,
) -> Values:
    """Moments about the bottom edge, where it bears on the wall; the top fixings are taken to hold all the pull."""
    at = projection / 2 if centre is None else centre
    hand = projection if reach is None else reach
    _refuse(at, projection, lower, lower_height, lever)
    weight = (mass + contents) * factor("kilogram_force", "newton")
    turning = weight * at + pull * hand
    out, down = turning / lever, (weight + pull) / (top + lower)
    each, both = out / top, trig.sqrt((out / top) ** 2 + down**2)
    return {
        **{"all_mass": mass + contents, "weight": weight, "turning": turning / 1000, "centre": at, "reach": hand},
        **{"pull_all": out, "pull_each": each, "shear_each": down, "both_each": both},
        **{"pull_rated": rating * each, "shear_rated": rating * down, "bearing": out},
        "shear_top": (weight + pull) / top if lower else None,
    }


def _refuse(at: Fraction, projection: Fraction, lower: int, lower_height: Fraction, lever: Fraction) -> None:
    if at > projection:
        say = "the middle of the weight stands out further than the thing itself"
        raise Refusal(say, f"give {plain(projection, 1)} mm or less", "centre")
    if lower and lower_height >= lever:
        say = "the lower fixings are as high as the top ones"
        raise Refusal(say, f"give less than {plain(lever, 1)} mm, or count them among the top ones", "lower_height")


def proof(v: Values) -> dict[str, float]:
    """Forces and moments about another point, the middle of the top fixings, come to nothing: it hangs still."""
    weight, pull, lever = float(v["weight"]), float(v["pull"]), float(v["lever"])
    down = float(v["shear_each"]) * (v["top"] + v["lower"])
    about_top = float(v["bearing"]) * lever - weight * float(v["centre"]) - pull * float(v["reach"])
    both = float(v["both_each"]) ** 2 - float(v["pull_each"]) ** 2 - float(v["shear_each"]) ** 2
    return {
        "what hangs down is held up": (down - weight - pull) / (weight + pull),
        "what pulls out is pressed in": (float(v["pull_each"]) * v["top"] - float(v["bearing"])) / (weight + pull),
        "moments about the top fixings come to nothing": about_top / (lever * (weight + pull)),
        "shear and pull are square to each other": both / float(v["both_each"]) ** 2,
    }
