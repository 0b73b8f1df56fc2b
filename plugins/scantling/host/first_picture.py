"""The first drawing of a page stands in the page itself: it is there when the page is first painted.

Asked for by its address, it would come after styles and fonts, and be painted once the theme has woken up.
Whoever opens the page waits for that picture most of all.
"""

from __future__ import annotations

import posixpath
import re
from urllib.parse import quote, unquote

from mkdocs.structure.files import File, Files

LARGEST = 40_000
"""Bytes of a drawing that is put into a page; packed they are a sixth of that."""
_IMAGE = re.compile(r'<img\b[^>]*?\ssrc="(?P<src>[^"]+)"[^>]*>')
_WAITS = re.compile(r'\s(?:loading="lazy"|decoding="async")')
_UNCHANGED = " =:/'(),;!*@?$+-_.~[]|^"
"""Signs that may stand in such an address, and in an attribute, as they are."""


def with_first_picture(output: str, file: File, files: Files) -> str:
    """Return a finished page whose first picture, if it is a small drawing of the site, stands in it.

    Args:
        file: whose page it is.
        files: of the site.
    """
    article = output.find("<article")
    found = _IMAGE.search(output, article) if article >= 0 else None
    if found is None or not found["src"].endswith(".svg") or ":" in found["src"]:
        return output
    place = posixpath.join(posixpath.dirname(file.dest_uri), unquote(found["src"]))
    drawing = files.get_file_from_path(posixpath.normpath(place))
    if drawing is None or len(content := drawing.content_bytes) > LARGEST:
        return output
    start, end = found.span("src")
    told = _WAITS.sub("", output[found.start() : start]), _WAITS.sub("", output[end : found.end()])
    image = f"{told[0]}{as_address(content.decode('utf-8'))}{told[1]}"
    return output[: found.start()] + image + output[found.end() :]


def as_address(drawing: str) -> str:
    """Return an SVG as an address that holds all of it (RFC 2397), fit for a quoted attribute."""
    return "data:image/svg+xml," + quote(" ".join(drawing.split()), safe=_UNCHANGED)
