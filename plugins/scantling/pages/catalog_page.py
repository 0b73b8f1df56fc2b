"""The catalog: a card for each plan."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from scantling.measure import write_money
from scantling.pages.drawings import overall_drawing
from scantling.pages.facts import overall_size
from scantling.pages.finished import Page
from scantling.pages.html import escape, tag
from scantling.pages.look import Look
from scantling.pages.picture import picture
from scantling.pages.words import line_of
from scantling.report import Report


@dataclass(frozen=True, slots=True)
class Card:
    """What a card shows."""

    slug: str
    report: Report
    look: Look
    """With the addresses of pictures as seen from the catalog page."""


def catalog_page(cards: Sequence[Card], folder: str, title: str, intro: str) -> Page:
    """Return the page with a card for each plan."""
    inner = "".join(tag("li", _card(card), class_="sc-card") for card in cards)
    block = tag("section", tag("ul", inner, class_="sc-cards"), data_search_exclude="true")
    meta = {
        "title": title,
        "description": intro,
        "template": "scantling-catalog.html",
        "hide": ["toc", "navigation"],
    }
    return Page(f"{folder}/index.md", f"# {title}\n\n{intro}\n\n{block}\n", meta, in_nav=True)


def _card(card: Card) -> str:
    plan, report, look = card.report.fitted.plan, card.report, card.look
    title = tag("h2", tag("a", escape(plan.title), href=f"{card.slug}/"))
    cost = tag("b", escape(write_money(report.totals.cost, report.shop.currency)), class_="sc-cost")
    size = tag("span", overall_size(report, look), class_="sc-size")
    facts = [cost, size, escape(plan.skill), escape(plan.build_time)]
    line = tag("p", " ".join(tag("span", fact) for fact in facts if fact), class_="sc-line")
    summary = tag("p", line_of(card.report.fitted.summary, look.words, look.display))
    tags = (
        tag("p", " ".join(tag("span", escape(word)) for word in plan.tags), class_="sc-tags")
        if plan.tags
        else ""
    )
    head = tag("div", picture(report, overall_drawing(report, look.display), look), class_="sc-picture")
    return head + tag("div", title + summary + line + tags, class_="sc-card__words")
