"""What the typesetter is given: words as trees, pictures as files."""

from __future__ import annotations

import io
import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

import segno

from scantling.pages import SECTIONS, Drawing, Drawings, Look, plan_fragments
from scantling.paper.photos import printable
from scantling.paper.tree import breakable, tree_of
from scantling.report import Report

PAPERS = {"letter": "us-letter", "a4": "a4"}
"""Sheets that plans are printed on, and what the typesetter calls them."""
TEXT_WIDTH = 493
"""Points between the margins of the narrower paper."""
SMALLEST_LETTER = Fraction(81, 10)
"""Points: no letter of a drawing is printed smaller."""
LEAST_SHARE = 55
"""Percent of the width that a drawing takes at least."""
LONGEST_RUNNING_TITLE = 60


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
    drawings = Drawings(report, look.display)
    fragments = {
        name: tree_of(html) for name, html in plan_fragments(report, look, drawings=drawings).items()
    }
    files, pictures = _pictures(drawings, look, photos)
    title = " ".join(plan.title.split()) + (f", {size_name}" if size_name else "")
    data = {
        "title": title,
        "heading": breakable(title),
        "author": plan.author,
        "keywords": list(plan.tags),
        "lang": "en",
        "paper": PAPERS[paper],
        "running": breakable(_running(report, title)),
        "link": link,
        "ruler": True,
        "summary": fragments["summary"],
        "picture": fragments["picture"],
        "facts": fragments["facts"],
        "intro": fragments["intro"],
        "sections": [
            {"title": words, "nodes": fragments[name]} for name, words in SECTIONS if fragments[name]
        ],
        "pictures": pictures,
    }
    if link:
        files["code.svg"] = code_of(link)
    return Sheets(data, files)


def _running(report: Report, title: str) -> str:
    """Return the line at the foot of each page: plan, size, revision, day of the prices."""
    short = (
        title if len(title) <= LONGEST_RUNNING_TITLE else title[: LONGEST_RUNNING_TITLE - 1].rstrip() + "…"
    )
    words = [short]
    if report.fitted.plan.revised:
        words.append(f"revised {report.fitted.plan.revised}")
    if report.shop.prices_of:
        words.append(f"prices of {report.shop.prices_of}")
    return " · ".join(words)


def _pictures(
    drawings: Iterable[Drawing], look: Look, photos: Mapping[str, bytes]
) -> tuple[dict[str, bytes], dict[str, dict[str, str]]]:
    """Return files for the typesetter, and for each address of the page its file and printed width."""
    files: dict[str, bytes] = {}
    pictures: dict[str, dict[str, str]] = {}
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


def printed_share(drawing: Drawing) -> int:
    """Return how much of the width a drawing takes, in percent: no more than its smallest letters need."""
    sizes = [Fraction(size) for size in re.findall(r'font-size="([0-9.]+)"', drawing.svg)]
    if not sizes:
        return LEAST_SHARE
    needed = drawing.width * SMALLEST_LETTER / min(sizes)
    return min(100, max(LEAST_SHARE, -int(-100 * needed / TEXT_WIDTH // 1)))


def code_of(link: str) -> bytes:
    """Return a QR code (ISO/IEC 18004) of a link as SVG."""
    out = io.BytesIO()
    segno.make(link, error="m", micro=False).save(
        out, kind="svg", border=2, xmldecl=False, svgns=True, nl=False
    )
    return out.getvalue()
