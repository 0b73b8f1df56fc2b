"""What a plan at one size takes, by stage: reading, fitting, cutting, drawing, writing (processor time).

    python -m tests.bench stages [--count 65] [--keep FILE] [--before FILE] [--write]

A synthetic catalog is built cold in this process alone, without PDFs. What a stage calls counts for the
stage that was called; the cost chart alone counts whole, with the sizes that it tries.
"""

from __future__ import annotations

import argparse
import json
import os
import platform
import sys
import tempfile
from collections import defaultdict
from collections.abc import Callable
from importlib import import_module
from pathlib import Path
from time import process_time
from typing import Any

from tests.bench.catalogs import write_synthetic

ROOT = Path(__file__).resolve().parent.parent.parent
PAGE = ROOT / "docs" / "reference" / "drawing-benchmarks.md"

STAGES: dict[str, tuple[str, ...]] = {
    "read the plan, and try it": ("build.job:load_plan",),
    "fit it to a size": ("plan.fit:Fitter.try_fit",),
    "cut": ("report.report:cut_plan",),
    "materials, sums, traces": (
        "report.report:list_materials",
        "report.report:total",
        "report.report:trace",
    ),
    "what each inch costs": ("build.kept_drafting:KeptDrafting.chart",),
    "bodies, and their order": ("pages.drawings:make_model", "drawing.pictures:make_model"),
    "picture at the head, card": (
        "pages.drawings:corner_view",
        "pages.drawings:plain_outline",
        "pages.drawings:head_picture",
    ),
    "views from the sides": ("pages.drawings:elevation",),
    "taken apart": ("pages.drawings:exploded_view",),
    "pictures of the steps": ("pages.drawings:step_pictures",),
    "cut diagrams": ("pages.drawings:cut_drawings",),
    "details of parts": ("pages.drawings:details",),
    "SVG": ("pages.drawings:to_svg",),
    "words to HTML": ("pages.all_sizes:render_words",),
    "pages": ("pages.all_sizes:plan_page",),
    "drawings in a ZIP": ("pages.drafting:drawings_bundle",),
    "3-D model": ("pages.drafting:to_glb",),
    "data (JSON, CSV)": ("pages.all_sizes:_told",),
    "for posts": ("pages.all_sizes:embed_files", "pages.all_sizes:embed_words"),
    "remember, and recall": (
        "build.kept_drafting:find_result",
        "build.kept_drafting:keep_result",
        "build.kept_drafting:stack",
        "build.job:laid_aside",
        "build.catalog:keep",
    ),
}
"""Stages and the functions that make them, as their callers know them."""
WHOLE = {"what each inch costs", "read the plan, and try it"}
"""Stages that count with all that they call."""
REST = "all else"


class Clock:
    """Adds up the time of the processor by stage; a stage stops while one that it calls runs."""

    def __init__(self) -> None:
        self.seconds: defaultdict[str, float] = defaultdict(float)
        self._stack = [REST]
        self._since = process_time()

    def turn(self) -> None:
        """Book the time since the last turn on the stage that runs."""
        now = process_time()
        self.seconds[self._stack[-1]] += now - self._since
        self._since = now

    def watch(self, stage: str, function: Callable[..., Any]) -> Callable[..., Any]:
        """Return the function with its time booked on a stage."""

        def timed(*given: Any, **named: Any) -> Any:
            if self._stack[-1] in WHOLE:
                return function(*given, **named)
            self.turn()
            self._stack.append(stage)
            try:
                made = function(*given, **named)
                return list(made) if hasattr(made, "__next__") else made
            finally:
                self.turn()
                self._stack.pop()

        return timed


def main(argv: list[str]) -> int:
    """Run the benchmark and print, or write, its table."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench stages")
    parser.add_argument("--count", type=int, default=65)
    parser.add_argument("--write", action="store_true", help="write docs/reference/drawing-benchmarks.md")
    parser.add_argument("--keep", type=Path, metavar="FILE", help="keep what was measured")
    parser.add_argument("--before", type=Path, metavar="FILE", help="an earlier run, to stand beside it")
    parser.add_argument("--data", help="of no use here")
    given = parser.parse_args(argv)
    clock, sizes = build(given.count)
    taken = {stage: 1000 * seconds / sizes for stage, seconds in clock.seconds.items()}
    if given.keep:
        given.keep.write_text(json.dumps(taken, indent=1) + "\n", "utf-8")
    before = json.loads(given.before.read_text("utf-8")) if given.before else {}
    text = page(taken, before, given.count, sizes)
    print(text)
    if given.write:
        PAGE.write_text(text, "utf-8")
    return 0


def build(count: int) -> tuple[Clock, int]:
    """Build a synthetic catalog cold, and return the clock and how many sizes there were."""
    from scantling.build import How, build_catalog
    from scantling.pages import Choices

    clock = Clock()
    with tempfile.TemporaryDirectory(prefix="scantling-bench-") as aside:
        plans = write_synthetic(Path(aside), count)
        for stage, names in STAGES.items():
            for name in names:
                watch(clock, stage, name)
        clock = clock_started(clock)
        built = build_catalog(plans, How(Choices(), with_paper=False, workers=1, cache=Path(aside) / "cache"))
        clock.turn()
    assert not built.finished.faults, built.finished.faults[0].message
    return clock, sum(file.path.endswith("/cut-list.csv") for file in built.finished.files)


def clock_started(clock: Clock) -> Clock:
    """Forget what was booked so far."""
    clock.turn()
    clock.seconds.clear()
    return clock


def watch(clock: Clock, stage: str, name: str) -> None:
    """Replace a function by one that books its time."""
    where, _, called = name.partition(":")
    *owners, last = called.split(".")
    home = import_module(f"scantling.{where}")
    for owner in owners:
        home = getattr(home, owner)
    if hasattr(home, last):
        setattr(home, last, clock.watch(stage, getattr(home, last)))


HEAD = """# What a plan at one size takes

Measured in one run with `{command}` on {machine}:
time of the processor, one process, a cold build of {count} synthetic plans ({sizes} sizes) without PDFs.
What a stage calls counts for the stage that was called. A machine with other work takes longer over all.
{told}
| stage | {before}ms a size | share |
|---|{line}---|---|
"""
TOLD = """*Before* is the same with an earlier state of the code, run beside it; a stage with a dash was part
of another then.
"""


def page(taken: dict[str, float], before: dict[str, float], count: int, sizes: int) -> str:
    """Return the page of the docs that shows the figures.

    Args:
        taken: milliseconds for one size, by stage.
        before: the same of an earlier run; empty for none.
    """
    head = HEAD.format(
        command=f'make bench ARGS="stages --count {count} --write"',
        machine=f"{os.cpu_count()} cores, Python {platform.python_version()}, load {os.getloadavg()[0]:.0f}",
        count=count,
        sizes=sizes,
        told=TOLD if before else "",
        before="before, ms | " if before else "",
        line="---|" if before else "",
    )
    total = sum(taken.values())
    lines = head.splitlines()
    for stage in (*STAGES, REST):
        here = taken.get(stage, 0.0)
        then = [f"{before[stage]:.1f}" if stage in before else "–"] if before else []
        lines.append(_row(stage, *then, f"{here:.1f}", f"{100 * here / total:.0f} %"))
    then = [f"**{sum(before.values()):.1f}**"] if before else []
    lines.append(_row("**in all**", *then, f"**{total:.1f}**", ""))
    return "\n".join(lines) + "\n"


def _row(*cells: str) -> str:
    return f"| {' | '.join(cells)} |"


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
