"""From words and pictures to a PDF."""

from __future__ import annotations

import json
import tempfile
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Final

import typst

from scantling.paper.content import Sheets

STANDARD: Final = "ua-1"
"""PDF/UA-1 (ISO 14289-1): tagged, with alternative words for every picture."""


def typeset(sheets: Sheets) -> bytes:
    """Return the PDF; the same words and pictures give the same bytes."""
    source = {"plan.json": json.dumps(sheets.data, ensure_ascii=False).encode(), **sheets.files}
    with tempfile.TemporaryDirectory(prefix="scantling-") as folder:
        for name, content in source.items():
            Path(folder, name).write_bytes(content)
        main = Path(folder, "main.typ")
        main.write_bytes(_template())
        return typst.compile(
            str(main),
            root=folder,
            format="pdf",
            pdf_standards=[STANDARD],
            ignore_system_fonts=True,
            font_paths=[_fonts()],
        )


@cache
def _template() -> bytes:
    return files("scantling.paper").joinpath("plan.typ").read_bytes()


@cache
def _fonts() -> str:
    """Return the folder of the fonts that matplotlib ships: letters that the book face has not."""
    import matplotlib as mpl  # noqa: PLC0415 - slow to load, and only who prints needs its faces

    return f"{mpl.get_data_path()}/fonts/ttf"
