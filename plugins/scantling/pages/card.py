"""A card that stands for a plan."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.measure import other_display, write_money
from scantling.pages.drawings import Drawing
from scantling.pages.facts import both_sizes
from scantling.pages.html import escape, tag
from scantling.pages.look import Look
from scantling.pages.picture import picture
from scantling.pages.words import line_of
from scantling.report import Report
from scantling.words import say


@dataclass(frozen=True, slots=True)
class Card:
    """What a card shows."""

    slug: str
    report: Report
    look: Look
    """With the addresses of pictures as seen from the catalog page."""
    drawing: Drawing | None
    """Shown where there is no photo."""


def card_of(card: Card) -> str:
    """Return the card: picture, title, summary, cost, size, skill, time and tags."""
    plan, report, look = card.report.fitted.plan, card.report, card.look
    title = tag("h2", tag("a", escape(plan.title), href=f"{card.slug}/"))
    cost = tag("b", escape(write_money(report.totals.cost, report.shop.currency)), class_="sc-cost")
    facts = [cost, both_sizes(report, look), escape(say(plan.skill)), escape(plan.build_time)]
    line = tag("p", " ".join(tag("span", fact) for fact in facts if fact), class_="sc-line")
    other = other_display(look.display)
    summary = tag("p", line_of(report.fitted.summary, look.words, look.display, other))
    tags = " ".join(tag("span", escape(word)) for word in plan.tags)
    head = tag("div", picture(report, card.drawing, look, on_card=True), class_="sc-picture")
    words = title + summary + line + (tag("p", tags, class_="sc-tags") if tags else "")
    return head + tag("div", words, class_="sc-card__words")
