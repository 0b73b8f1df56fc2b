"""What was made before, on disk, found by all that it was made from.

An entry's name is a digest of everything that goes into it, the code included, so that an entry is
never out of date: it is found or it is not. Builds that run at once, a build that is killed, and a
disk that lies do no harm: entries appear whole by renaming, and one that is damaged is made again.
"""

from __future__ import annotations

import hashlib
import os
import tempfile
import zlib
from contextlib import suppress
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import Any

MARK = b"scantling cache 2\n"
PLAIN = b"scantling plain 2\n"
"""Begins an entry whose content lies in it as it is, so that pieces of it can be read."""
DIGEST = 32
"""Bytes of a SHA-256 digest."""
START = len(PLAIN) + DIGEST
"""Where the content of a plain entry begins."""
DAY = 60 * 60 * 24
TIDIED = "tidied"
"""A file whose day is that of the last tidying."""
OLD = DAY * 30
"""Seconds after which an entry that no build has used is dropped."""


@dataclass(slots=True)
class Cache:
    """A folder of entries; without a folder nothing is remembered."""

    folder: Path | None
    found: int = 0
    made: int = 0
    damaged: list[str] = field(default_factory=list)
    """Names of entries that were there but not whole; they are made again, and told of."""
    seen: dict[Path, tuple[int, int]] = field(default_factory=dict)
    """Plain entries that were whole when looked at, with their size and day."""
    held: dict[str, Any] = field(default_factory=dict)
    """Results that were found by this process, which a preview asks for again and again."""

    def get(self, kind: str, name: str) -> bytes | None:
        """Return an entry's content, or None where there is none that is whole."""
        if self.folder is None:
            return None
        path = self.path(kind, name)
        try:
            raw = path.read_bytes()
        except OSError:
            return None
        content = _opened(raw)
        if content is None:
            self.damaged.append(f"{kind}/{name}")
            with suppress(OSError):
                path.unlink()
            return None
        with suppress(OSError):
            os.utime(path)
        self.found += 1
        return content

    def is_whole(self, kind: str, name: str) -> bool:
        """Return whether an entry is there and whole; one that was so and is unchanged is not read again."""
        if self.folder is None:
            return False
        path = self.path(kind, name)
        state = _state(path)
        if state is not None and self.seen.get(path) == state:
            return True
        if self.get(kind, name) is None:
            return False
        state = _state(path)
        if state is not None:
            self.seen[path] = state
        return True

    def put(self, kind: str, name: str, content: bytes, *, plain: bool = False) -> bool:
        """Keep an entry; a disk that is full or read-only only means that nothing is kept.

        Args:
            plain: whether the content is kept as it is, to be read in pieces.

        Returns:
            Whether it is kept.
        """
        self.made += 1
        if self.folder is None:
            return False
        path = self.path(kind, name)
        with suppress(OSError):
            path.parent.mkdir(parents=True, exist_ok=True)
            handle, temporary = tempfile.mkstemp(dir=path.parent, prefix=".being-written-")
            with os.fdopen(handle, "wb") as file:
                file.writelines(_closed(content, plain=plain))
            Path(temporary).replace(path)
            return True
        return False

    def path(self, kind: str, name: str) -> Path:
        """Return where an entry is, or would be."""
        assert self.folder is not None
        return self.folder / kind / name[:2] / name[2:]

    def tidy_daily(self, now: float) -> int:
        """Tidy, unless that was done within a day: looking at every entry takes its time.

        Args:
            now: seconds since the epoch.
        """
        if self.folder is None or not self.folder.is_dir():
            return 0
        mark = self.folder / TIDIED
        with suppress(OSError):
            if mark.exists() and now - mark.stat().st_mtime < DAY:
                return 0
            mark.touch()
            os.utime(mark, (now, now))
        return self.tidy(now)

    def tidy(self, now: float) -> int:
        """Drop entries that no build has used for a month, and what killed builds left half-written.

        Args:
            now: seconds since the epoch.

        Returns:
            How many files were dropped.
        """
        dropped = 0
        for path in sorted(self.folder.rglob("*")) if self.folder and self.folder.is_dir() else ():
            with suppress(OSError):
                if path.is_file() and now - path.stat().st_mtime > OLD:
                    path.unlink()
                    dropped += 1
        return dropped


def _state(path: Path) -> tuple[int, int] | None:
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_size, found.st_mtime_ns


def _closed(content: bytes, *, plain: bool) -> tuple[bytes, bytes, bytes]:
    packed = content if plain else zlib.compress(content, 1)
    return PLAIN if plain else MARK, hashlib.sha256(packed).digest(), packed


def _opened(raw: bytes) -> bytes | None:
    mark, told, packed = raw[: len(MARK)], raw[len(MARK) : START], raw[START:]
    if mark not in {MARK, PLAIN} or hashlib.sha256(packed).digest() != told:
        return None
    if mark == PLAIN:
        return packed
    try:
        return zlib.decompress(packed)
    except zlib.error:
        return None


def digest(*parts: bytes | str) -> str:
    """Return a name for all of `parts`: another for any other parts, or the same in another order."""
    made = hashlib.sha256()
    for part in parts:
        raw = part.encode() if isinstance(part, str) else part
        made.update(len(raw).to_bytes(8, "big"))
        made.update(raw)
    return made.hexdigest()


@cache
def code_digest() -> str:
    """Return a name for the code and data of the package: a changed line makes all entries strangers."""
    package = Path(__file__).resolve().parent.parent
    files = sorted(
        path
        for path in package.rglob("*")
        if path.is_file() and path.suffix in {".py", ".typ", ".html", ".css", ".js", ".mjs"}
    )
    return digest(*(part for path in files for part in (str(path.relative_to(package)), path.read_bytes())))
