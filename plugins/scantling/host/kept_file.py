"""Files of a preview that need not be made again, because nothing in them changed since the last time."""

from __future__ import annotations

from hashlib import sha256
from pathlib import Path

from mkdocs.structure.files import File


class KeptFile(File):
    """A generated file that knows whether the last build of this preview had the very same one."""

    is_kept = False

    def is_modified(self) -> bool:
        """Return whether the host has to make it; asked in a preview with `--dirty` alone."""
        return not self.is_kept and super().is_modified()


class Published:
    """What the builds of one preview published."""

    def __init__(self) -> None:
        self._last: dict[Path, bytes] = {}
        self._now: dict[Path, bytes] = {}

    def note(self, file: KeptFile, content: str | bytes) -> KeptFile:
        """Remember a file's content, and tell the file whether it is the same as last time."""
        raw = content.encode() if isinstance(content, str) else content
        place = Path(file.abs_dest_path)
        self._now[place] = sha256(raw).digest()
        file.is_kept = self._last.get(place) == self._now[place]
        return file

    def settle(self) -> None:
        """Take what was just noted as published, and remove what no longer is; for the end of a build."""
        for place in self._last.keys() - self._now.keys():
            place.unlink(missing_ok=True)
        self._last, self._now = self._now, {}
