"""From words and pictures to a PDF."""

from __future__ import annotations

import json
from functools import cache
from importlib.resources import files

import matplotlib as mpl
import typst

from scantling.paper.content import Sheets

STANDARD = "ua-1"
"""PDF/UA-1 (ISO 14289-1): tagged, with alternative words for every picture."""


def typeset(sheets: Sheets) -> bytes:
    """Return the PDF; the same words and pictures give the same bytes."""
    source: dict[str, bytes] = {
        "main.typ": _template(),
        "plan.json": json.dumps(sheets.data, ensure_ascii=False).encode(),
        **sheets.files,
    }
    made = typst.compile(
        source,
        format="pdf",
        pdf_standards=[STANDARD],
        ignore_system_fonts=True,
        font_paths=[_fonts()],
    )
    assert isinstance(made, bytes)
    return made


@cache
def _template() -> bytes:
    return files("scantling.paper").joinpath("plan.typ").read_bytes()


@cache
def _fonts() -> str:
    """Return the folder of the fonts that matplotlib ships: letters that the book face has not."""
    return f"{mpl.get_data_path()}/fonts/ttf"
