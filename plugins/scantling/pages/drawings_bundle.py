"""All drawings of a plan at one size in one file: the same drawings give the same bytes."""

from __future__ import annotations

import io
from collections.abc import Iterable
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo

from scantling.pages.drawings import Drawing

DRAWINGS_FILE = "drawings.zip"
"""Its name beside the page."""
_NO_DAY = (1980, 1, 1, 0, 0, 0)
"""The earliest day that a ZIP file can name: the day of the build is not in it."""


def drawings_bundle(drawings: Iterable[Drawing]) -> bytes:
    """Return the drawings as a ZIP file, in the order of their names."""
    out = io.BytesIO()
    with ZipFile(out, "w") as bundle:
        for drawing in sorted(drawings, key=lambda one: one.file):
            entry = ZipInfo(drawing.file, _NO_DAY)
            entry.compress_type = ZIP_DEFLATED
            entry.create_system = 3  # the same on every machine
            entry.external_attr = 0o644 << 16
            bundle.writestr(entry, drawing.svg.encode())
    return out.getvalue()
