"""The page that a preview shows while plans are faulty."""

from __future__ import annotations

import re
from collections.abc import Iterable

from scantling.pages.finished import Page
from scantling.pages.html import tag
from scantling.source import Diagnostic, render_html


def fault_page(faults: Iterable[Diagnostic], folder: str) -> Page:
    """Return a page in the catalog's place that shows every fault."""
    faults = tuple(faults)
    how_many = "One fault" if len(faults) == 1 else f"{len(faults)} faults"
    block = tag("section", _plain(render_html(faults)), data_search_exclude="true")
    words = "Only you see this page. Nothing is published until they are mended."
    meta = {"title": "Faults", "template": "scantling-catalog.html", "hide": ["toc", "navigation"]}
    return Page(f"{folder}/index.md", f"# {how_many} to mend\n\n{words}\n\n{block}\n", meta, in_nav=True)


def _plain(html: str) -> str:
    """Return HTML with nothing in it that Markdown or a template language takes up."""
    html = html.replace("{", "&#123;").replace("}", "&#125;").replace("`", "&#96;")
    return re.sub(r"\n(?=[ \t]*\n)", "&#10;", html)
