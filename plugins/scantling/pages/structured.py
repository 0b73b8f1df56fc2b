"""What search engines read of a page: schema.org data as JSON, safe to stand in a script of HTML.

The vocabulary is that of https://schema.org/HowTo and https://schema.org/ItemList. Nothing is offered for
sale, so there is no Offer; no time is told, since an author's "a weekend" is none that could be reckoned.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from scantling.measure import write_money
from scantling.pages.bought import bought
from scantling.pages.choices import Choices
from scantling.pages.facts import all_tools
from scantling.pages.finding import Finding
from scantling.pages.look import Look
from scantling.pages.markdown_words import bare
from scantling.pages.steps import step_anchor
from scantling.plan import FittedStep
from scantling.report import Report

_ESCAPES = {ord(sign): f"\\u{ord(sign):04x}" for sign in "<>&\u2028\u2029"}


def in_script(data: Mapping[str, Any]) -> str:
    """Return data as JSON that no sign of HTML can end or open anything in."""
    return json.dumps(data, ensure_ascii=False, separators=(",", ":")).translate(_ESCAPES)


def how_to(slug: str, report: Report, look: Look, choices: Choices, *, image: str) -> str:
    """Return a plan as a HowTo: its steps, tools and supplies at this size.

    Args:
        image: where the picture at its head is, from the plan's page; "" for none.
    """
    plan = report.fitted.plan
    home = address(choices, f"{choices.folder}/{slug}/")
    data = {
        "@context": "https://schema.org",
        "@type": "HowTo",
        "name": _line(plan.title),
        "description": bare(report.fitted.summary, look.words, look.display),
        "url": home,
        "image": home + image if image else "",
        "keywords": list(plan.tags),
        "creditText": _line(plan.author),
        "license": {"@type": "CreativeWork", "name": _line(plan.licence)} if plan.licence else "",
        "dateModified": plan.revised,
        "estimatedCost": write_money(report.totals.cost, report.shop.currency),
        "tool": [{"@type": "HowToTool", "name": name} for name in all_tools(report)],
        "supply": list(_supplies(report)),
        "step": [_step(step, home, look) for step in report.fitted.steps],
    }
    return in_script({key: value for key, value in data.items() if value})


def _line(words: str) -> str:
    return " ".join(words.split())


def _supplies(report: Report) -> Iterator[Mapping[str, Any]]:
    for line in bought(report):
        yield {"@type": "HowToSupply", "name": line.name, "requiredQuantity": line.quantity}


def _step(step: FittedStep, home: str, look: Look) -> Mapping[str, Any]:
    title = bare(step.title, look.words, look.display)
    return {
        "@type": "HowToStep",
        "position": step.number,
        "name": title,
        "text": bare(step.text, look.words, look.display) or title,
        "url": f"{home}#{step_anchor(step)}",
    }


def item_list(findings: Sequence[Finding], choices: Choices) -> str:
    """Return the catalog as an ItemList of its plans, in the order in which they are listed."""
    items = [
        {
            "@type": "ListItem",
            "position": place,
            "name": found.title,
            "url": address(choices, f"{choices.folder}/{found.slug}/", near=f"{found.slug}/"),
        }
        for place, found in enumerate(findings, start=1)
    ]
    data = {
        "@context": "https://schema.org",
        "@type": "ItemList",
        "name": choices.title,
        "numberOfItems": len(items),
        "itemListElement": items,
    }
    return in_script(data)


def address(choices: Choices, path: str, *, near: str = "./") -> str:
    """Return a whole address, or the one from the page itself where the site has none.

    Args:
        path: from the root of the site.
        near: the same, from the page that says so.
    """
    return f"{choices.site_url.rstrip('/')}/{path}" if choices.site_url else near
