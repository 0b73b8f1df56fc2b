"""What every reader of a text does first and last: find where the number begins, and refuse leftovers."""

from __future__ import annotations

from fractions import Fraction
from typing import NoReturn

from scantling.measure.scan import MINUS, complain, skip_spaces

LONGEST_TEXT = 60
LARGEST = 1_000_000
"""The most that is read of anything, in its own unit: inches for a length."""


def begin(text: str, wanted: str) -> tuple[int, bool]:
    """Return where the number begins and whether a minus stands before it.

    Args:
        wanted: what is to be read, with its article.
    """
    if len(text) > LONGEST_TEXT:
        message = f"this is too long for {wanted}: over {LONGEST_TEXT} characters"
        complain("too-long", message, LONGEST_TEXT, len(text))
    at = skip_spaces(text, 0)
    if at == len(text):
        complain("empty", f"nothing is written here; {wanted} is wanted", 0, len(text))
    if text[at] in MINUS:
        return skip_spaces(text, at + 1), True
    return at, False


def end(text: str, at: int, noun: str) -> None:
    """Refuse anything but spaces from `at` on."""
    if skip_spaces(text, at) < len(text):
        left_over(text, at, noun)


def left_over(text: str, at: int, noun: str) -> NoReturn:
    """Complain of what stands at `at` after the number or measure."""
    start = skip_spaces(text, at)
    stop = max(len(text.rstrip()), start + 1)
    if text[start] == ",":
        mend = "take it away; decimals have a point, as in 2.5"
        complain("comma", f"a comma has no place in a {noun}", start, start + 1, mend)
    message = f"'{text[start:stop]}' is left over after the {noun}"
    complain("left-over", message, start, stop, f"take it away, or write the {noun} alone")


def is_none(text: str, noun: str, mend: str) -> NoReturn:
    """Complain that the whole text is no `noun`."""
    start, stop = skip_spaces(text, 0), len(text.rstrip())
    article = "an" if noun[0] in "aeiou" else "a"
    complain(f"not-{article}-{noun}", f"'{text.strip()}' is no {noun}", start, max(start, stop), mend)


def bound(value: Fraction, start: int, stop: int) -> None:
    """Refuse what is absurdly large."""
    if abs(value) > LARGEST:
        complain(
            "too-large", f"this is more than {LARGEST:,}: nothing in a workshop is so large", start, stop
        )
