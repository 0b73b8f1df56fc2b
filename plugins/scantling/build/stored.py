"""Results whose large pieces lie on disk: finding one again does not read them, nor does holding it.

Pieces that are made together are kept as one plain entry, a stack. The result names the stack and the place
of each piece in it, and is kept after the stack: whoever finds the result finds the pieces.
"""

from __future__ import annotations

import io
import pickle
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from scantling.build.cache import START, Cache, digest

STACKS = "stacks"


@dataclass(frozen=True, slots=True)
class Piece:
    """A part of a plain entry of the cache."""

    path: Path
    kind: str
    entry: str
    start: int
    size: int

    @property
    def name(self) -> str:
        """Return what tells it from any other."""
        return f"{self.kind}/{self.entry}/{self.start}+{self.size}"

    def read(self) -> bytes:
        """Return it, from the disk."""
        with self.path.open("rb") as file:
            file.seek(START + self.start)
            found = file.read(self.size)
        if len(found) != self.size:
            raise OSError(f"a remembered result was cut short: {self.path}")
        return found


def stack(cache: Cache, contents: Sequence[bytes]) -> list[bytes | Piece]:
    """Keep contents as one entry, and return what they can be read by; themselves where nothing is kept."""
    if cache.folder is None or not contents:
        return list(contents)
    whole = b"".join(contents)
    entry = digest(whole)
    if not cache.is_whole(STACKS, entry) and not cache.put(STACKS, entry, whole, plain=True):
        return list(contents)
    pieces: list[bytes | Piece] = []
    start = 0
    for content in contents:
        pieces.append(piece_of(cache, STACKS, entry, start, len(content)))
        start += len(content)
    return pieces


def piece_of(cache: Cache, kind: str, entry: str, start: int, size: int) -> Piece:
    """Return a part of a plain entry."""
    return Piece(cache.path(kind, entry), kind, entry, start, size)


def whole_entry(cache: Cache, kind: str, entry: str) -> Piece:
    """Return all of a plain entry that is there."""
    return piece_of(cache, kind, entry, 0, cache.path(kind, entry).stat().st_size - START)


def keep_result(cache: Cache, kind: str, name: str, result: object) -> None:
    """Remember a result, with the names of its pieces."""
    if cache.folder is None:
        return
    out = io.BytesIO()
    _Writer(out, protocol=5).dump(result)
    cache.put(kind, name, out.getvalue())


def find_result(cache: Cache, kind: str, name: str) -> Any | None:
    """Return a result that was remembered, if it and all its pieces are there and whole."""
    held = cache.held.get(f"{kind}/{name}")
    if held is None:
        content = cache.get(kind, name)
        if content is None:
            return None
        reader = _Reader(content, cache)
        held = reader.load(), tuple(sorted(reader.entries))
        cache.held[f"{kind}/{name}"] = held
    result, entries = held
    return result if all(cache.is_whole(*entry) for entry in entries) else None


class _Writer(pickle.Pickler):
    """Writes pieces by their names, without the folder that the cache is in today."""

    def persistent_id(self, obj: object) -> tuple[str, str, int, int] | None:
        return (obj.kind, obj.entry, obj.start, obj.size) if isinstance(obj, Piece) else None


class _Reader(pickle.Unpickler):
    """Reads our own entries, whose digest was checked."""

    def __init__(self, content: bytes, cache: Cache) -> None:
        super().__init__(io.BytesIO(content))
        self._cache = cache
        self.entries: set[tuple[str, str]] = set()

    def persistent_load(self, pid: tuple[str, str, int, int]) -> Piece:
        self.entries.add(pid[:2])
        return piece_of(self._cache, *pid)
