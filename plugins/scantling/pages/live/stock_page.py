"""The page on which readers say what they have, and see what they can build from it."""

from __future__ import annotations

import json
from collections.abc import Iterable

from scantling.pages.choices import Choices
from scantling.pages.finding import Finding
from scantling.pages.finished import Finished, Page, SideFile
from scantling.pages.html import tag
from scantling.pages.live.choice import display_data
from scantling.pages.live.controls import from_file
from scantling.words import mark, say

STOCK = "from-stock/index.md"
"""The page, below the site's source."""
DATA = "plans-by-need.json"
_TITLE = mark("What can I build from what I have?")
_DESCRIPTION = mark(
    "Write down your sheets and boards, and see which plans need nothing more, or how little."
)
_INTRO = mark(
    "Write down the sheets and boards that you have, a line each, in the shop's own names. Each plan that "
    "may do is cut from them exactly, in your browser, at the sizes that it offers."
)


def stock_page(findings: Iterable[Finding], choices: Choices) -> Finished:
    """Return the page and what it knows of every plan; nothing for a site without live pages."""
    if not choices.engine:
        return Finished((), ())
    known = [
        {
            "slug": found.slug,
            "title": found.title,
            "sizes": [
                {"at": size.slug, "label": size.label, "chosen": dict(size.chosen), "needs": size.needs}
                for size in found.sizes
            ],
        }
        for found in findings
    ]
    meta = {
        "title": say(_TITLE),
        "description": say(_DESCRIPTION),
        "template": "scantling-catalog.html",
        "hide": ["toc", "navigation"],
        "search": {"exclude": True},
    }
    page = Page(STOCK, f"# {say(_TITLE)}\n\n{say(_INTRO)}\n\n{_section(choices)}\n", meta)
    return Finished((page,), (SideFile(f"{choices.folder}/{DATA}", _json(known)),))


def _section(choices: Choices) -> str:
    own = f"../{choices.folder}/"
    box = tag(
        "textarea",
        "",
        rows="5",
        spellcheck="false",
        placeholder=say("1 sheet 3/4 plywood\n6 2x4 8 ft"),
        aria_labelledby="what-i-have-head",
        aria_describedby="what-i-have-fault",
        data_control="",
        data_stock_text=True,
    )
    look = tag("button", say("See what I can build"), type="button", data_stock_look=True)
    more = tag("button", say("Look at more plans"), type="button", data_stock_more=True, hidden=True)
    status = (
        tag("p", "", id="what-i-have-fault", class_="sc-live__fault", hidden=True, data_fault="")
        + tag("progress", "", max="4", value="0", aria_label=say("Getting ready"), hidden=True)
        + tag("p", "", role="status", aria_live="polite", class_="sc-live__say", data_live_say=True)
    )
    parts = "".join(
        tag(
            "div",
            tag("h2", title) + tag("ul", "", class_="sc-stock__plans"),
            hidden=True,
            data_stock_part=name,
        )
        for name, title in (("enough", say("Nothing more to buy")), ("more", say("With this much more")))
    )
    inner = (
        tag("h2", say("What I have"), id="what-i-have-head")
        + box
        + tag("p", look, class_="sc-live__buttons")
        + status
        + tag("ul", "", class_="sc-stock__understood", data_stock_understood=True)
        + parts
        + tag("p", more, class_="sc-live__buttons")
    )
    section = tag(
        "section",
        inner,
        class_="sc-live",
        inert=True,
        aria_labelledby="what-i-have-head",
        data_live="stock",
        data_plans=own,
        data_catalog=f"{own}{DATA}",
        data_engine=choices.engine,
        data_shop=f"{own}live-shop.json",
        data_display=_json(display_data(choices.display)),
        data_search_exclude="true",
    )
    without = tag("p", say("This page needs JavaScript."), class_="sc-live__without sc-without-script")
    return section + without + from_file()


def _json(data: object) -> str:
    return json.dumps(data, ensure_ascii=False, separators=(",", ":"))
