"""The page that a preview shows while plans are faulty."""

from __future__ import annotations

from collections.abc import Iterable

from scantling.pages.finished import Page
from scantling.pages.html import escape, tag
from scantling.source import Diagnostic


def fault_page(faults: Iterable[Diagnostic], folder: str) -> Page:
    """Return a page in the catalog's place that shows every fault."""
    faults = tuple(faults)
    how_many = "One fault" if len(faults) == 1 else f"{len(faults)} faults"
    inner = "".join(tag("li", _fault(fault)) for fault in faults)
    block = tag("section", tag("ol", inner, class_="sc-faults"), data_search_exclude="true")
    words = f"{how_many} to mend. This page is for you alone: nothing is published while there are any."
    meta = {"title": "Faults", "template": "scantling-catalog.html", "hide": ["toc", "navigation"]}
    return Page(f"{folder}/index.md", f"# {how_many} to mend\n\n{words}\n\n{block}\n", meta, in_nav=True)


def _fault(fault: Diagnostic) -> str:
    spot = fault.spot
    place = f"{spot.path}:{spot.line}:{spot.column}" if spot.line else spot.path
    parts = [tag("b", escape(fault.message)), tag("code", escape(place))]
    if spot.excerpt:
        end = spot.end_column if spot.end_line == spot.line else len(spot.excerpt) + 1
        parts.append(tag("pre", tag("code", _marked(spot.excerpt, spot.column - 1, end - 1))))
    if fault.help:
        parts.append(tag("p", "To mend it: " + escape(fault.help)))
    parts += [tag("p", escape(note.message)) for note in fault.notes]
    return "".join(parts)


def _marked(line: str, start: int, end: int) -> str:
    before, marked, after = line[:start], line[start : max(end, start + 1)], line[max(end, start + 1) :]
    return escape(before) + tag("mark", escape(marked) or " ") + escape(after)
