"""A catalog page of many made-up plans, as a page of its own: style and script inside, no theme."""

from __future__ import annotations

import re

from scantling.pages import SCRIPTS, STYLES, THEME, Choices
from scantling.pages.catalog_page import Carded, catalog_page
from scantling.pages.finding import Finding

ROOMS = ("entry", "kitchen", "garden", "bedroom", "workshop")
SKILLS = ("first project", "some practice", "experienced")
TIMES = ("an afternoon", "a weekend", "two weekends")
MATERIALS = ("Lumber", "Sheet goods", "Fence pickets")
TOOLS = (("saw",), ("drill",), ("brad nailer", "hammer"), ("router",), ("plane",))
TAGS = tuple(f"tag {number}" for number in range(30))


def made_up(number: int) -> Finding:
    """Return a plan's finding that is another for every number, and the same each time."""
    return Finding(
        slug=f"plan-{number}",
        title=f"Plan {number * 7919 % 10007}",
        room=ROOMS[number % 5],
        skill=SKILLS[number // 5 % 3],
        time=TIMES[number // 2 % 3],
        tags=(TAGS[number % 30], TAGS[number * 7 % 30]),
        tools=tuple(tool for place, tool in enumerate(TOOLS) if (number >> place) % 2 or place == 0),
        materials=(MATERIALS[number % 3],) if number % 4 else MATERIALS[:2],
        cents=2_000 + number * 7919 % 50_000,
        width=None if number % 17 == 0 else 12_000 + number * 613 % 60_000,
        least_width=None if number % 17 == 0 else 10_000 + number * 613 % 40_000,
        sheets=number % 4,
        revised=f"2026-{1 + number % 12:02d}-{1 + number % 28:02d}",
    )


def _without_fonts(style: str) -> str:
    return re.sub(r"@font-face \{[^}]*\}", "", style)


def catalog_html(count: int) -> str:
    """Return a catalog page of so many made-up plans."""
    picture = '<div class="sc-picture"><svg viewBox="0 0 20 10"><rect width="20" height="10"/></svg></div>'
    cards = []
    for number in range(count):
        found = made_up(number)
        words = f'<h2><a href="{found.slug}/">{found.title}</a></h2><p>A plan for {found.room}.</p>'
        card = f'{picture}<div class="sc-card__words">{words}<p class="sc-line">{found.skill}</p></div>'
        cards.append(Carded(card, found))
    page = catalog_page(cards, Choices())
    section = page.markdown[page.markdown.index("<section") :]
    styles = "".join(f"<style>{_without_fonts((THEME / name).read_text('utf-8'))}</style>" for name in STYLES)
    script = (THEME / next(name for name in SCRIPTS if "finding" in name)).read_text("utf-8")
    return (
        '<!doctype html><html lang="en" dir="ltr"><meta charset="utf-8"><title>Plans</title>'
        '<link rel="icon" href="data:,">'
        f'{styles}<body data-md-color-scheme="notebook"><main class="md-typeset"><h1>Plans</h1>'
        f"{section}</main>"
        f"<script>{script}</script></body></html>"
    )
