"""What every reader of a text does first and last: find where the number begins, and refuse leftovers."""

from __future__ import annotations

from fractions import Fraction
from typing import NoReturn

from scantling.measure.scan import MINUS, complain, skip_spaces
from scantling.measure.writing import local_marks
from scantling.words import say

LONGEST_TEXT = 60
LARGEST = 1_000_000
"""The most that is read of anything, in its own unit: inches for a length."""


def begin(text: str, wanted: str) -> tuple[int, bool]:
    """Return where the number begins and whether a minus stands before it.

    Args:
        wanted: what is to be read, with its article.
    """
    if len(text) > LONGEST_TEXT:
        message = say(
            "this is too long for {wanted}: over {most} characters",
            wanted=wanted,
            most=LONGEST_TEXT,
        )
        complain("too-long", message, LONGEST_TEXT, len(text))
    at = skip_spaces(text, 0)
    if at == len(text):
        complain("empty", say("nothing is written here; {wanted} is wanted", wanted=wanted), 0, len(text))
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
        mend = say("take it away; decimals have a point, as in 2.5")
        complain("comma", say("a comma has no place in a {noun}", noun=say(noun)), start, start + 1, mend)
    message = say("'{text}' is left over after the {noun}", text=text[start:stop], noun=say(noun))
    complain(
        "left-over", message, start, stop, say("take it away, or write the {noun} alone", noun=say(noun))
    )


def is_none(text: str, noun: str, mend: str) -> NoReturn:
    """Complain that the whole text is no `noun`."""
    start, stop = skip_spaces(text, 0), len(text.rstrip())
    article = "an" if noun[0] in "aeiou" else "a"
    complain(
        f"not-{article}-{noun}",
        say("'{text}' is no {noun}", text=text.strip(), noun=say(noun)),
        start,
        max(start, stop),
        mend,
    )


def bound(value: Fraction, start: int, stop: int) -> None:
    """Refuse what is absurdly large."""
    if abs(value) > LARGEST:
        complain(
            "too-large",
            say(
                "this is more than {most}: nothing in a workshop is so large",
                most=local_marks(f"{LARGEST:,}"),
            ),
            start,
            stop,
        )
