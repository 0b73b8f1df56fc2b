"""An author's photo in a page: in the widths that the build made, so that a phone fetches a small one."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.pages.html import tag
from scantling.pages.look import Look, quote

HEAD = "(min-width: 50em) 45rem, 100vw"
CARD = "(min-width: 40em) 20rem, 100vw"
STEP = "(min-width: 40em) 35rem, 100vw"
"""How wide a picture is shown: as a page's `sizes` says it, in the browser's own rem."""


@dataclass(frozen=True, slots=True)
class PhotoSize:
    """The widths in which a photo lies beside its plan."""

    width: int
    height: int
    """Of the widest, in pixels."""
    widths: tuple[int, ...]
    """Narrowest first; without the widest where it is shown small alone."""


def sized_file(file: str, width: int, kind: str) -> str:
    """Return the name of a photo at one width, below the plan's folder; kind is webp or jpg."""
    return f"photos/{width}/{file}.{kind}"


def photo(look: Look, file: str, alt: str, *, sizes: str, lazy: bool) -> str:
    """Return the picture; where no widths are known (in print, at a reader's own size) the plain file."""
    size = look.photos.get(file)
    image = tag(
        "img",
        src=_plain(look, file, size),
        alt=alt,
        srcset=_srcset(look, file, size, "jpg") if size else None,
        sizes=sizes if size else None,
        width=size.width if size else None,
        height=size.height if size else None,
        loading="lazy" if lazy else None,
        fetchpriority=None if lazy else "high",
        decoding="async",
    )
    if size is None:
        return image
    webp = tag("source", type="image/webp", srcset=_srcset(look, file, size, "webp"), sizes=sizes)
    return tag("picture", webp + image)


def _plain(look: Look, file: str, size: PhotoSize | None) -> str:
    """Return the file for whoever knows no widths: the whole photo, or the widest where it is shown small."""
    if size is None or size.widths[-1] == size.width:
        return look.photo(file)
    return look.up + quote(sized_file(file, size.widths[-1], "jpg"))


def _srcset(look: Look, file: str, size: PhotoSize, kind: str) -> str:
    return ", ".join(f"{look.up}{quote(sized_file(file, width, kind))} {width}w" for width in size.widths)
