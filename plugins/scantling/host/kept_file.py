"""Files handed to the host: read when they are written, and left alone where nothing changed."""

from __future__ import annotations

from hashlib import sha256
from pathlib import Path
from typing import Any

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, InclusionLevel

from scantling.pages import Content, Page, SideFile, as_one, pieces_of, raw, set_aside


class KeptFile(File):
    """A generated file that knows whether the last build of this preview had the very same one."""

    is_kept = False
    source: Content = ""
    """What is in it, or where that lies until it is written."""

    @classmethod
    def beside(cls, config: MkDocsConfig, side: SideFile) -> KeptFile:
        """Return a file beside a page."""
        # without patterns of the author's, the host need not match the file against any
        is_free = not config.exclude_docs and not config.draft_docs
        inclusion = InclusionLevel.INCLUDED if is_free else InclusionLevel.UNDEFINED
        file: Any = cls.generated(config, side.path, content="", inclusion=inclusion)
        file.source = side.source
        return file  # type: ignore[no-any-return]

    def copy_file(self, dirty: bool = False) -> None:  # noqa: FBT001, FBT002 - the host's own signature
        """Write the file to the site; its content is in memory no longer than that."""
        if dirty and not self.is_modified():
            return
        self._content = raw(self.source)
        super().copy_file()
        self._content = ""

    @property
    def content_bytes(self) -> bytes:
        """What is in it, for other plugins."""
        return raw(self.source)

    @content_bytes.setter
    def content_bytes(self, value: bytes) -> None:
        self.source = value

    @property
    def content_string(self) -> str:
        """What is in it, for other plugins."""
        return raw(self.source).decode("utf-8-sig")

    @content_string.setter
    def content_string(self, value: str) -> None:
        self.source = value

    def is_modified(self) -> bool:
        """Return whether the host has to make it; asked in a preview with `--dirty` alone."""
        return not self.is_kept


class PageFile(KeptFile):
    """The Markdown of a page of ours, with its large pieces aside."""

    ours: Page
    without_pieces = ""
    """The HTML of the page as it was before the last pieces were put in."""

    @classmethod
    def of_page(cls, config: MkDocsConfig, page: Page) -> PageFile:
        """Return a page as a file."""
        inclusion = InclusionLevel.INCLUDED if page.in_nav else InclusionLevel.NOT_IN_NAV
        file: Any = cls.generated(config, page.path, content="", inclusion=inclusion)
        file.ours = set_aside(page)
        file.source = file.ours.markdown
        file.edit_uri = page.made_from or None
        return file  # type: ignore[no-any-return]

    def pieces(self) -> tuple[str, ...]:
        """Return the pieces, read from where they lie."""
        return pieces_of(self.ours)

    @property
    def is_unsearched(self) -> bool:
        """Return whether the search leaves the whole page out."""
        return bool((self.ours.meta.get("search") or {}).get("exclude"))


def content_name(file: KeptFile) -> str:
    """Return what tells the content of a file from any other."""
    parts = [file.source]
    if isinstance(file, PageFile):
        pieces = file.ours.pieces
        parts += [repr(file.ours.meta), as_one(pieces) if isinstance(pieces, tuple) else pieces]
    return " ".join(_name(part) for part in parts)


def _name(content: Content) -> str:
    if isinstance(content, str | bytes):
        return sha256(raw(content)).hexdigest()
    return content.name


class Published:
    """What the builds of one preview published."""

    def __init__(self) -> None:
        self._last: dict[str, str] = {}
        self._now: dict[str, str] = {}

    def note(self, file: KeptFile) -> KeptFile:
        """Remember a file's content, and tell the file whether it is the same as last time."""
        place = file.abs_dest_path
        self._now[place] = content_name(file)
        file.is_kept = self._last.get(place) == self._now[place]
        return file

    def settle(self) -> None:
        """Take what was just noted as published, and remove what no longer is; for the end of a build."""
        for place in self._last.keys() - self._now.keys():
            Path(place).unlink(missing_ok=True)
        self._last, self._now = self._now, {}
