"""A plan in a post on another site: a small page for a frame, a piece of plain HTML, and how to use them.

The page holds its own style, asks for nothing but its picture, and works in a frame that is allowed nothing:
with scripts allowed it tells the page around it how high it is.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from scantling.measure import hold, write_money
from scantling.pages.bought import bought
from scantling.pages.choices import Choices
from scantling.pages.credit_line import credit
from scantling.pages.drawings import Drawing
from scantling.pages.facts import overall_size
from scantling.pages.finished import SideFile
from scantling.pages.framed import frame, frame_script
from scantling.pages.held import held
from scantling.pages.html import escape, tag
from scantling.pages.look import Look
from scantling.pages.markdown_words import bare
from scantling.pages.picture import picture
from scantling.pages.structured import address
from scantling.report import Report
from scantling.words import say, spoken

_HERE = Path(__file__).parent / "embedded"


def embed_files(
    report: Report, drawing: Drawing | None, look: Look, folder: str, choices: Choices
) -> Iterator[SideFile]:
    """Yield the page for a frame, and the piece of plain HTML where the site has an address.

    Args:
        drawing: the one on the plan's card, where there is no photo.
        folder: where the plan's pages stand.
    """
    yield SideFile(f"{folder}/embed/index.html", _page(report, drawing, look, folder, choices))
    if choices.site_url:
        yield SideFile(f"{folder}/embed/fragment.html", _fragment(report, look, folder, choices))


def _page(report: Report, drawing: Drawing | None, look: Look, folder: str, choices: Choices) -> str:
    title = escape(_title(report))
    home = escape(address(choices, f"{folder}/", near="../"))
    small = {file: replace(size, widths=size.widths[:1]) for file, size in look.photos.items()}
    shown = picture(report, drawing, replace(look, up="../", across="../", photos=small))
    link = tag("a", title, href=home, target="_blank", rel="noopener")
    more = tag("a", say("Cut list, diagrams and steps"), href=home, target="_blank", rel="noopener")
    told = (
        tag("h1", link),
        shown,
        tag("p", _summary(report, look)),
        tag("p", _facts(report, look), class_="facts"),
    )
    note = tag("p", held(escape(credit(report.fitted.plan))), class_="note")
    listed = (_table(report), tag("p", more), note)
    # side by side where the frame is wide
    body = tag("div", "".join(told)) + tag("div", "".join(listed))
    style = (_HERE / "embed.css").read_text("utf-8")
    script = (_HERE / "embed.js").read_text("utf-8")
    return (
        f'<!doctype html>\n<html lang="{spoken().code}">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f'<meta name="robots" content="noindex">\n<link rel="canonical" href="{home}">\n'
        f"<title>{title}</title>\n<style>\n{style}</style>\n</head>\n<body>\n<main>{body}</main>\n"
        f"<script>\n{script}</script>\n</body>\n</html>\n"
    )


def _title(report: Report) -> str:
    return " ".join(report.fitted.plan.title.split())


def _summary(report: Report, look: Look) -> str:
    """Return the summary without links, which would lead nowhere on another site."""
    return escape(bare(report.fitted.summary, look.words, look.display))


def _facts(report: Report, look: Look) -> str:
    plan = report.fitted.plan
    facts = (overall_size(report, look), escape(say(plan.skill)), escape(plan.build_time))
    return held(" · ".join(fact for fact in facts if fact))


def _table(report: Report) -> str:
    rows = "".join(
        tag(
            "tr",
            tag("td", str(line.quantity)) + tag("td", escape(hold(line.name))) + tag("td", escape(line.cost)),
        )
        for line in bought(report)
    )
    head = tag("tr", "".join(tag("th", word, scope="col") for word in (say("Buy"), say("Item"), say("Cost"))))
    cost = escape(write_money(report.totals.cost, report.shop.currency))
    foot = tag("tr", tag("th", say("Together"), scope="row", colspan=2) + tag("td", tag("b", cost)))
    day = report.shop.prices_of
    note = tag("p", escape(say("Prices of {day}; yours will differ.", day=day)), class_="note") if day else ""
    return tag("table", tag("thead", head) + tag("tbody", rows) + tag("tfoot", foot)) + note


def _fragment(report: Report, look: Look, folder: str, choices: Choices) -> str:
    """Return HTML without any style, script or picture, as feeds and mail take it.

    It is plain ASCII: a piece of a page cannot say in which encoding it is read.
    """
    home = address(choices, f"{folder}/")
    lines = "".join(
        tag("li", escape(hold(f"{line.quantity} × {line.name}: {line.cost}"))) + "\n"
        for line in bought(report)
    )
    together = escape(say("Together {cost}", cost=write_money(report.totals.cost, report.shop.currency)))
    written = (
        f"<h3>{tag('a', escape(_title(report)), href=home)}</h3>\n"
        f"<p>{_summary(report, look)}</p>\n"
        f"<p>{_facts(report, look)}</p>\n<ul>\n{lines}</ul>\n"
        f"<p>{together}</p>\n<p>{escape(credit(report.fitted.plan))}</p>\n"
    )
    return written.encode("ascii", "xmlcharrefreplace").decode()


def embed_words(report: Report, folder: str, choices: Choices) -> str:
    """Return what tells a reader how to put the plan into a post; nothing where the site has no address."""
    if not choices.site_url:
        return ""
    code = tag("textarea", escape(_code(report, folder, choices)), readonly=True, rows=8, spellcheck="false")
    words = tag("span", say("A frame with its picture and its materials list, which follow the plan:"))
    label = tag("label", words + code)
    plain = tag("a", say("a piece of plain HTML"), href="embed/fragment.html")
    mail = tag(
        "p",
        say("For mail, a feed or a place that takes no frames there is {plain}, as of today.", plain=plain),
    )
    head = tag("summary", say("Put this plan into a post"))
    return tag("details", head + label + mail, class_="sc-find__group sc-embed")


def _code(report: Report, folder: str, choices: Choices) -> str:
    """Return what goes into the post: the frame, and a script that makes it as high as its page."""
    source = address(choices, f"{folder}/embed/")
    title = say("{plan}: what it takes", plan=_title(report))
    return f"{frame(source, title)}\n{frame_script(source)}"
