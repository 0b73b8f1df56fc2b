"""What is in a file that is published: made already, or lying somewhere until it is asked for."""

from __future__ import annotations

from typing import Protocol


class Kept(Protocol):
    """Content that lies somewhere, and is read when it is asked for."""

    @property
    def name(self) -> str:
        """Return what tells this content from any other."""
        ...

    def read(self) -> bytes:
        """Return it; words are in UTF-8."""
        ...


Content = str | bytes | Kept
"""What is in a file: words, bytes, or where either lies."""


def raw(content: Content) -> bytes:
    """Return content as the bytes of a file."""
    if isinstance(content, str):
        return content.encode()
    return content if isinstance(content, bytes) else content.read()
