"""A drawing as dots, for places that take no SVG."""

from __future__ import annotations

import re
import tempfile
from io import BytesIO
from pathlib import Path

import typst
from PIL import Image

from scantling.pages.spare_fonts import font_folder

_PAGE = (
    '#set page(width: {width}pt, height: auto, margin: 0pt, fill: none)\n#image("drawing.svg", width: 100%)'
)


_FACE = re.compile(rb'font-family="[^"]*"')
"""Those of a reader's machine; where none of them is, it would be lettered in a book's face."""


def dots(svg: bytes, width: int) -> Image.Image:
    """Return a drawing as a picture that is so many dots wide, clear where nothing is drawn."""
    with tempfile.TemporaryDirectory(prefix="scantling-") as folder:
        Path(folder, "drawing.svg").write_bytes(_FACE.sub(b'font-family="DejaVu Sans"', svg))
        main = Path(folder, "main.typ")
        main.write_text(_PAGE.format(width=width), "utf-8")
        made = typst.compile(
            str(main),
            root=folder,
            format="png",
            ppi=72.0,
            ignore_system_fonts=True,
            font_paths=[str(font_folder())],
        )
    return Image.open(BytesIO(made)).convert("RGBA")
