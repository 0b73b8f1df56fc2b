"""How long a catalog takes to build: cold, unchanged, after a price, after an edit; against the theme alone.

    python -m tests.bench build [--counts 50,200,1000] [--write]

Every build is a process of its own, without PDFs and without the pictures that links show elsewhere. What
it is compared with is MkDocs with the theme and no plugin of ours, building the very same finished Markdown
and SVG. Figures are printed as they come.
"""

from __future__ import annotations

import argparse
import os
import platform
import shutil
import socket
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path
from urllib.request import urlopen

from scantling.build import How, build_catalog
from scantling.pages import Choices, ready_engine, ready_viewer, write_folder
from tests.bench.catalogs import write_synthetic

ROOT = Path(__file__).resolve().parent.parent.parent
PAGE = ROOT / "docs" / "reference" / "build-benchmarks.md"
ADDRESS = "https://plans.example.org/"
SETTINGS = f"""site_name: Synthetic
site_url: {ADDRESS}
theme: {{name: material}}
plugins: [search, scantling: {{paper: false, link_cards: false}}]
not_in_nav: /plans/*/
markdown_extensions: [attr_list, tables]
"""

HEAD = """# How long a catalog takes to build

Measured in one run with `{command}` on {machine}.
Synthetic catalogs: the demo plans over and over, each at another size, three sizes a plan, without PDFs and
without the pictures that links show elsewhere. *Theme alone* is MkDocs with the theme and without our plugin,
building the same finished Markdown and SVG. *One price* changes that of the most used board. The preview is
`mkdocs serve --dirty`, the middle of three edits. Memory is that of the cold build's largest process. The
engine of live pages, packed once for each version, is ready before.

| plans | pages | theme alone | cold | unchanged | one price | one edit | edit in a preview | memory |
|---|---|---|---|---|---|---|---|---|
"""

AIMS = (("cold", 2.0), ("unchanged", 1.25), ("one price", 1.4))
"""What is aimed at, in times of the theme alone, for a catalog of some size or more."""
PREVIEW, PREVIEWED = 2.0, 200
"""Seconds until a preview shows an edit, with so many plans."""
MEMORY = 1000
"""MB."""


@dataclass
class Run:
    """What one size of catalog took, in seconds."""

    count: int
    pages: int = 0
    seconds: dict[str, float] = field(default_factory=dict)
    memory: int = 0
    """Greatest memory of one process of the cold build, MB."""

    def note(self, way: str, seconds: float) -> None:
        """Keep a figure, and print it."""
        self.seconds[way] = seconds
        print(f"{self.count} plans, {way}: {seconds:.1f} s", file=sys.stderr, flush=True)

    def times(self, way: str) -> float:
        """Return how many times as long as the theme alone a build took."""
        return self.seconds[way] / self.seconds["theme alone"]


