"""Which character of the file each character of a YAML scalar came from."""

from __future__ import annotations

import re

_ESCAPES = {
    "0": "\0", "a": "\x07", "b": "\x08", "t": "\t", "\t": "\t", "n": "\n",
    "v": "\x0b", "f": "\x0c", "r": "\r",
    "e": "\x1b", " ": " ", '"': '"', "/": "/", "\\": "\\", "N": "\x85",
    "_": "\xa0", "L": "\u2028", "P": "\u2029",
}  # fmt: skip
_CODES = {"x": 2, "u": 4, "U": 8}
_HEADER = re.compile(r"[|>][^\n]*\n?")


def letters_of(text: str, start: int, end: int, value: str, style: str | None) -> tuple[int, ...] | None:
    """Return the offset in `text` of each character of `value` and of its end.

    Args:
        text: the whole file; the scalar as written is `text[start:end]`, quotes included.
        style: as in YAML's events: None or "" for a plain scalar, else its first sign.

    Returns:
        None where the value is written just as it is, beginning at `start`; nothing where no such
        offsets can be told.
    """
    if not style and text[start:end] == value:
        return None
    at, stop = start, end
    if style in {"'", '"'}:
        at, stop = start + 1, end - 1
    elif style in {"|", ">"}:
        header = _HEADER.match(text, start)
        at = header.end() if header else start
    found: list[int] = []
    for letter in value:
        step = _next(text, at, stop, letter, style)
        if step is None:
            return ()
        here, at = step
        found.append(here)
    return (*found, min(at, stop))


def _next(text: str, at: int, stop: int, letter: str, style: str | None) -> tuple[int, int] | None:
    """Return where `letter` is written at or after `at`, and where to look for the next one."""
    if letter.isspace() and not (style == '"' and text.startswith("\\", at)):
        if at >= stop:
            return stop, stop
        if text[at] == letter:
            return at, at + 1
        return (at, at) if text[at].isspace() else None
    at = _past_breaks(text, at, stop, style)
    while at < stop and text[at].isspace():
        at = _past_breaks(text, at + 1, stop, style)
    if at >= stop:
        return None
    written, size = _written(text, at, style)
    return (at, at + size) if written == letter else None


def _past_breaks(text: str, at: int, stop: int, style: str | None) -> int:
    """Return the offset past line breaks that a backslash joins, in a double-quoted scalar."""
    while style == '"' and at < stop and text.startswith("\\\n", at):
        at += 2
        while at < stop and text[at] in " \t\n":
            at += 1
    return at


def _written(text: str, at: int, style: str | None) -> tuple[str, int]:
    """Return the character that is written at `at`, and in how many characters."""
    if style == "'" and text.startswith("''", at):
        return "'", 2
    if style == '"' and text[at] == "\\":
        sign = text[at + 1]
        if sign in _CODES:
            size = _CODES[sign]
            return chr(int(text[at + 2 : at + 2 + size], 16)), 2 + size
        return _ESCAPES.get(sign, sign), 2
    return text[at], 1
