"""The headings of a plan page."""

from __future__ import annotations

from scantling.words import mark

SECTIONS = (
    ("materials", mark("Materials list")),
    ("cut-list", mark("Cut list")),
    ("diagrams", mark("Cut diagrams")),
    ("joinery", mark("Joints and hardware")),
    ("details", mark("Details of parts")),
    ("views", mark("Drawings")),
    ("steps", mark("Steps")),
    ("safety", mark("Safety")),
    ("cost", mark("What each inch costs")),
    ("notes", mark("Notes and corrections")),
)
"""Fragments that stand under a heading of their own."""
