"""What the typesetter is given: words as trees, pictures as files."""

from __future__ import annotations

import html
import io
import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

import segno

from scantling.drawing import Template, size_words, templates, tiles, to_svg
from scantling.pages import (
    SECTIONS,
    Drawing,
    Drawings,
    Look,
    chosen_options,
    credit,
    overall_size,
    plan_fragments,
)
from scantling.paper.board_list import board_list
from scantling.paper.paper_words import paper_words
from scantling.paper.photos import printable
from scantling.paper.tree import breakable, tree_of
from scantling.report import Report
from scantling.words import say, spoken

PAPERS = {"letter": "us-letter", "a4": "a4"}
"""Sheets that plans are printed on, and what the typesetter calls them."""
TEXT_WIDTH = 493
"""Points between the margins of the narrower paper."""
SMALLEST_LETTER = Fraction(81, 10)
"""Points: no letter of a drawing is printed smaller."""
HALF = 264.0
"""How wide a drawing is in its own units where two stand side by side, so that letters stay large enough."""
BESIDE_WORDS = 210.0
"""How wide the picture of a step is, beside its words."""
BOOK_FACE = 0.84
"""How wide the letters of the book face run, as a share of the widest face that a screen may show."""
WITHOUT_LETTERS = 55
"""Percent of the width that a drawing without letters takes."""
LONGEST_RUNNING_TITLE = 44


@dataclass(frozen=True, slots=True)
class Sheets:
    """One plan at one size, ready for the typesetter."""

    data: Mapping[str, Any]
    files: Mapping[str, bytes]


def lay_out(
    report: Report, look: Look, *, paper: str, size_name: str, link: str, photos: Mapping[str, bytes]
) -> Sheets:
    """Return words and pictures of a plan for one kind of paper.

    Args:
        paper: a key of `PAPERS`.
        size_name: the size in words, "" for the usual one.
        link: where the plan is on the web at this size, "" if nowhere.
        photos: the author's pictures by the address that the page has for them.
    """
    plan = report.fitted.plan
    drawings = Drawings(
        report, look.display, width=HALF, step_width=BESIDE_WORDS, keyed=False, face=BOOK_FACE
    )
    fragments = {
        name: tree_of(html) for name, html in plan_fragments(report, look, drawings=drawings).items()
    }
    fragments["cut-list"] += board_list(report, look.display)
    files, pictures = _pictures(drawings, look, photos)
    for number, drawing in drawings.steps.items():
        pictures[look.drawing(drawing)]["sizes"] = _sizes(report, number, look)
    for drawing in drawings.views[-1:]:
        pictures[look.drawing(drawing)]["key"] = _key(report, look)
    title = " ".join(plan.title.split()) + (f", {size_name}" if size_name else "")
    data = {
        "title": title,
        "heading": breakable(title),
        "author": plan.author,
        "keywords": list(plan.tags),
        "lang": spoken().code,
        "words": paper_words(),
        "paper": PAPERS[paper],
        "running": breakable(_running(report, look, title)),
        "link": link,
        "credit": breakable(credit(plan)),
        "ruler": True,
        "summary": fragments["summary"],
        "picture": fragments["picture"],
        "facts": fragments["facts"],
        "chosen": [list(map(breakable, one)) for one in chosen_options(report)],
        "intro": fragments["intro"],
        "sections": [
            {"title": say(words), "nodes": fragments[name]} for name, words in SECTIONS if fragments.get(name)
        ],
        "pictures": pictures,
        "templates": [_template(made, files) for made in templates(report.fitted, look.display)],
    }
    if link:
        files["code.svg"] = code_of(link)
    return Sheets(data, files)


def _template(template: Template, files: dict[str, bytes]) -> dict[str, Any]:
    """Return a full-size drawing for the typesetter, its tiles added to the files."""
    placed = []
    for tile in tiles(template.scene):
        name = f"tile-{len(files)}.svg"
        files[name] = to_svg(tile.scene).encode()
        # a unit of the drawing is a point of the paper
        placed.append(
            {"file": name, "width": tile.scene.width, "height": tile.scene.height, "alt": tile.scene.title}
        )
    return {"title": breakable(template.title), "words": breakable(template.words), "tiles": placed}


def _running(report: Report, look: Look, title: str) -> str:
    """Return the line at the foot of each page: plan, size, revision, day of the prices."""
    short = (
        title if len(title) <= LONGEST_RUNNING_TITLE else title[: LONGEST_RUNNING_TITLE - 1].rstrip() + "…"
    )
    size = html.unescape(overall_size(report, look))
    words = [short, size] if size else [short]
    if report.fitted.plan.revised:
        words.append(say("revised {day}", day=report.fitted.plan.revised))
    if report.shop.prices_of:
        words.append(say("prices of {day}", day=report.shop.prices_of))
    return " · ".join(words)


def _pictures(
    drawings: Iterable[Drawing], look: Look, photos: Mapping[str, bytes]
) -> tuple[dict[str, bytes], dict[str, dict[str, Any]]]:
    """Return files for the typesetter, and for each address of the page its file and printed width."""
    files: dict[str, bytes] = {}
    pictures: dict[str, dict[str, Any]] = {}
    for drawing in drawings:
        name = f"drawing-{len(files)}.svg"
        files[name] = drawing.svg.encode()
        pictures[look.drawing(drawing)] = {"file": name, "width": f"{printed_share(drawing)}%"}
    for address, content in photos.items():
        photo = printable(content)
        if photo is not None:
            name = f"photo-{len(files)}.jpg"
            files[name] = photo
            pictures[address] = {"file": name, "width": "100%"}
    return files, pictures


def _sizes(report: Report, number: int, look: Look) -> list[list[str]]:
    """Return letter and size of each part that a step uses up: what stands below its picture on the page."""
    step = next(step for step in report.fitted.steps if step.number == number)
    parts = {part.id: part for part in report.fitted.parts}
    used = dict.fromkeys(use.name for use in step.uses if use.name in parts)
    return [[parts[name].letter, size_words(parts[name], look.display)] for name in used]


def _key(report: Report, look: Look) -> list[list[str]]:
    """Return letter, count and name, and size of each part: what stands beside the piece taken apart."""
    return [
        [part.letter, breakable(f"{part.count} × {part.id}"), size_words(part, look.display)]
        for part in report.fitted.parts
    ]


def printed_share(drawing: Drawing) -> int:
    """Return how much of the width a drawing takes, in percent: no more than its smallest letters need."""
    sizes = [Fraction(size) for size in re.findall(r'font-size="([0-9.]+)"', drawing.svg)]
    if not sizes:
        return WITHOUT_LETTERS
    needed = drawing.width * SMALLEST_LETTER / min(sizes)
    return min(100, -int(-100 * needed / TEXT_WIDTH // 1))


def code_of(link: str) -> bytes:
    """Return a QR code (ISO/IEC 18004) of a link as SVG."""
    out = io.BytesIO()
    segno.make(link, error="m", micro=False).save(
        out, kind="svg", border=2, xmldecl=False, svgns=True, nl=False
    )
    return out.getvalue()
