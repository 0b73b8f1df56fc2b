"""The headings of a plan page."""

from __future__ import annotations

SECTIONS = (
    ("materials", "Materials list"),
    ("cut-list", "Cut list"),
    ("diagrams", "Cut diagrams"),
    ("joinery", "Joints and hardware"),
    ("details", "Details of parts"),
    ("views", "Drawings"),
    ("steps", "Steps"),
    ("safety", "Safety"),
    ("cost", "What each inch costs"),
    ("notes", "Notes and corrections"),
)
"""Fragments that stand under a heading of their own."""
