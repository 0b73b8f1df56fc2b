"""How long fitting a plan of 60 kinds of part takes, and reading it (time of the processor)."""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable
from fractions import Fraction
from pathlib import Path

from scantling.measure import Length
from scantling.plan import Choice, read_plan
from scantling.source import load_plan, load_shop
from tests.support.many_parts import many_parts, many_parts_data

PARTS = 60
TIMES = 200
REPO_PLANS = Path(__file__).resolve().parent.parent.parent / "plans"


def main(argv: list[str]) -> int:
    """Print the median and the slowest of many runs, in milliseconds."""
    del argv
    fitter = many_parts(PARTS)
    widths = [Length.of_inches(Fraction(60 + step % 25, 2)) for step in range(TIMES)]
    report("fit 60 parts", [lambda w=width: fitter.fit(Choice({"width": w}, {})) for width in widths])
    data = many_parts_data(PARTS)
    report("read 60 parts", [lambda: read_plan(data, "many")] * 20)
    plans = sorted(REPO_PLANS.glob("*/plan.md"))
    shop = load_shop(REPO_PLANS / "shop.yml").shop
    for path in plans:
        report(f"load {path.parent.name}", [lambda path=path: load_plan(path, shop)] * 10)
    return 0


def report(name: str, works: list[Callable[[], object]]) -> None:
    """Run each once and print what they took."""
    taken = sorted(timed(work) for work in works)
    print(f"{name:28} median {statistics.median(taken):7.2f} ms   slowest {taken[-1]:7.2f} ms")


def timed(work: Callable[[], object]) -> float:
    """Return how many milliseconds of the processor a piece of work takes, whatever else it does."""
    began = time.process_time()
    work()
    return (time.process_time() - began) * 1000
