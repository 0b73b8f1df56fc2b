"""From a catalog as it was read to finished pages."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field, replace

from scantling.fault import Faulty
from scantling.measure import Display
from scantling.pages.catalog_page import Card, catalog_page
from scantling.pages.csv_file import cut_list_csv
from scantling.pages.drawings import Drawing
from scantling.pages.finished import Finished, Page, SideFile
from scantling.pages.fragments import plan_drawings
from scantling.pages.look import Look
from scantling.pages.markdown_words import render_words
from scantling.pages.plan_page import AtSize, plan_page
from scantling.plan import USUAL, Fitter, Offered, offered_choices
from scantling.report import plan_data, report_on
from scantling.source import Catalog, Diagnostic, SourcePlan, from_fault, sort_diagnostics


@dataclass(frozen=True, slots=True)
class Choices:
    """What the author of a site chooses about its pages."""

    folder: str = "plans"
    """Where the plans stand on the site."""
    title: str = "Plans"
    intro: str = "Every plan comes in several sizes, each with its materials, its cut list and its diagrams."
    display: Display = field(default_factory=Display)


PageMaker = Callable[[Catalog, Choices], Finished]
"""Makes further pages: calculators, for instance."""

PAGE_MAKERS: list[PageMaker] = []
"""Every maker of pages besides those of the plans; a new one is added here."""


def make_pages(catalog: Catalog, choices: Choices) -> Finished:
    """Return every page of a catalog; what is faulty is left out and told of."""
    made = [_plan(source, choices) for source in catalog.plans if source.fitter is not None]
    cards = [card for plan in made if (card := plan.card) is not None]
    front = catalog_page(cards, choices.folder, choices.title, choices.intro)
    others = [make(catalog, choices) for make in PAGE_MAKERS]
    parts = [*(plan.finished for plan in made), *others]
    return Finished(
        pages=(front, *(page for part in parts for page in part.pages)),
        files=tuple(file for part in parts for file in part.files),
        diagnostics=sort_diagnostics(
            (*catalog.diagnostics, *(one for part in parts for one in part.diagnostics))
        ),
    )


@dataclass(frozen=True, slots=True)
class _Made:
    finished: Finished
    card: Card | None


def _plan(source: SourcePlan, choices: Choices) -> _Made:
    assert source.fitter is not None
    faults: list[Diagnostic] = []
    sizes = tuple(_sizes(source, source.fitter, choices, faults))
    if faults or not sizes:
        return _Made(Finished((), (), tuple(faults)), None)
    look = Look(choices.display, render_words(source.fitter.plan))
    folder = f"{choices.folder}/{source.slug}"
    pages: list[Page] = []
    files: list[SideFile] = []
    for here in sizes:
        here_look = replace(look, up="../" if here.offered.slug else "")
        page = plan_page(here, sizes, here_look, folder, source.document.path)
        pages.append(page)
        files += _beside(page.path.rpartition("/")[0], here, here_look)
    files += _photos(source, folder)
    card = Card(source.slug, sizes[0].report, replace(look, up=f"{source.slug}/", across=f"{source.slug}/"))
    return _Made(Finished(tuple(pages), tuple(files), tuple(faults)), card)


def _sizes(
    source: SourcePlan, fitter: Fitter, choices: Choices, faults: list[Diagnostic]
) -> Iterator[AtSize]:
    for size in (Offered("", "usual size", USUAL), *offered_choices(fitter.plan)):
        try:
            yield AtSize(size, report_on(fitter, size.choice))
        except Faulty as faulty:
            where = f", at {size.label}" if size.slug else ""
            faults += [
                from_fault(replace(fault, message=fault.message + where), source.document, source.spans)
                for fault in faulty.faults
            ]


def _beside(folder: str, here: AtSize, look: Look) -> Iterator[SideFile]:
    yield from (SideFile(f"{folder}/{drawing.file}", drawing.svg) for drawing in _each_once(here, look))
    data = plan_data(here.report, look.display)
    yield SideFile(f"{folder}/plan.json", json.dumps(data, ensure_ascii=False, indent=1) + "\n")
    yield SideFile(f"{folder}/cut-list.csv", cut_list_csv(here.report, look.display))


def _each_once(here: AtSize, look: Look) -> Sequence[Drawing]:
    return tuple({drawing.file: drawing for drawing in plan_drawings(here.report, look)}.values())


def _photos(source: SourcePlan, folder: str) -> Iterator[SideFile]:
    assert source.plan is not None
    photo = source.plan.photo
    names = [photo.file] if photo else []
    names += [step.picture for step in source.plan.steps if step.picture]
    for name in dict.fromkeys(names):
        path = source.path.parent / name
        if path.is_file() and path.resolve().is_relative_to(source.path.parent.resolve()):
            yield SideFile(f"{folder}/{name}", path.read_bytes())
