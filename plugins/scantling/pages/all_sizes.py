"""All pages of one plan: at its usual size and at each that it offers, with the files beside them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from scantling.cutting import Memory
from scantling.fault import Faulty
from scantling.pages.card import Card, card_of
from scantling.pages.choices import Choices
from scantling.pages.cost_chart import cost_drawing, cost_words
from scantling.pages.csv_file import cut_list_csv
from scantling.pages.data_file import DATA_FILE, data_file
from scantling.pages.drafting import Drafting
from scantling.pages.drawings import Drawing, Drawings
from scantling.pages.embed import embed_files, embed_words
from scantling.pages.finding import Finding, finding_of
from scantling.pages.finished import Finished, Page, SideFile
from scantling.pages.linked_plan import Ladder, ladders_of
from scantling.pages.live.site import live_block, live_plan, live_turn
from scantling.pages.look import Look
from scantling.pages.markdown_words import render_words
from scantling.pages.photo_files import photo_sizes
from scantling.pages.plan_page import AtSize, plan_page
from scantling.pages.structured import how_to
from scantling.pages.words import words_from
from scantling.plan import USUAL, Fitter, Offered, offered_choices
from scantling.report import Report, main_size, report_on
from scantling.source import Diagnostic, SourcePlan, from_fault
from scantling.words import say


@dataclass(frozen=True, slots=True)
class PlanPages:
    """What is made of one plan."""

    finished: Finished
    card: str | None
    """The plan's card in the catalog; None for a plan that is faulty at one of its sizes."""
    sizes: tuple[AtSize, ...] = ()
    """The plan reckoned at each size, the usual one first."""
    title: str = ""
    """The plan's title on one line."""
    ladders: tuple[Ladder, ...] = ()
    """What it costs at the sizes that it offers; kept where the sizes themselves are not."""
    finding: Finding | None = None
    """What it is found by; None where there is no card."""


def plan_pages(
    source: SourcePlan, choices: Choices, *, memory: Memory | None = None, drafting: Drafting | None = None
) -> PlanPages:
    """Return the pages of a plan that was read without faults.

    Args:
        memory: where answers of the cutting solver are remembered, if anywhere.
        drafting: who draws the plan.
    """
    assert source.fitter is not None
    drafting = drafting or Drafting()
    faults: list[Diagnostic] = []
    sizes = tuple(_sizes(source, source.fitter, faults, memory))
    if faults:
        return PlanPages(Finished((), (), tuple(faults)), None)
    look = Look(choices.display, render_words(source.fitter.plan), photos=photo_sizes(source))
    folder = f"{choices.folder}/{source.slug}"
    pages: list[Page] = []
    files: list[SideFile] = []
    for here in sizes:
        up = "../" if here.offered.slug else ""
        here_look = replace(look, up=up, words=words_from(look.words, up))
        live = live_block([size.report for size in sizes], here.offered.choice, here_look.up, choices)
        drawings = drafting.drawings(here.report, look.display, here.offered.slug)
        chart, cost = _cost(source.fitter, here, look, drafting) if not here.offered.slug else (None, "")
        page = plan_page(
            here,
            sizes,
            here_look,
            folder,
            source.document.path,
            drawings=drawings,
            live=live,
            turn=live_turn(here.report, choices),
            papers=choices.papers,
            cost=cost,
            embed="" if here.offered.slug else embed_words(here.report, folder, choices),
            structured=_structured(source.slug, here, look, drawings, choices),
        )
        pages.append(page)
        beside = page.path.rpartition("/")[0]
        drawn = drafting.files(here.report, look.display, drawings)
        files += (SideFile(f"{beside}/{name}", content) for name, content in drawn)
        files += _told(beside, here.report, look)
        if chart is not None:
            files.append(SideFile(f"{folder}/{chart.file}", chart.source))
    if choices.engine:
        files.append(live_plan(source.slug, source.data, look.words, folder))
    card = _card(source.slug, sizes[0].report, look, drafting)
    files += embed_files(card.report, card.drawing, look, folder, choices)
    if card.drawing is not None:
        files.append(SideFile(f"{folder}/{card.drawing.file}", card.drawing.source))
    return PlanPages(
        Finished(tuple(pages), tuple(files)),
        card_of(card),
        sizes,
        " ".join(source.fitter.plan.title.split()),
        ladders=ladders_of(sizes),
        finding=finding_of(source.slug, sizes, look.display),
    )


def _sizes(
    source: SourcePlan, fitter: Fitter, faults: list[Diagnostic], memory: Memory | None
) -> Iterator[AtSize]:
    told: set[tuple[object, ...]] = set()
    for size in (Offered("", say("usual size"), USUAL), *offered_choices(fitter.plan)):
        try:
            yield AtSize(size, report_on(fitter, size.choice, memory=memory))
        except Faulty as faulty:
            where = f", at {size.label}" if size.slug else ""
            for fault in faulty.faults:
                if (fault.code, fault.place) not in told:
                    told.add((fault.code, fault.place))
                    moved = replace(fault, message=fault.message + where)
                    faults.append(from_fault(moved, source.document, source.spans))


def _structured(slug: str, here: AtSize, look: Look, drawings: Drawings, choices: Choices) -> str:
    """Return what search engines read; of the usual size alone, as whose copies the others count."""
    if here.offered.slug:
        return ""
    photo = here.report.fitted.plan.photo
    head = drawings.head.file if drawings.head is not None else ""
    image = look.photo(photo.file) if photo is not None else head
    return how_to(slug, here.report, look, choices, image=image)


def _cost(fitter: Fitter, here: AtSize, look: Look, drafting: Drafting) -> tuple[Drawing | None, str]:
    """Return the chart of what each inch costs, and its words; nothing for a plan of one size."""
    size = main_size(fitter)
    if size is None:
        return None, ""
    chart = drafting.chart(fitter, size, here.offered.choice)
    drawing = cost_drawing(chart, here.report, look.display)
    return drawing, cost_words(chart, here.report, drawing, look)


def _card(slug: str, report: Report, look: Look, drafting: Drafting) -> Card:
    drawing = drafting.card(report, look.display) if report.fitted.plan.photo is None else None
    up = f"{slug}/"
    seen = replace(look, up=up, across=up, words=words_from(look.words, up))
    return Card(slug, report, seen, drawing)


def _told(folder: str, report: Report, look: Look) -> Iterator[SideFile]:
    """Yield what is told of a plan beside its page, for programs."""
    yield SideFile(f"{folder}/{DATA_FILE}", data_file(report, look.display))
    yield SideFile(f"{folder}/cut-list.csv", cut_list_csv(report, look.display))
