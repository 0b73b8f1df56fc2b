"""Finding a number or a measure at a place in a text: shared by the readers and by the formula language.

Everything here looks at each character a bounded number of times.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from typing import NoReturn

from scantling.fault import Fault, Faulty, Place
from scantling.measure.plain import Angle
from scantling.measure.space import Length
from scantling.words import say

SPACES = " \t\u00a0\u2002\u2003\u2007\u2008\u2009\u200a\u202f"
"""Every space that may stand inside a measure, thin and no-break ones included."""
MINUS = "-\u2212"
MOST_DIGITS = 30

_SIGNS = "1/2½ 1/3⅓ 2/3⅔ 1/4¼ 3/4¾ 1/5⅕ 2/5⅖ 3/5⅗ 4/5⅘ 1/6⅙ 5/6⅚ 1/7⅐ 1/8⅛ 3/8⅜ 5/8⅝ 7/8⅞ 1/9⅑ 1/10⅒"
_VULGAR = {pair[-1]: Fraction(pair[:-1]) for pair in _SIGNS.split()}
_HYPHENS = ("-", "\u2212")
_DIGITS = ("whole", "mixed", "top", "bottom", "decimal")

_NUMBER = re.compile(
    rf"(?:(?P<whole>[0-9]+)(?P<joint>[{SPACES}]+|[{MINUS}]?))?(?P<vulgar>[{''.join(_VULGAR)}])"
    rf"|(?:(?P<mixed>[0-9]+)(?P<between>[{SPACES}]+|[{MINUS}]))?(?P<top>[0-9]+)[/⁄](?P<bottom>[0-9]+)"
    r"|(?P<decimal>[0-9]+(?:\.[0-9]+)?|\.[0-9]+)"
)
_WORD = re.compile(r"[^\W\d_][\w]*")

INCH, FOOT = Length(1), Length(12)
MM, CM, METRE = Length.of_mm(1), Length.of_mm(10), Length.of_mm(1000)
DEGREE = Angle(1)

_MARKS: dict[str, Length | Angle] = {
    "''": INCH, "′′": INCH, "’’": INCH, '"': INCH, "″": INCH, "”": INCH, "“": INCH, "'": FOOT, "′": FOOT,
    "’": FOOT, "‘": FOOT, "°": DEGREE,
}  # fmt: skip
_WORDS: dict[str, Length | Angle] = {
    "in": INCH, "inch": INCH, "inches": INCH, "ft": FOOT, "foot": FOOT, "feet": FOOT, "mm": MM, "cm": CM,
    "m": METRE, "millimetre": MM, "millimetres": MM, "millimeter": MM, "millimeters": MM, "centimetre": CM,
    "centimetres": CM, "centimeter": CM, "centimeters": CM, "metre": METRE, "metres": METRE, "meter": METRE,
    "meters": METRE, "deg": DEGREE, "degree": DEGREE, "degrees": DEGREE,
}  # fmt: skip
UNIT_WORDS = tuple(_WORDS)
"""The words that name a unit of length or angle."""
_FOOT_MARKS = ("'", "′", "’", "‘")


@dataclass(frozen=True, slots=True)
class Numeral:
    """A number found in a text."""

    value: Fraction
    start: int
    end: int
    hyphen: bool = False
    """True for `2-1/2`: one number, or a subtraction without its spaces."""
    slash: bool = False
    """True for a fraction alone, `3/4`: after another slash it can be read in two ways."""


@dataclass(frozen=True, slots=True)
class Scanned:
    """A number, length or angle found in a text."""

    value: Fraction | Length | Angle
    start: int
    end: int
    hyphen: bool = False
    slash: bool = False


def complain(code: str, message: str, start: int, end: int, mend: str = "") -> NoReturn:
    """Raise the one fault that some characters of a text have."""
    raise Faulty([Fault(code, message, Place(start=start, end=end), mend)])


def skip_spaces(text: str, at: int) -> int:
    """Return where the next character stands that is no space."""
    while at < len(text) and text[at] in SPACES:
        at += 1
    return at


def scan_number(text: str, at: int) -> Numeral | None:
    """Return the unsigned number that begins at `at`: whole, decimal, fraction or mixed.

    Raises:
        Faulty: for a fraction over nothing, a mixed number whose fraction is one or more, too many digits.
    """
    match = _NUMBER.match(text, at)
    if match is None:
        return None
    start, end = match.span()
    if any(found and len(found) > MOST_DIGITS for found in match.group(*_DIGITS)):
        complain(
            "too-many-digits",
            say("this number has more than {most} digits", most=MOST_DIGITS),
            start,
            end,
        )
    value = Fraction(match["decimal"] or match["whole"] or match["mixed"] or 0)
    if match["vulgar"]:
        hyphen = match["joint"] is not None and match["joint"] in _HYPHENS
        return Numeral(value + _VULGAR[match["vulgar"]], start, end, hyphen)
    if match["bottom"]:
        part = _fraction(match)
        if match["mixed"] and part >= 1:
            _improper(match)
        return Numeral(value + part, start, end, match["between"] in _HYPHENS, slash=not match["mixed"])
    return Numeral(value, start, end)


def _fraction(match: re.Match[str]) -> Fraction:
    if not int(match["bottom"]):
        mend = say("write the number of parts below the line, as in 1/2")
        complain("divided-by-zero", say("a fraction has nothing below its line"), *_slashed(match), mend)
    return Fraction(int(match["top"]), int(match["bottom"]))


def _improper(match: re.Match[str]) -> NoReturn:
    written = f"{match['top']}/{match['bottom']}"
    mend = say(
        "write a fraction smaller than one, or a sum: {whole} + {written}",
        whole=match["mixed"],
        written=written,
    )
    complain(
        "improper-fraction",
        say("{written} after a whole number is one or more", written=written),
        *_slashed(match),
        mend,
    )


def _slashed(match: re.Match[str]) -> tuple[int, int]:
    return match.start("top"), match.end("bottom")


def scan_word(text: str, at: int) -> str:
    """Return the word (letters, then letters, digits, underscores) that begins at `at`, or nothing."""
    match = _WORD.match(text, at)
    return match[0] if match else ""


def scan_unit(text: str, at: int) -> tuple[Length | Angle, int] | None:
    """Return the unit of length or angle that follows a number ending at `at`, and where it ends."""
    begin = skip_spaces(text, at)
    for mark in (text[begin : begin + 2], text[begin : begin + 1]):
        if mark in _MARKS:
            return _MARKS[mark], begin + len(mark)
    word = scan_word(text, begin)
    unit = _WORDS.get(word) or _WORDS.get(word.casefold())
    if unit is None:
        return None
    end = begin + len(word)
    # "12 in." ends a phrase; "12 in.5" does not.
    abbreviated = (
        text[end : end + 1] == "." and unit in (INCH, FOOT) and not text[end + 1 : end + 2].isalnum()
    )
    return unit, end + abbreviated


def scan_amount(text: str, at: int) -> Scanned | None:
    """Return the number, length or angle that begins at `at`; feet and inches together are one length.

    Raises:
        Faulty: as `scan_number`.
    """
    number = scan_number(text, at)
    if number is None:
        return None
    unit = scan_unit(text, number.end)
    if unit is None:
        return Scanned(number.value, number.start, number.end, number.hyphen, number.slash)
    length, end = unit[0] * number.value, unit[1]
    if unit[0] == FOOT:
        inches = _scan_inches(text, end)
        if inches is not None:
            return Scanned(length + inches[0], at, inches[1])  # type: ignore[operator]
    return Scanned(length, at, end, number.hyphen, number.slash)


def _scan_inches(text: str, at: int) -> tuple[Length, int] | None:
    """Return the inches that follow feet: `6 1/2"`, or `-6"` close after a foot mark, as drawings have it."""
    begin = skip_spaces(text, at)
    joined = begin == at and text[at : at + 1] in _HYPHENS and text[at - 1] in _FOOT_MARKS
    number = scan_number(text, begin + joined)
    unit = scan_unit(text, number.end) if number else None
    if number is None or unit is None or unit[0] != INCH:
        return None
    return INCH * number.value, unit[1]
