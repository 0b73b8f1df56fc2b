"""What a fragment needs besides the report: how numbers are written, the prose, where pictures are."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from scantling.measure import Display
from scantling.pages.drawings import Drawing
from scantling.pages.words import Words

if TYPE_CHECKING:
    from scantling.pages.photo import PhotoSize


@dataclass(frozen=True, slots=True)
class Look:
    """How a page shows a report."""

    display: Display
    words: Words
    """The plan's prose, rendered."""
    up: str = ""
    """The way from the page to the plan's own folder, where photos are: "../" for an offered size."""
    across: str = ""
    """The way from the page to the drawings at this size."""
    inline: Callable[[Drawing], str] | None = None
    """Makes an address of the drawing itself, in the browser, where it has no file."""
    photos: Mapping[str, PhotoSize] = field(default_factory=dict)
    """The widths in which the author's photos lie beside the plan, by file; none for the files alone."""

    def drawing(self, drawing: Drawing) -> str:
        """Return where a drawing is."""
        return self.inline(drawing) if self.inline else self.across + drawing.file

    def photo(self, file: str) -> str:
        """Return where a photo of the author's is, which lies in the plan's folder."""
        return self.up + quote(file)


def quote(file: str) -> str:
    """Return a file's name as it may stand in an address, and never as one of another site."""
    plain = "".join(letter if letter.isalnum() or letter in "._-/ " else "-" for letter in file)
    return plain.lstrip("/").replace(" ", "%20")
