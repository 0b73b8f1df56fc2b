"""The printable plans beside the pages: one for each size and kind of paper, kept as files."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING
from urllib.parse import urlencode

from scantling.build.cache import Cache, code_digest, digest
from scantling.build.stored import Piece, whole_entry
from scantling.pages import Choices, Look, PlanPages, SideFile, render_words
from scantling.plan import Offered, write_choice
from scantling.source import SourcePlan

if TYPE_CHECKING:
    from scantling.paper import Sheets

KIND = "papers"


def print_plan(
    pages: PlanPages, source: SourcePlan, choices: Choices, pictures: Mapping[str, bytes], cache: Cache
) -> Iterator[SideFile]:
    """Yield a plan's PDFs at every offered size.

    Args:
        pages: with the reports at each size.
        pictures: the author's photos by name.
    """
    from scantling.paper import PAPERS, lay_out  # noqa: PLC0415 - a preview starts without it

    assert source.plan is not None
    look = Look(choices.display, render_words(source.plan))
    for size in pages.sizes:
        folder = "/".join(part for part in (choices.folder, source.slug, size.offered.slug) if part)
        for paper in PAPERS:
            sheets = lay_out(
                size.report,
                look,
                paper=paper,
                size_name=size.offered.told(choices.display) if size.offered.slug else "",
                link=link_of(choices, source.slug, size.offered),
                photos=pictures,
            )
            yield SideFile(f"{folder}/plan-{paper}.pdf", _printed(sheets, cache))


def link_of(choices: Choices, slug: str, offered: Offered) -> str:
    """Return the address of a plan on the web at one size, or "" where the site has none."""
    if not choices.site_url:
        return ""
    chosen = {**offered.choice.sizes, **offered.choice.options}
    written = {name: write_choice(value).replace(" ", "") for name, value in chosen.items()}
    query = f"?{urlencode(written)}" if written else ""
    return f"{choices.site_url.rstrip('/')}/{choices.folder}/{slug}/{query}"


def _printed(sheets: Sheets, cache: Cache) -> bytes | Piece:
    files = (part for name, content in sorted(sheets.files.items()) for part in (name, content))
    name = digest(code_digest(), json.dumps(sheets.data, sort_keys=True), *files)
    if cache.is_whole(KIND, name):
        return whole_entry(cache, KIND, name)
    from scantling.paper import typeset  # noqa: PLC0415 - likewise

    made = typeset(sheets)
    return whole_entry(cache, KIND, name) if cache.put(KIND, name, made, plain=True) else made
