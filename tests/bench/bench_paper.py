"""How long each demonstration plan's PDF takes, how large it is, and on how many pages.

python -m tests.bench paper
"""

from __future__ import annotations

import io
from collections.abc import Callable
from pathlib import Path
from time import perf_counter, process_time
from typing import TypeVar

import pypdf

from scantling.measure import Display
from scantling.pages import Look, render_words
from scantling.paper import PAPERS, lay_out, typeset
from scantling.report import report_on
from scantling.source import read_catalog

PLANS = Path(__file__).resolve().parent.parent.parent / "plans"
LINK = "https://plans.example.org/plans/one/?width=36in"
Made = TypeVar("Made")


def main(argv: list[str]) -> int:
    """Print milliseconds for laying out and for setting, size and pages of each plan and paper."""
    del argv
    rows = []
    print(f"{'plan':24} {'paper':6} {'draw ms':>8} {'set ms':>7} {'cpu ms':>7} {'KB':>5} {'pages':>5}")
    for source in read_catalog(PLANS).plans:
        if source.fitter is None or source.plan is None:
            continue
        report, look = report_on(source.fitter), Look(Display(), render_words(source.plan))
        for paper in PAPERS:
            began = process_time()
            sheets, drawn = timed(
                lambda paper=paper, report=report, look=look: lay_out(
                    report, look, paper=paper, size_name="", link=LINK, photos={}
                )
            )
            pdf, taken = timed(lambda sheets=sheets: typeset(sheets))
            work = 1000 * (process_time() - began)
            pages = len(pypdf.PdfReader(io.BytesIO(pdf)).pages)
            rows.append((drawn + taken, work, len(pdf)))
            took = f"{drawn:8.0f} {taken:7.0f} {work:7.0f}"
            print(f"{source.slug:24} {paper:6} {took} {len(pdf) / 1000:5.0f} {pages:5}")
    walls, works, sizes = zip(*rows, strict=True)
    print(
        f"mean {sum(walls) / len(rows):.0f} ms ({sum(works) / len(rows):.0f} ms of processor), "
        f"longest {max(walls):.0f} ms, largest {max(sizes) / 1000:.0f} KB, {len(rows)} PDFs"
    )
    return 0


def timed(make: Callable[[], Made]) -> tuple[Made, float]:
    """Return what is made and how many milliseconds it took."""
    start = perf_counter()
    made = make()
    return made, 1000 * (perf_counter() - start)
