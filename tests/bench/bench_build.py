"""How long a catalog takes to build: cold, unchanged, after a price, after an edit; against the theme alone.

    python -m tests.bench build [--counts 50,200,1000] [--write]

Every build is a process of its own, without PDFs. What it is compared with is MkDocs with the theme and
no plugin of ours, building the very same finished Markdown and SVG (`scantling pages` wrote them).
"""

from __future__ import annotations

import argparse
import os
import platform
import resource
import shutil
import socket
import subprocess
import sys
import tempfile
import time
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path
from urllib.request import urlopen

from tests.bench.catalogs import write_synthetic

ROOT = Path(__file__).resolve().parent.parent.parent
PAGE = ROOT / "docs" / "reference" / "build-benchmarks.md"
SETTINGS = """site_name: Synthetic
site_url: https://plans.example.org/
theme: {name: material}
plugins: [search, scantling: {paper: false}]
not_in_nav: /plans/*/
markdown_extensions: [attr_list, tables]
"""

HEAD = """# How long a catalog takes to build

Measured in one run with `{command}` on {machine}.
Synthetic catalogs: the demo plans over and over, each at another size, three sizes a plan, without PDFs.
*Theme alone* is MkDocs with the theme and without our plugin, building the same finished Markdown and SVG.
The preview is `mkdocs serve --dirty`, the middle of three edits.

| plans | pages | theme alone | cold | unchanged | one price | one edit | edit in a preview | most memory |
|---|---|---|---|---|---|---|---|---|
"""

TAIL = """
What is aimed at: twice the theme alone for a cold build, 1.25 times for an unchanged one, 1.4 times after one
price, and 2 s for an edit in a preview of 200 plans. Most of the distance is the drawing of step pictures and
views on a cold build, which a price change repeats, and the reading of what is remembered.
"""


@dataclass
class Run:
    """What one size of catalog took, in seconds."""

    count: int
    pages: int = 0
    seconds: dict[str, float] = field(default_factory=dict)
    memory: int = 0
    """Greatest memory of one process of the cold build, MB."""


def main(argv: list[str]) -> int:
    """Run the benchmark and print, or write, its table."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench build")
    parser.add_argument("--counts", default="50,200")
    parser.add_argument("--write", action="store_true", help="write docs/reference/build-benchmarks.md")
    parser.add_argument("--data", help="of no use here")
    given = parser.parse_args(argv)
    runs = [run_one(int(count)) for count in given.counts.split(",")]
    text = page(runs, given.counts)
    print(text)
    if given.write:
        PAGE.write_text(text, "utf-8")
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
        before = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss
        run.seconds["cold"] = timed(build, folder)
        run.memory = max(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss, before) // 1024
        run.pages = sum(1 for _ in (folder / "site" / "plans").rglob("index.html"))
        run.seconds["unchanged"] = timed(build, folder)
        shop = plans / "shop.yml"
        shop.write_text(shop.read_text().replace("8 ft: 4.28", "8 ft: 4.58"))
        run.seconds["a price"] = timed(build, folder)
        one = min(plans.glob("*/plan.md"))
        one.write_text(one.read_text() + "\nOne more word.\n")
        run.seconds["an edit"] = timed(build, folder)
        run.seconds["theme alone"] = theme_alone(folder)
        run.seconds["served"] = served_edit(folder, one)
    print(f"{count} plans: {run.seconds}", file=sys.stderr, flush=True)
    return run


def theme_alone(folder: Path) -> float:
    """Return what MkDocs and the theme take for the same finished pages."""
    out = folder / "finished"
    words = [
        "pages",
        str(out),
        "--no-paper",
        "--cache",
        str(folder / ".cache" / "scantling"),
        "--plans",
        "plans",
    ]
    subprocess.run([sys.executable, "-m", "scantling", *words], cwd=folder, check=True, capture_output=True)
    shutil.rmtree(folder / "site")
    return timed([sys.executable, "-m", "mkdocs", "build", "--quiet"], out)


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


def timed(words: list[str], folder: Path) -> float:
    """Return how many seconds a command takes."""
    began = time.perf_counter()
    subprocess.run(
        words, cwd=folder, check=True, capture_output=True, env={**os.environ, "NO_MKDOCS_2_WARNING": "1"}
    )
    return time.perf_counter() - began


def page(runs: list[Run], counts: str) -> str:
    """Return the page of the docs that shows the figures."""
    command = f'make bench ARGS="build --counts {counts} --write"'
    machine = f"{os.cpu_count()} cores, Python {platform.python_version()}"
    lines = HEAD.format(command=command, machine=machine).splitlines()
    for run in runs:
        alone = run.seconds["theme alone"]
        ways = ("cold", "unchanged", "a price", "an edit")
        ratios = [f"{run.seconds[way]:.1f} s ({run.seconds[way] / alone:.2f}×)" for way in ways]
        cells = [f"{run.count}", f"{run.pages}", f"{alone:.1f} s", *ratios]
        lines.append("| " + " | ".join([*cells, f"{run.seconds['served']:.1f} s", f"{run.memory} MB"]) + " |")
    return "\n".join([*lines, TAIL])
