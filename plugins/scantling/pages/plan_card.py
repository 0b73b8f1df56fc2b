"""The picture that a link to a plan shows elsewhere."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from html import unescape
from io import BytesIO
from typing import Any

from PIL import Image

from scantling.measure import write_money
from scantling.pages.all_sizes import PlanPages
from scantling.pages.choices import Choices
from scantling.pages.content import raw
from scantling.pages.facts import overall_size
from scantling.pages.finished import Finished, Page, SideFile
from scantling.pages.link_card import PICTURE_WIDTH, LinkCard, draw_card
from scantling.pages.look import Look
from scantling.pages.photo import sized_file
from scantling.pages.photo_sizing import WIDTHS
from scantling.pages.raster import dots
from scantling.report import Report
from scantling.source import SourcePlan
from scantling.words import say

NAME = "link-card"


def plan_card(source: SourcePlan, pages: PlanPages, photos: Finished, choices: Choices) -> Iterator[SideFile]:
    """Yield the card beside a plan's page: its title, picture, size, and what it costs from.

    Args:
        pages: with the reports at each size.
        photos: the author's, made small.
    """
    if not choices.link_cards or not pages.sizes:
        return
    folder = f"{choices.folder}/{source.slug}"
    card = LinkCard(pages.title, choices.site_name, tuple(_facts([at.report for at in pages.sizes], choices)))
    photo = _photo(source, photos, folder)
    if photo is not None:
        yield SideFile(f"{folder}/{NAME}.jpg", draw_card(card, photo, is_photo=True))
        return
    drawn = next((file for file in pages.finished.files if file.path == f"{folder}/card.svg"), None)
    picture = dots(raw(drawn.source), PICTURE_WIDTH) if drawn is not None else None
    yield SideFile(f"{folder}/{NAME}.png", draw_card(card, picture))


def _photo(source: SourcePlan, photos: Finished, folder: str) -> Image.Image | None:
    """Return the author's photo, the smallest that still fills its place; None where there is none."""
    shown = source.plan.photo if source.plan is not None else None
    if shown is None:
        return None
    made = {file.path: file.source for file in photos.files}
    names = (*(sized_file(shown.file, width, "jpg") for width in WIDTHS[1:]), shown.file)
    name = next((name for name in names if f"{folder}/{name}" in made), None)
    return Image.open(BytesIO(raw(made[f"{folder}/{name}"]))) if name is not None else None


def _facts(reports: list[Report], choices: Choices) -> Iterator[str]:
    usual = reports[0]
    costs = {report.totals.cost for report in reports}
    least = write_money(min(costs, key=lambda cost: cost.cents), usual.shop.currency)
    yield say("Materials from {cost}", cost=least) if len(costs) > 1 else say("Materials {cost}", cost=least)
    plan = usual.fitted.plan
    yield from filter(None, (_size(usual, choices), say(plan.skill), plan.build_time))


def _size(report: Report, choices: Choices) -> str:
    return unescape(overall_size(report, Look(choices.display, {})))


def with_plan_card(pages: Finished, beside: Finished) -> Finished:
    """Return a plan's pages with their card named in front matter; as they are where there is none."""
    found = [file.path for file in beside.files if f"/{NAME}." in file.path]
    if not found:
        return pages
    return replace(pages, pages=tuple(_with_card(page, found[0]) for page in pages.pages))


def _with_card(page: Page, card: str) -> Page:
    meta: Mapping[str, Any] = {**page.meta, "image": card, "image_words": page.meta["title"]}
    return replace(page, meta=meta)
