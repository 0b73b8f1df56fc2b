"""Reading lengths, angles and bare numbers as people write them."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Literal, NoReturn

from scantling.fault import did_you_mean
from scantling.measure.plain import Angle
from scantling.measure.reading_edges import begin, bound, end, is_none, left_over
from scantling.measure.scan import (
    CM,
    FOOT,
    INCH,
    METRE,
    MM,
    Scanned,
    complain,
    scan_amount,
    scan_number,
    scan_word,
    skip_spaces,
)
from scantling.measure.space import Length
from scantling.words import mark, say

LongUnit = Literal["in", "ft", "mm", "cm", "m"]
"""A unit in which a bare number can be declared to be."""

_UNITS: Mapping[str, Length] = {"in": INCH, "ft": FOOT, "mm": MM, "cm": CM, "m": METRE}
_OFFERED = ("in", "inches", "ft", "feet", "mm", "cm", "m")


def read_length(text: str, unit: LongUnit | None = None) -> Length:
    """Read a length: `2 1/2 in`, `2-1/2"`, `2½"`, `8'`, `7 ft 6 1/2 in`, `38mm`, `1.2 m`.

    Args:
        unit: what a number that stands alone is measured in; None where one must say.

    Raises:
        Faulty: where the text is no length; the fault's place holds the characters that are wrong.
    """
    at, negative = begin(text, say("a length"))
    found = scan_amount(text, at)
    if found is None:
        is_none(text, mark("length"), say("write it as 12 1/2 in or 318 mm"))
    value = found.value
    if isinstance(value, Fraction):
        value = _with_unit(text, found, unit) * value
    if isinstance(value, Angle):
        message = say("this is an angle; a length is wanted")
        complain("not-a-length", message, found.start, found.end, say("write it as 12 in or 12 mm"))
    _end(text, found.end)
    bound(value.inches, found.start, found.end)
    return -value if negative else value


def read_number(text: str) -> Fraction:
    """Read a number without a unit: `3`, `2.5`, `2 1/2`, `-1/4`.

    Raises:
        Faulty: where the text is no number.
    """
    at, negative = begin(text, say("a number"))
    found = scan_number(text, at)
    if found is None:
        is_none(text, mark("number"), say("write it as 3, 2.5 or 2 1/2"))
    end(text, found.end, mark("number"))
    bound(found.value, found.start, found.end)
    return -found.value if negative else found.value


def read_angle(text: str) -> Angle:
    """Read an angle: `45 deg`, `45°`, `22.5 degrees`.

    Raises:
        Faulty: where the text is no angle.
    """
    at, negative = begin(text, say("an angle"))
    found = scan_amount(text, at)
    if found is None or not isinstance(found.value, Angle):
        is_none(text, mark("angle"), say("write it as 45 deg"))
    end(text, found.end, mark("angle"))
    bound(found.value.degrees, found.start, found.end)
    return -found.value if negative else found.value


def _with_unit(text: str, found: Scanned, unit: LongUnit | None) -> Length:
    """Return the declared unit for a number that stands alone."""
    if skip_spaces(text, found.end) < len(text):
        _not_a_unit(text, found.end)
    if unit is None:
        _bare(text, found.start, found.end)
    return _UNITS[unit]


def _bare(text: str, start: int, stop: int) -> NoReturn:
    number = text[start:stop]
    complain(
        "missing-unit",
        say("{number} has no unit", number=number),
        start,
        stop,
        say("write {number} in or {number} mm", number=number),
    )


def _not_a_unit(text: str, at: int) -> NoReturn:
    start = skip_spaces(text, at)
    word = scan_word(text, start)
    stop = start + len(word)
    if not word:
        left_over(text, at, mark("length"))
    if word[0] in "xX" and word[1:].isdecimal():
        message = say("'{text}' is a nominal size, not a length", text=text[:stop].strip())
        complain("nominal-size", message, skip_spaces(text, 0), stop, say("write what is meant, as 3 1/2 in"))
    near = did_you_mean(word, _OFFERED, kind=say("units"), tell=say)
    complain("unknown-unit", say("there is no unit of length called '{word}'", word=word), start, stop, near)


def _end(text: str, at: int) -> None:
    """Refuse what is left over after a length; after feet, a number alone lacks its unit."""
    start = skip_spaces(text, at)
    number = scan_number(text, start)
    after_feet = any(sign in text for sign in ("'", "′", "’", "f", "F"))
    if number is not None and after_feet and skip_spaces(text, number.end) == len(text):
        _bare(text, start, number.end)
    end(text, at, mark("length"))
