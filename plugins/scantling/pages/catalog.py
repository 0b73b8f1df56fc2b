"""From a catalog as it was read to finished pages."""

from __future__ import annotations

from collections.abc import Callable, MutableMapping
from hashlib import sha256

from scantling.pages.catalog_page import catalog_page
from scantling.pages.choices import Choices
from scantling.pages.finished import Finished
from scantling.pages.photos import photos
from scantling.pages.plan_pages import PlanPages, plan_pages
from scantling.source import Catalog, SourcePlan, sort_diagnostics

PageMaker = Callable[[Catalog, Choices], Finished]
"""Makes further pages: calculators, for instance."""

PAGE_MAKERS: list[PageMaker] = []
"""Every maker of pages besides those of the plans; a new one is added here."""

Remembered = MutableMapping[str, PlanPages]
"""Pages of plans by what they were made from, for a preview that builds again and again."""


def make_pages(catalog: Catalog, choices: Choices, remembered: Remembered | None = None) -> Finished:
    """Return every page of a catalog; what is faulty is left out and told of.

    Args:
        remembered: pages of an earlier run; those of plans that did not change are taken from it, and it is
            left holding those of this run.
    """
    store: Remembered = {} if remembered is None else remembered
    made = {_key(source, catalog, choices): source for source in catalog.plans if source.fitter is not None}
    fresh = {key: store[key] if key in store else plan_pages(source, choices) for key, source in made.items()}
    store.clear()
    store.update(fresh)
    cards = [card for plan in fresh.values() if (card := plan.card) is not None]
    parts = [
        *(plan.finished for plan in fresh.values()),
        *(photos(source, choices) for source in made.values()),
        *(make(catalog, choices) for make in PAGE_MAKERS),
    ]
    return Finished(
        pages=(catalog_page(cards, choices), *(page for part in parts for page in part.pages)),
        files=tuple(file for part in parts for file in part.files),
        diagnostics=sort_diagnostics(
            (*catalog.diagnostics, *(one for part in parts for one in part.diagnostics))
        ),
    )


def _key(source: SourcePlan, catalog: Catalog, choices: Choices) -> str:
    told = (source.slug, source.document.path, source.document.text, catalog.source_shop.document.text)
    return sha256("\0".join((*told, repr(choices))).encode()).hexdigest()
