"""A drawing as dots, for places that take no SVG."""

from __future__ import annotations

import tempfile
from io import BytesIO
from pathlib import Path

import typst
from PIL import Image

_PAGE = (
    '#set page(width: {width}pt, height: auto, margin: 0pt, fill: none)\n#image("drawing.svg", width: 100%)'
)


def dots(svg: bytes, width: int) -> Image.Image:
    """Return a drawing as a picture that is so many dots wide, clear where nothing is drawn."""
    with tempfile.TemporaryDirectory(prefix="scantling-") as folder:
        Path(folder, "drawing.svg").write_bytes(svg)
        main = Path(folder, "main.typ")
        main.write_text(_PAGE.format(width=width), "utf-8")
        made = typst.compile(str(main), root=folder, format="png", ppi=72.0, ignore_system_fonts=True)
    return Image.open(BytesIO(made)).convert("RGBA")
