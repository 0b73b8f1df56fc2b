"""From words and pictures to a PDF."""

from __future__ import annotations

import json
import tempfile
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Final

import typst

from scantling.pages import font_folder
from scantling.paper.content import Sheets

STANDARD: Final = "ua-1"
"""PDF/UA-1 (ISO 14289-1): tagged, with alternative words for every picture."""


SPARSE: Final = 0.3
"""A last page of words that is filled no further than this is saved where setting them closer saves it."""


def typeset(sheets: Sheets) -> bytes:
    """Return the PDF; the same words and pictures give the same bytes."""
    with tempfile.TemporaryDirectory(prefix="scantling-") as folder:
        for name, content in sheets.files.items():
            Path(folder, name).write_bytes(content)
        Path(folder, "main.typ").write_bytes(_template())
        pdf, page, share = _set(sheets, folder, close=False)
        if share < SPARSE:
            closer, before, _ = _set(sheets, folder, close=True)
            pdf = closer if before < page else pdf
        return pdf


def _set(sheets: Sheets, folder: str, *, close: bool) -> tuple[bytes, int, float]:
    """Return the PDF, the page on which its words end, and what share of that page they fill."""
    words = json.dumps({**sheets.data, "close": close}, ensure_ascii=False)
    Path(folder, "plan.json").write_text(words, "utf-8")
    setter = typst.Compiler(
        f"{folder}/main.typ", root=folder, ignore_system_fonts=True, font_paths=[str(font_folder())]
    )
    pdf = setter.compile(format="pdf", pdf_standards=[STANDARD])
    if not isinstance(pdf, bytes):
        raise TypeError("a PDF is one file")
    end = json.loads(setter.query("<end-of-words>", field="value", one=True))
    return pdf, end["page"], end["share"]


@cache
def _template() -> bytes:
    return files("scantling.paper").joinpath("plan.typ").read_bytes()