def main(argv: list[str]) -> int:
    """Run the benchmark and print, or write, its table."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench build")
    parser.add_argument("--counts", default="50,200")
    parser.add_argument("--write", action="store_true", help="write docs/reference/build-benchmarks.md")
    parser.add_argument("--data", help="of no use here")
    given = parser.parse_args(argv)
    runs: list[Run] = []
    if ready_engine(print):  # packed once for each version, before the clock starts
        ready_viewer(print)
    for count in given.counts.split(","):
        runs.append(run_one(int(count)))
        text = page(runs, given.counts)
        if given.write:
            PAGE.write_text(text, "utf-8")
    print(text)
    return 0


def run_one(count: int) -> Run:
    """Build a synthetic catalog in every way that is measured."""
    run = Run(count)
    with tempfile.TemporaryDirectory(prefix="scantling-bench-") as aside:
        folder = Path(aside)
        plans = write_synthetic(folder, count)
        (folder / "docs").mkdir()
        (folder / "docs" / "index.md").write_text("# Synthetic\n\n[Plans](plans/index.md)\n")
        (folder / "mkdocs.yml").write_text(SETTINGS)
        build = [sys.executable, "-m", "mkdocs", "build", "--quiet"]
        seconds, run.memory = timed(build, folder)
        run.note("cold", seconds)
        run.pages = sum(1 for _ in (folder / "site" / "plans").rglob("index.html"))
        run.note("unchanged", timed(build, folder)[0])
        shop = plans / "shop.yml"
        shop.write_text(shop.read_text().replace("8 ft: 4.28", "8 ft: 4.58"))
        run.note("one price", timed(build, folder)[0])
        one = min(plans.glob("*/plan.md"))
        one.write_text(one.read_text() + "\nOne more word.\n")
        run.note("one edit", timed(build, folder)[0])
        run.note("theme alone", theme_alone(folder))
        run.note("preview", served_edit(folder, one))
    return run


def theme_alone(folder: Path) -> float:
    """Return what MkDocs and the theme take for the same finished pages."""
    out = folder / "finished"
    choices = Choices(
        engine=(engine := ready_engine(print)),
        viewer=ready_viewer(print) if engine else "",
        site_url=ADDRESS,
        site_name="Synthetic",
    )
    how = How(choices, with_paper=False, cache=folder / ".cache" / "scantling")
    write_folder(build_catalog(folder / "plans", how).finished, out, site_name="Synthetic")
    shutil.rmtree(folder / "site")
    return timed([sys.executable, "-m", "mkdocs", "build", "--quiet"], out)[0]


def served_edit(folder: Path, plan: Path) -> float:
    """Return how long a preview takes to show an edited plan."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    words = [sys.executable, "-m", "mkdocs", "serve", "--dirty", "--quiet", "-a", f"127.0.0.1:{port}"]
    page = f"http://127.0.0.1:{port}/plans/{plan.parent.name}/"
    serving = subprocess.Popen(words, cwd=folder, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    try:
        wait_for(page, "One more word.", 600)
        taken = []
        for number in range(3):
            time.sleep(2)
            text = plan.read_text()
            began = time.perf_counter()
            plan.write_text(text + f"\nLook, edit {number}.\n")
            wait_for(page, f"Look, edit {number}.", 120)
            taken.append(time.perf_counter() - began)
        return sorted(taken)[1]
    finally:
        serving.terminate()
        serving.wait()


def wait_for(address: str, words: str, seconds: int) -> None:
    """Wait until a page holds some words."""
    deadline = time.monotonic() + seconds
    while time.monotonic() < deadline:
        with suppress(OSError), urlopen(address, timeout=60) as answer:
            if words in answer.read().decode():
                return
        time.sleep(0.05)
    raise TimeoutError(words)


def timed(words: list[str], folder: Path) -> tuple[float, int]:
    """Return how many seconds a command takes, and the memory of its largest process in MB."""
    told = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
    began = time.perf_counter()
    process = subprocess.Popen(words, cwd=folder, env=told, stdout=subprocess.DEVNULL)
    _, status, used = os.wait4(process.pid, 0)
    taken = time.perf_counter() - began
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode:
        raise subprocess.CalledProcessError(process.returncode, words)
    return taken, used.ru_maxrss // 1024


def page(runs: list[Run], counts: str) -> str:
    """Return the page of the docs that shows the figures."""
    command = f'make bench ARGS="build --counts {counts} --write"'
    machine = f"{os.cpu_count()} cores, Python {platform.python_version()}"
    lines = HEAD.format(command=command, machine=machine).splitlines()
    for run in runs:
        ways = ("cold", "unchanged", "one price", "one edit")
        ratios = [f"{run.seconds[way]:.1f} s ({run.times(way):.2f}×)" for way in ways]
        cells = [f"{run.count}", f"{run.pages}", f"{run.seconds['theme alone']:.1f} s", *ratios]
        lines.append(
            "| " + " | ".join([*cells, f"{run.seconds['preview']:.1f} s", f"{run.memory} MB"]) + " |"
        )
    return "\n".join([*lines, "", *verdict(runs), ""])


def verdict(runs: list[Run]) -> list[str]:
    """Return what was aimed at and whether it is reached, as lists of the docs."""
    lines = ["What is aimed at, and the catalogs measured here that reach it:", ""]
    for way, most in AIMS:
        lines.append(f"- {way}: at most {most:g}× the theme alone. {_reached(runs, way, most)}")
    previews = [run for run in runs if run.count <= PREVIEWED]
    seen = _listed(run.count for run in previews if run.seconds["preview"] <= PREVIEW)
    lines.append(
        f"- an edit in a preview of up to {PREVIEWED} plans: at most {PREVIEW:g} s. Reached with {seen}."
    )
    small = _listed(run.count for run in runs if run.memory < MEMORY)
    lines.append(f"- memory: below {MEMORY} MB. Reached with {small}.")
    each = ", ".join(f"{run.seconds['cold'] / run.count * 1000:.0f} ms with {run.count}" for run in runs)
    return [*lines, f"- time for each plan of a cold build, the same whatever their number: {each}."]


def _reached(runs: list[Run], way: str, most: float) -> str:
    return f"Reached with {_listed(run.count for run in runs if round(run.times(way), 2) <= most)}."


def _listed(counts: Iterable[int]) -> str:
    found = [str(count) for count in counts]
    return f"{', '.join(found)} plans" if found else "none"
