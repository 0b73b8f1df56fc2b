"""The page "What the numbers are checked against", made from the tests."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from itertools import groupby
from pathlib import Path

from scantling.quantities import Quantity
from tests.outside.sources import KINDS, Check

PAGE = Path(__file__).resolve().parent.parent.parent / "docs" / "reference" / "checked-against.md"

ROOMS = {
    "words": "Words",
    "measure": "Lengths, areas, weights and money",
    "geometry": "Angles and places",
    "formula": "Formulas",
    "shop": "What can be bought",
    "plan": "A plan at a size",
    "cutting": "Cutting plans",
    "report": "Materials, weight and cost",
    "drawing": "Drawings",
    "calculators": "Calculators",
    "checks": "Checks of a plan",
}

TOP = """\
---
title: What the numbers are checked against
description: For each number that scantling computes, the standard, book or library it is compared with.
---

<!-- Made by `make docs` from the tests in tests/outside/; edit those. -->

# What the numbers are checked against

Every number that scantling computes is compared, each time its tests run, with something that nobody here
wrote. This page is made from those tests. A number without a row here makes the tests fail.
"""


def write(quantities: Iterable[Quantity], checks: Iterable[Check]) -> str:
    """Return the page as Markdown."""
    rows = {quantity: [check for check in checks if check.quantity == quantity.id] for quantity in quantities}
    rows = {quantity: found for quantity, found in rows.items() if found}
    parts = [TOP, summary(rows)]
    for room, group in groupby(rows, key=lambda quantity: quantity.room):
        parts.append(f"## {ROOMS[room]}\n")
        parts.extend(section(quantity, rows[quantity]) for quantity in group)
    return "\n".join(parts)


def summary(rows: dict[Quantity, list[Check]]) -> str:
    """Return how many numbers are checked against which kinds of source."""
    kinds = Counter(kind for found in rows.values() for kind in {check.kind for check in found})
    lines = ["| Kind of source | It is | Numbers checked against it |", "|---|---|--:|"]
    lines += [f"| {kind} | {meaning} | {kinds[kind]} |" for kind, meaning in KINDS.items() if kinds[kind]]
    return f"Numbers checked: {len(rows)}.\n\n" + "\n".join(lines) + "\n"


def section(quantity: Quantity, checks: list[Check]) -> str:
    """Return the part of the page about one quantity."""
    lines = [f"### {text(quantity.title)} {{#{quantity.id}}}", ""]
    unit = "" if quantity.unit == "1" else f" Unit: {text(quantity.unit)}."
    lines += [f"{text(quantity.meaning)}{unit}", ""]
    lines += ["| Checked against | Where in it | Kind | Test |", "|---|---|---|---|"]
    for check in sorted(checks, key=lambda check: (list(KINDS).index(check.kind), check)):
        document = text(check.document) or "no source"
        lines.append(f"| {document} | {text(check.place)} | {check.kind} | `{check.test}` |")
    return "\n".join(lines) + "\n"


def text(words: str) -> str:
    """Return plain words with the signs that mean something in Markdown or HTML escaped."""
    for sign in "\\`*_[]|":
        words = words.replace(sign, "\\" + sign)
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
