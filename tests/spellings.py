"""The ways people write one quantity, each of which must be read as exactly that quantity."""

from fractions import Fraction

VULGAR = {Fraction(1, 8): "⅛", Fraction(1, 4): "¼", Fraction(3, 8): "⅜", Fraction(1, 2): "½", Fraction(5, 8): "⅝"}
VULGAR |= {Fraction(3, 4): "¾", Fraction(7, 8): "⅞", Fraction(1, 3): "⅓", Fraction(2, 3): "⅔"}
FULL_WIDTH = str.maketrans("0123456789/.-", "０１２３４５６７８９／．－")


def mixed(value: Fraction, joint: str = " ", slash: str = "/") -> str:
    """5 3/8 in one of its spellings; 3/8 and 5 where there is nothing to join."""
    whole, part = divmod(value, 1)
    fraction = f"{part.numerator}{slash}{part.denominator}"
    return fraction if part and not whole else f"{whole}{joint}{fraction}" if part else str(whole)


def decimal(value: Fraction, point: str = ".") -> str:
    """The whole decimal of a value whose denominator divides a power of ten; without idle noughts."""
    whole, part = divmod(value, 1)
    digits = f"{part.numerator * 10**12 // part.denominator:012d}".rstrip("0")
    assert Fraction(int(digits or 0), 10 ** len(digits)) == part
    return f"{whole}{point}{digits}" if digits else str(whole)


def inches(value: Fraction) -> list[str]:
    """Spellings of a length in inches, none of them bare."""
    half = mixed(value)
    found = [
        f"{half} in",
        f"{half}in",
        f'{half}"',
        f"{half}″",
        f"{half}”",
        f"{half}''",
        f"{half} inches",
        f"{half} In.",
    ]
    found += [f"{text} in" for text in numbers(value)]
    return found + feet(value) if value >= 12 else found


def feet(value: Fraction) -> list[str]:
    """Spellings of a length as feet and inches."""
    foot, rest = divmod(value, 12)
    if not rest:
        return [f"{foot} ft", f"{foot}'", f"{foot}′", f"{foot} feet"]
    part, hyphened = mixed(rest), mixed(rest, "-")
    found = [f"{foot}' {part}\"", f"{foot}'{part}\"", f"{foot}'-{part}\"", f"{foot}’ {part}”", f"{foot}′ {part}″"]
    return [*found, f"{foot} ft {part}", f"{foot}ft {part}in", f"{foot} ft. {part} in.", f"{foot}'-{hyphened}\""]


def metric(mm: Fraction) -> list[str]:
    """Spellings of a length in metric units."""
    found = [
        f"{decimal(mm)} mm",
        f"{decimal(mm)}mm",
        f"{decimal(mm)}㎜",
        f"{decimal(mm)} MM",
        f"{decimal(mm)} millimetres",
    ]
    found += [f"{decimal(mm / 10)} cm", f"{decimal(mm / 10)}cm", f"{decimal(mm / 1000)} m", f"{decimal(mm / 1000)}m"]
    return [*found, *(f"{text} mm" for text in _comma(mm)), *(f"{text} cm" for text in _comma(mm / 10))]


def _comma(value: Fraction) -> list[str]:
    """With a decimal comma, where that could mean nothing else: not before three digits."""
    text = decimal(value, ",")
    return [] if len(text.partition(",")[2]) == 3 and value >= 1 else [text]


def numbers(value: Fraction) -> list[str]:
    """Spellings of a plain number in halves, quarters and so on, or in tenths and hundredths."""
    half = mixed(value)
    found = [half, mixed(value, "-"), mixed(value, "  "), mixed(value, "\u2009"), mixed(value, "\u00a0")]
    found += [mixed(value, " ", "⁄"), mixed(value, " ", " / "), half.translate(FULL_WIDTH), f" {half} ", f"+{half}"]
    if value % 1 in VULGAR:
        whole = str(value // 1) if value >= 1 else ""
        found += [f"{whole}{VULGAR[value % 1]}", f"{whole} {VULGAR[value % 1]}"]
    if 10**12 % value.denominator == 0:
        found += [decimal(value), decimal(value).translate(FULL_WIDTH), *_comma(value)]
        found += [decimal(value)[1:]] if decimal(value).startswith("0.") else []
    return found


def angles(degrees: Fraction) -> list[str]:
    """Spellings of an angle held to whole seconds."""
    whole, rest = divmod(degrees * 3600, 3600)
    minutes, seconds = divmod(rest, 60)
    assert seconds.denominator == 1
    tail = f" {minutes}' {seconds}\"" if seconds else f" {minutes}'" if minutes else ""
    found = [
        f"{whole}°{tail}",
        f"{whole}º{tail.replace(' ', '')}",
        f"{whole} deg{tail}",
        f"{whole}°{tail}".replace("'", "′"),
    ]
    found += [f"{whole}{tail}", f"{whole} degrees {minutes} minutes {seconds} seconds"]
    if 10**12 % degrees.denominator == 0:
        found += [decimal(degrees), f"{decimal(degrees)}°", f"{decimal(degrees)} deg.", *_comma(degrees)]
    return found
