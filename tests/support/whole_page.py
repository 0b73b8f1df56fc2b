"""A page laid out as a whole: its words, and what axe-core finds wrong with it."""

from __future__ import annotations

from axe_playwright_python.sync_playwright import Axe

LAID_OUT = "*, *::before, *::after { content-visibility: visible !important; }"
"""What is far away is laid out as it comes near; until then it has no words, and no place to be measured."""


def lay_out(page) -> None:
    """Lay out all of a page, as a reader does who scrolls to its end; also where scripts are switched off."""
    add = "css => document.head.append(Object.assign(document.createElement('style'), { textContent: css }))"
    page.evaluate(add, LAID_OUT)


def wake_up(page) -> None:
    """Wait until the scripts of a page have started, and have made wide tables reachable by key."""
    page.wait_for_function("!document.getElementById('sc-scripts') || self.document$")
    page.wait_for_timeout(200)


def violations(page) -> list[tuple[str, list[str]]]:
    """Return the rules that a page breaks, each with the pieces that break it."""
    wake_up(page)
    lay_out(page)
    found = Axe().run(page).response["violations"]
    return [(one["id"], [node["html"][:140] for node in one["nodes"]]) for one in found]
