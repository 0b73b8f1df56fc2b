"""What the typesetter is given: words as trees, pictures as files."""

from __future__ import annotations

import io
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

import segno

from scantling.pages import SECTIONS, Drawing, Look, plan_drawings, plan_fragments
from scantling.paper.photos import printable
from scantling.paper.tree import tree_of
from scantling.report import Report

PAPERS = {"letter": "us-letter", "a4": "a4"}
"""Sheets that plans are printed on, and what the typesetter calls them."""
TALL = 1.15
"""A picture that is not at least this much wider than high is kept from filling the page."""
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
    fragments = {name: tree_of(html) for name, html in plan_fragments(report, look).items()}
    files, pictures = _pictures(plan_drawings(report, look), look, photos)
    title = " ".join(plan.title.split()) + (f", {size_name}" if size_name else "")
    data = {
        "title": title,
        "author": plan.author,
        "keywords": list(plan.tags),
        "lang": "en",
        "paper": PAPERS[paper],
        "running": _running(report, title),
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
        wide = drawing.width >= TALL * drawing.height
        pictures[look.drawing(drawing)] = {"file": name, "width": "100%" if wide else "62%"}
    for address, content in photos.items():
        photo = printable(content)
        if photo is not None:
            name = f"photo-{len(files)}.jpg"
            files[name] = photo
            pictures[address] = {"file": name, "width": "100%"}
    return files, pictures


def code_of(link: str) -> bytes:
    """Return a QR code (ISO/IEC 18004) of a link as SVG."""
    out = io.BytesIO()
    segno.make(link, error="m", micro=False).save(
        out, kind="svg", border=2, xmldecl=False, svgns=True, nl=False
    )
    return out.getvalue()
