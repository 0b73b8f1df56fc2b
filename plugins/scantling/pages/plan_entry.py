"""Plans as entries of the feed."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from html import unescape

from scantling.pages.all_sizes import PlanPages
from scantling.pages.choices import Choices
from scantling.pages.content import raw
from scantling.pages.feed import MOST, Entry
from scantling.source import Claim


def plan_entries(plans: Iterable[tuple[PlanPages, Claim]], choices: Choices) -> Iterator[Entry]:
    """Yield the plans that were revised last, as many as a feed tells of; those without a day are left out.

    An entry's content is the piece of plain HTML that is made for feeds and mail.
    """
    dated = [(pages, claim, pages.finding) for pages, claim in plans if pages.finding is not None]
    dated = [one for one in dated if one[2].revised]
    for pages, claim, found in sorted(dated, key=lambda one: one[2].revised, reverse=True)[:MOST]:
        first = claim.formerly[0][0] if claim.formerly else found.slug
        yield Entry(
            path=f"{choices.folder}/{found.slug}/",
            title=found.title,
            updated=found.revised,
            summary=unescape(str(pages.finished.pages[0].meta["description"])),
            content=_fragment(pages, f"{choices.folder}/{found.slug}/embed/fragment.html"),
            words=found.tags,
            first_path=f"{choices.folder}/{first}/",
        )


def _fragment(pages: PlanPages, path: str) -> str:
    found = next((file for file in pages.finished.files if file.path == path), None)
    return raw(found.source).decode() if found is not None else ""
