"""The signs people's keyboards really send, brought to the few the reader knows; anything else is left to be refused.

Every change is one sign for a fixed short text, so the work is linear in the length of what was typed. Digits of
scripts other than the Latin keyboard's and its full-width twin are refused by name, not guessed at.
"""

from fractions import Fraction

from calc.errors import Refusal

LONGEST = 200

_VULGAR = {
    "¼": "1/4",
    "½": "1/2",
    "¾": "3/4",
    "⅐": "1/7",
    "⅑": "1/9",
    "⅒": "1/10",
    "⅓": "1/3",
    "⅔": "2/3",
    "⅕": "1/5",
    "⅖": "2/5",
    "⅗": "3/5",
    "⅘": "4/5",
    "⅙": "1/6",
    "⅚": "5/6",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
}
_ALIKE = {
    " ": "\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000\t\n\r",
    "": "\u200b\u2060\ufeff\u200e\u200f",
    "-": "\u2010\u2011\u2012\u2013\u2212\uff0d\ufe63",
    "/": "\u2044\u2215\uff0f",
    "'": "\u2018\u2019\u201b\u2032\u02b9\u02bc\u00b4\uff07`",
    '"': "\u201c\u201d\u201f\u2033\u02ba\uff02",
    "x": "\u00d7\u2715\u2a09*",
    "÷": "\u2797",
    "°": "\u00ba\u02da",
    ":": "\u2236\uff1a",
    "mm": "\u339c",
    "cm": "\u339d",
}
CROSSES = f"xXｘＸ{_ALIKE['x']}"
"""Every sign that is read as the x between two sizes."""
_TABLE = {ord(sign): text for text, signs in _ALIKE.items() for sign in signs}
_TABLE |= {0xFF01 + offset: chr(0x21 + offset) for offset in range(94) if 0xFF01 + offset not in _TABLE}
_JOINT = "\x1f"
"""Stands before a fraction that was one sign, so that a hyphen joins it as closely as it joins a written one."""
_TABLE |= {ord(sign): f"{_JOINT}{text} " for sign, text in _VULGAR.items()}


def tidy(text: str) -> str:
    """What was typed, in plain signs and single spaces; a Refusal when empty, too long or in another script's digits.

    >>> tidy("5⅜″")
    '5 3/8 "'
    """
    if len(text) > LONGEST:
        raise Refusal(f"this is {len(text)} characters long", f"type at most {LONGEST}")
    plain = " ".join(alike(text).replace("''", '"').split())
    for sign in plain:
        if not sign.isascii() and sign.isnumeric():
            raise Refusal(f"{quoted(sign)} is a digit this does not read", "type the digits 0 to 9")
    return plain


def alike(text: str) -> str:
    """A text with each sign brought to the plain one that means the same."""
    return text.translate(_TABLE).replace(f"-{_JOINT}", "-").replace(_JOINT, " ")


def quoted(text: str) -> str:
    """What was typed, in quotation marks, cut short when long."""
    return f"“{clipped(text)}”"


def clipped(text: str) -> str:
    """A text cut short when long."""
    return text if len(text) <= 40 else f"{text[:38]}…"


def number(text: str) -> Fraction:
    """A plain decimal such as 12, 5.375, .5 or 13,6, already tidied, as a Fraction; a Refusal for anything else."""
    whole, mark, part = text.replace(",", ".", 1).partition(".")
    if not (whole + part).isdecimal() or not (whole + part).isascii() or (mark and not part):
        raise Refusal(f"{quoted(text)} is not a number", "type it like 12, 5 3/8 or 5.375, with one point and no other")
    if "," in text and len(part) == 3 and whole.strip("0"):
        raise Refusal(f"{quoted(text)} could mean {whole}{part} or {whole}.{part}", "type the one that is meant")
    return Fraction(int(whole + part), 10 ** len(part))
