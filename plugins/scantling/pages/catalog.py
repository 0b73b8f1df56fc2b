"""From what was made of each plan to the finished pages of a catalog."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from scantling.pages.all_sizes import PlanPages, plan_pages
from scantling.pages.around_plan import around
from scantling.pages.calculator_pages import calculator_pages
from scantling.pages.catalog_page import Carded, catalog_page
from scantling.pages.check_page import check_page
from scantling.pages.choices import Choices
from scantling.pages.feed import Entry
from scantling.pages.finished import Finished
from scantling.pages.in_post import PostCard
from scantling.pages.linked_plan import LinkedPlan
from scantling.pages.live.site import live_site
from scantling.pages.live.stock_page import stock_page
from scantling.pages.plan_card import with_plan_card
from scantling.pages.plan_entry import plan_entries
from scantling.pages.prose_link import ProseLink, prose_links
from scantling.pages.related import related, with_related
from scantling.source import (
    Catalog,
    Claim,
    Diagnostic,
    SourceShop,
    check_together,
    claim_of,
    sort_diagnostics,
)
from scantling.words import language_of, speaking

PageMaker = Callable[[SourceShop, Choices], Finished]
"""Makes further pages: calculators, for instance."""

PAGE_MAKERS: list[PageMaker] = []
"""Every maker of pages besides those of the plans; a new one is added here."""


@dataclass(frozen=True, slots=True)
class PlanMade:
    """Everything that was made of one plan."""

    slug: str
    pages: PlanPages | None
    """None for a plan that was read with faults."""
    beside: Finished
    """Files beside its pages: photos, printed plans."""
    diagnostics: tuple[Diagnostic, ...]
    """Of reading the plan."""
    claim: Claim | None = None
    """What no other plan of the catalog may claim."""
    links: tuple[ProseLink, ...] = ()
    """Where its prose leads to on the site."""


def make_pages(catalog: Catalog, choices: Choices) -> Finished:
    """Return every page of a catalog; what is faulty is left out and told of."""
    with speaking(language_of(choices.language)):
        return gather_pages(catalog.source_shop, _made(catalog, choices), choices)


def _made(catalog: Catalog, choices: Choices) -> Iterable[PlanMade]:
    for source in catalog.plans:
        if source.fitter is None:
            yield PlanMade(source.slug, None, Finished((), ()), source.diagnostics, claim_of(source))
        else:
            pages = plan_pages(source, choices)
            beside = around(source, pages, choices)
            links = tuple(prose_links(source, choices))
            yield PlanMade(source.slug, pages, beside, source.diagnostics, claim_of(source), links)


def _linked(plans: Iterable[PlanMade]) -> list[LinkedPlan]:
    """Return the plans that other pages may link to, with the words they are found by."""
    return [
        LinkedPlan(
            plan.slug,
            plan.pages.title,
            plan.pages.finished.pages[0].search_words,
            plan.pages.ladders,
        )
        for plan in plans
        if plan.pages is not None and plan.pages.title
    ]


def _calculators(
    shop: SourceShop, linked: list[LinkedPlan], choices: Choices, remember: Remember | None
) -> Finished:
    if remember is None:
        return calculator_pages(shop.shop, linked, choices)
    currency = shop.shop.currency if shop.shop is not None else ""
    made_of = f"calculators {currency!r} {linked!r} {choices!r}"
    return remember(made_of, lambda: calculator_pages(shop.shop, linked, choices))


def _carded(plans: Iterable[PlanMade]) -> Iterator[Carded]:
    for plan in plans:
        made = plan.pages
        if made is not None and made.card is not None and made.finding is not None:
            yield Carded(made.card, made.finding)


def _entries(plans: Iterable[PlanMade], choices: Choices) -> Iterator[Entry]:
    made = ((plan.pages, plan.claim) for plan in plans)
    return plan_entries(((pages, claim) for pages, claim in made if pages and claim), choices)


Remember = Callable[[str, Callable[[], Finished]], Finished]
"""Makes something, or finds what was made of the same things before, whose description comes first."""


def gather_pages(
    shop: SourceShop, plans: Iterable[PlanMade], choices: Choices, *, remember: Remember | None = None
) -> Finished:
    """Return every page of a catalog, from what was made of its plans.

    Args:
        plans: in the order in which the catalog shows them.
        remember: where what takes long is remembered, if anywhere.
    """
    plans = tuple(plans)
    cards = list(_carded(plans))
    currency = shop.shop.currency if shop.shop is not None else "$"
    like = related([one.finding for one in cards])
    parts = [
        *(
            with_plan_card(with_related(plan.pages.finished, like.get(plan.slug, ()), currency), plan.beside)
            for plan in plans
            if plan.pages is not None
        ),
        *(plan.beside for plan in plans),
        *(make(shop, choices) for make in PAGE_MAKERS),
        _calculators(shop, _linked(plans), choices, remember),
        check_page(),
        stock_page((one.finding for one in cards), choices),
        live_site(shop, {plan.slug: plan.pages.title for plan in plans if plan.pages is not None}, choices),
    ]
    told = [*shop.diagnostics]
    told += (one for plan in plans for one in plan.diagnostics)
    told += check_together(plan.claim for plan in plans if plan.claim is not None)
    told += (one for part in parts for one in part.diagnostics)
    return Finished(
        pages=(
            catalog_page(cards, choices, currency=currency),
            *(page for part in parts for page in part.pages),
        ),
        files=tuple(file for part in parts for file in part.files),
        diagnostics=sort_diagnostics(told),
        cards=tuple(PostCard(one.finding.slug, one.finding.title, one.card) for one in cards),
        entries=tuple(_entries(plans, choices)),
        links=tuple(link for plan in plans for link in plan.links),
    )
