"""The page of a plan at one size."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from scantling.drawing import is_drawable
from scantling.formula import Value
from scantling.measure import Display, Length, hold, other_display, write_fraction, write_money
from scantling.pages.credit_line import credit
from scantling.pages.data_file import DATA_FILE
from scantling.pages.drawings import Drawings
from scantling.pages.drawings_bundle import DRAWINGS_FILE
from scantling.pages.finished import Page
from scantling.pages.fragments import plan_fragments
from scantling.pages.front_matter import in_front_matter
from scantling.pages.held import held
from scantling.pages.html import escape, tag
from scantling.pages.look import Look
from scantling.pages.markdown_words import bare, escape_markdown
from scantling.pages.model_file import MODEL_FILE
from scantling.pages.sections import SECTIONS
from scantling.plan import Offered
from scantling.report import Report
from scantling.words import mark, say

SEARCHED = {"summary", "intro", "steps", "safety", "notes"}
"""Fragments of whole sentences; tables and figures would run together in a search index."""


@dataclass(frozen=True, slots=True)
class AtSize:
    """A plan at one of its offered sizes, reckoned."""

    offered: Offered
    report: Report


def plan_page(
    here: AtSize,
    sizes: Sequence[AtSize],
    look: Look,
    folder: str,
    made_from: str,
    *,
    drawings: Drawings | None = None,
    live: str = "",
    turn: str = "",
    papers: bool = False,
    cost: str = "",
    structured: str = "",
    embed: str = "",
) -> Page:
    """Return the page of a plan at one size.

    Args:
        sizes: the plan at every offered size, the usual one first.
        folder: where the plan's pages stand: `plans/bench`.
        made_from: the author's file.
        drawings: of the plan at this size, where they have been made already.
        live: the controls with which readers choose a size of their own.
        turn: what turns the piece around in the place of its picture.
        papers: whether printable plans lie beside the page.
        cost: what each inch costs.
        structured: what search engines read of it, as JSON for a script.
        embed: how to put the plan into a post.
    """
    plan = here.report.fitted.plan
    is_usual = not here.offered.slug
    fragments = plan_fragments(here.report, look, drawings=drawings)
    found = search_words(here.report)
    blocks = [
        f"# {escape_markdown(_title(here, look.display))}",
        *_head(fragments, size_links(here, sizes, look.display), turn, live + _files(here, papers=papers)),
        *_sections({**fragments, "cost": cost}),
        _unsearched(embed) if embed else "",
        _ending(here, found),
    ]
    meta: dict[str, object] = {
        "title": in_front_matter(_title(here, look.display)),
        "description": in_front_matter(
            bare(here.report.fitted.summary, look.words, look.display) or plan.title
        ),
        "template": "scantling-plan.html",
        "hide": ["navigation"],
    }
    if structured:
        meta["structured"] = structured
    if is_usual:
        meta["tags"] = [in_front_matter(tag) for tag in (*plan.tags, *size_tags(sizes))]
    else:
        meta |= {
            "canonical": f"{folder}/",
            "plan": in_front_matter(plan.title),
            "search": {"exclude": True},
        }
    path = f"{folder}/index.md" if is_usual else f"{folder}/{here.offered.slug}/index.md"
    return Page(
        path,
        "\n\n".join(block for block in blocks if block) + "\n",
        meta,
        found if is_usual else (),
        made_from,
    )


_DATA = (
    ("cut-list.csv", mark("cut list (CSV)")),
    (DRAWINGS_FILE, mark("drawings (ZIP of SVG)")),
    (DATA_FILE, mark("all data (JSON)")),
)
_MODEL = ((MODEL_FILE, mark("3-D model (GLB)")),)
_PAPERS = (("plan-letter.pdf", mark("print on Letter (PDF)")), ("plan-a4.pdf", mark("print on A4 (PDF)")))


def _title(here: AtSize, display: Display) -> str:
    title = " ".join(here.report.fitted.plan.title.split())
    return f"{title}, {here.offered.told(display)}" if here.offered.slug else title


def _head(fragments: dict[str, str], links: str, turn: str, extras: str) -> Iterator[str]:
    yield _unsearched(_fragment("print", fragments["print"], class_="sc-print"))
    picture = _fragment("picture", fragments["picture"])
    if picture:
        picture = tag("div", picture + turn, class_="sc-picture")
    yield _unsearched(picture + _fragment("facts", fragments["facts"]), class_="sc-head")
    yield _unsearched(links) if links else ""
    yield extras
    yield _fragment("summary", fragments["summary"], class_="sc-summary")
    yield _fragment("intro", fragments["intro"], class_="sc-text")


def _files(here: AtSize, *, papers: bool) -> str:
    """Return links to what lies beside the page."""
    files = (
        *(_PAPERS if papers else ()),
        *_DATA,
        *(_MODEL if is_drawable(here.report.fitted) else ()),
    )
    links = ", ".join(tag("a", say(words), href=file) for file, words in files)
    return _unsearched(tag("p", say("To take along: {files}", files=links), class_="sc-files"))


def _sections(fragments: dict[str, str]) -> Iterator[str]:
    for name, title in SECTIONS:
        if fragments.get(name):
            yield f"## {say(title)}"
            block = _fragment(name, fragments[name])
            yield block if name in SEARCHED else _unsearched(block)


def _fragment(name: str, html: str, **attributes: object) -> str:
    return tag("div", html, data_fragment=name, **attributes) if html else ""


def _unsearched(html: str, **attributes: object) -> str:
    """Return HTML that no search index takes; the theme's index wants no element of the same name inside."""
    return tag("section", html, data_search_exclude="true", **attributes)


