"""The calculators, in the order in which a reader meets them."""

from __future__ import annotations

from importlib import import_module

from scantling.calculators.kit import Calculator

MODULES = {
    "board-feet": "board_feet",
    "piece-price": "piece_price",
    "cost-per-foot": "cost_per_foot",
    "scale-plan": "scale_plan",
    "board-yield": "board_yield",
    "sheet-yield": "sheet_yield",
    "strips": "strips",
    "glue-up": "glue_up",
    "equal-spaces": "equal_spaces",
    "slats": "slats",
    "shelf-pins": "shelf_pins",
    "batch-rounding": "batch_rounding",
    "brace": "brace",
    "segments": "segments",
    "sloped-sides": "sloped_sides",
    "taper": "taper",
    "drawer": "drawer",
    "sliding-doors": "sliding_doors",
    "hinged-doors": "hinged_doors",
    "shelf-sag": "shelf_sag",
    "wood-movement": "wood_movement",
    "moisture": "moisture",
    "weight": "weight",
    "screws": "screws",
    "finish": "finish",
    "glue": "glue",
    "fractions": "fractions_sum",
    "convert": "convert",
}
"""Slug and file of each; a file is loaded when its calculator is first wanted: a browser waits for it."""

SLUGS = tuple(MODULES)
"""The names of all calculators."""


def calculator(slug: str) -> Calculator:
    """Return the calculator of that name.

    Raises:
        KeyError: if there is none.
    """
    found = import_module(f"scantling.calculators.{MODULES[slug]}").CALCULATOR
    assert isinstance(found, Calculator)
    return found


def calculators() -> tuple[Calculator, ...]:
    """Return all calculators in order."""
    return tuple(calculator(slug) for slug in SLUGS)
