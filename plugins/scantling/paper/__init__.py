"""Printable plans: the page's own words and drawings, typeset as PDF."""

from scantling.paper.content import PAPERS, Sheets, lay_out
from scantling.paper.photos import printable
from scantling.paper.typeset import typeset

__all__ = ["PAPERS", "Sheets", "lay_out", "printable", "typeset"]