def size_links(here: AtSize, sizes: Sequence[AtSize], display: Display) -> str:
    """Return links to the plan at its other sizes, with what each costs; nothing where there is one size."""
    if len(sizes) < 2:
        return ""
    up = "../" if here.offered.slug else ""
    links = []
    for other in sizes:
        cost = write_money(other.report.totals.cost, other.report.shop.currency)
        words = _size_name(other.offered, display) + " " + tag("small", escape(cost))
        if other is here:
            links.append(tag("span", words, aria_current="page"))
        else:
            address = f"{up}{other.offered.slug}/" if other.offered.slug else "../"
            links.append(tag("a", words, href=address))
    chips = "".join(tag("li", link) for link in links)
    return tag("nav", tag("ul", chips), class_="sc-sizes", aria_label=say("Sizes of this plan"))


def _size_name(offered: Offered, display: Display) -> str:
    """Return what a size is called, with its name in the other unit for readers who measure in that."""
    name, other = (hold(offered.told(one)) for one in (display, other_display(display)))
    return tag("b", escape(name), data_other=other if other != name else None)


def _ending(here: AtSize, found: Sequence[str]) -> str:
    plan = here.report.fitted.plan
    lines = []
    words = credit(plan)
    if words:
        lines.append(tag("p", held(escape(words)), class_="sc-credit"))
    lines.append(
        tag("p", say("Found under: {words}", words=held(escape(", ".join(found)))), class_="sc-found")
    )
    return tag("div", "".join(lines), class_="sc-ending")


def size_tags(sizes: Sequence[AtSize]) -> tuple[str, ...]:
    """Return the sizes that a plan is ready at, in both units, as tags: the search weighs those above all.

    Inches are spelled out: no search index takes the word "in", but who types it is shown what begins so.
    """
    named: dict[str, set[Value]] = {}
    for size in sizes:
        for name, value in size.offered.unusual:
            if isinstance(value, Length):
                named.setdefault(name, {size.report.fitted.plan.sizes[name].usual}).add(value)
    lengths = ((name, value) for name, values in named.items() for value in values)
    written = (
        (f"{name} {write_fraction(value.inches)} {say('inches')}", f"{name} {Display('mm').length(value)}")
        for name, value in lengths
        if isinstance(value, Length)
    )
    return tuple(sorted({tag for both in written for tag in both}))


def search_words(report: Report) -> tuple[str, ...]:
    """Return what a reader may look for: title, parts, materials, tags, each once."""
    fitted = report.fitted
    words = [
        " ".join(fitted.plan.title.split()),
        *fitted.plan.tags,
        say(fitted.plan.room),
        say(fitted.plan.skill),
    ]
    words += [*fitted.plan.tools, *(part.id for part in fitted.parts)]
    words += [line.stock.key for line in report.materials.stocks]
    words += [line.ware.key for line in report.materials.wares]
    return tuple(dict.fromkeys(word for word in words if word))
