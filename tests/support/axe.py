"""What axe-core finds wrong with a page: what would keep people out."""

from __future__ import annotations

from axe_playwright_python.sync_playwright import Axe

LAID_OUT = "*, *::before, *::after { content-visibility: visible !important; }"
"""What is far away is laid out as it comes near; axe-core would measure it where it does not stand yet."""


def violations(page) -> list[tuple[str, list[str]]]:
    """Return the rules that a page breaks, each with the pieces that break it."""
    page.add_style_tag(content=LAID_OUT)
    found = Axe().run(page).response["violations"]
    return [(one["id"], [node["html"][:140] for node in one["nodes"]]) for one in found]
