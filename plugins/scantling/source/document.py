"""One file of the author's, as text whose every character has a line and a column."""

from __future__ import annotations

import re
from bisect import bisect_right
from dataclasses import dataclass, field

from scantling.fault import Severity

LARGEST_FILE = 1_000_000
"""Bytes; a plan of fifty pages of words has a tenth of that."""
MOST_STRAY = 20
STAND_IN = "\N{REPLACEMENT CHARACTER}"

_STRAY = re.compile(
    "[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x84\x86-\x9f\ud800-\udfff\ufffe\uffff\ue000-\uf8ff\U000f0000-\U0010ffff]"
)


@dataclass(frozen=True, slots=True)
class Document:
    r"""A text file.

    Line ends are all `\n`, however the file has them, and a byte order mark is gone, so that
    lines and columns are what an editor shows.
    """

    path: str
    """As shown to the author, with forward slashes."""
    text: str
    starts: tuple[int, ...] = field(repr=False)
    """Offset of the first character of each line."""

    def position(self, offset: int) -> tuple[int, int]:
        """Return line and column of a character, both counted from 1."""
        offset = max(0, min(offset, len(self.text)))
        line = bisect_right(self.starts, offset)
        return line, offset - self.starts[line - 1] + 1

    def line(self, number: int) -> str:
        """Return a line without its end, counted from 1; nothing beyond the last."""
        if not 1 <= number <= len(self.starts):
            return ""
        start = self.starts[number - 1]
        end = self.text.find("\n", start)
        return self.text[start:] if end < 0 else self.text[start:end]


@dataclass(frozen=True, slots=True)
class Found:
    """A fault at an offset in a document, before it is resolved to line and column."""

    code: str
    message: str
    start: int
    end: int
    help: str = ""
    notes: tuple[tuple[str, int, int], ...] = ()
    """What each says, and where it points."""
    severity: Severity = Severity.FAULT


def make_document(path: str, text: str) -> Document:
    """Return a document of a text with any kind of line ends."""
    text = text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n")
    starts = (0, *(found.end() for found in re.finditer("\n", text)))
    return Document(path, text, starts)


def read_document(path: str, data: bytes, found: list[Found], *, size: int = 0) -> Document:
    """Return the document that the bytes of a file hold.

    Characters that no text should hold are reported, and stand-ins are put in their place, so
    that the rest of the file is still read. A file that cannot be read at all gives an empty one.

    Args:
        size: how many bytes the file has, where `data` is only its beginning.
    """
    size = max(size, len(data))
    if size > LARGEST_FILE:
        most = f"{LARGEST_FILE // 1_000_000} MB is the most that is read"
        message = f"this file is {size / 1_000_000:.1f} MB large; {most}"
        found.append(
            Found("file-too-large", message, 0, 0, "keep pictures in files of their own, or split the plan")
        )
        return make_document(path, "")
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError as error:
        before = make_document(path, data[: error.start].decode("utf-8"))
        byte = f"{data[error.start]:02x}"
        at = len(before.text)
        help_line = "save the file with the encoding UTF-8"
        found.append(
            Found("not-utf-8", f"this is no UTF-8 text (byte {byte} hexadecimal)", at, at + 1, help_line)
        )
        return before
    document = make_document(path, text)
    return _without_stray(document, found)


def _without_stray(document: Document, found: list[Found]) -> Document:
    stray = list(_STRAY.finditer(document.text))
    for match in stray[:MOST_STRAY]:
        message = f"a character that no text should hold (U+{ord(match[0]):04X})"
        found.append(
            Found(
                "stray-character",
                message,
                match.start(),
                match.end(),
                "delete it; it cannot be seen in most editors",
            )
        )
    if not stray:
        return document
    return Document(document.path, _STRAY.sub(STAND_IN, document.text), document.starts)
