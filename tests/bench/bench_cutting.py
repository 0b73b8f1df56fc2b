"""How good and how fast cutting is: generated problems, published sets, rivals, growth.

    python -m tests.bench cutting [--data FOLDER] [--steps N] [--every N] [--only PART] [--sets NAME…]
                                    [--plot FILE]

PART is one of generated, rivals, growth, published. With a folder of published instances, the best costs
known beside them (`reference_costs.json`) are compared too; `--every 5` takes every fifth of each set.
Times are those of the processor.
"""

from __future__ import annotations

import argparse
import json
import statistics
import time
from pathlib import Path
from typing import Any

from scantling.cutting import DEFAULT_STEPS, Answer, Problem, solve
from scantling.fault import Faulty
from tests.bench import published, rivals
from tests.tools.make_problems import problem as made
from tests.tools.verify_cuts import verify

SHAPES = ("boards", "rips", "sheets")
SEEDS = range(300)


def main(argv: list[str]) -> int:
    """Run the parts asked for and print a table of each."""
    parser = argparse.ArgumentParser(prog="cutting", description=__doc__)
    parser.add_argument("--data", type=Path)
    parser.add_argument("--steps", type=int, default=4_000_000, help="for the published sets")
    parser.add_argument("--every", type=int, default=1)
    parser.add_argument("--only", choices=("generated", "rivals", "growth", "published"))
    parser.add_argument(
        "--sets", nargs="+", default=(*published.EASY, *published.HARD), help="published ones"
    )
    parser.add_argument("--plot", type=Path)
    asked = parser.parse_args(argv)
    wanted = (asked.only,) if asked.only else ("generated", "rivals", "growth", "published")
    if "generated" in wanted:
        generated(asked.data)
    if "rivals" in wanted:
        compared()
    if "growth" in wanted:
        growth(asked.plot)
    if "published" in wanted and asked.data:
        for name in asked.sets:
            published_set(asked.data, name, asked.steps, asked.every)
    return 0


def timed(data: dict[str, Any], steps: int = DEFAULT_STEPS) -> tuple[Answer, float]:
    """Return the verified answer to a problem, and the seconds that it took."""
    problem = Problem.from_data(data)
    start = time.process_time()
    answer = solve(problem, steps=steps)
    taken = time.process_time() - start
    verify(data, answer.to_data())
    return answer, taken


def generated(folder: Path | None) -> None:
    """Print costs, proofs and times of the generated problems."""
    known = json.loads((folder / "reference_costs.json").read_text()) if folder else {}
    print(
        "| problems | cost | bound | proved | known | dearer | cheaper | median ms | 95 % ms |\n|"
        + "---|" * 9
    )
    every: list[float] = []
    for shape in SHAPES:
        rows = [
            (data, *timed(data)) for data in (made(seed) for seed in SEEDS) if data["name"].startswith(shape)
        ]
        best = [known.get(data["name"], {"cost": answer.cost})["cost"] for data, answer, _ in rows]
        costs = [answer.cost for _, answer, _ in rows]
        taken = sorted(seconds for *_, seconds in rows)
        every += taken
        dearer = [
            data["name"] for (data, *_), cost, least in zip(rows, costs, best, strict=True) if cost > least
        ]
        print(
            f"| {shape} ({len(rows)}) | {sum(costs)} | {sum(answer.bound for _, answer, _ in rows)} "
            f"| {sum(answer.proved for _, answer, _ in rows)} | {sum(best)} | {len(dearer)} "
            f"| {sum(cost < least for cost, least in zip(costs, best, strict=True))} "
            f"| {1000 * statistics.median(taken):.0f} | {1000 * taken[int(len(taken) * 0.95)]:.0f} |",
            flush=True,
        )
        if dearer:
            print("dearer than known:", ", ".join(dearer))
    every.sort()
    middle, slow = statistics.median(every), every[int(len(every) * 0.95)]
    took = [f"{1000 * seconds:.0f} ms" for seconds in (middle, slow, every[-1])]
    print(f"all: median {took[0]}, 95th percentile {took[1]}, slowest {took[2]}")


def compared() -> None:
    """Print what others would have paid, for every fifth generated problem."""
    print("\n| problems | ours | rival | theirs | theirs to ours |\n|" + "---|" * 5)
    for shape, name, rival in (
        ("boards", "by hand", rivals.by_hand),
        ("rips", "rectpack", rivals.packed),
        ("sheets", "rectpack", rivals.packed),
    ):
        some = [data for data in (made(seed) for seed in SEEDS) if data["name"].startswith(shape)][::5]
        ours, theirs = sum(timed(data)[0].cost for data in some), sum(rival(data) for data in some)
        print(f"| {shape} ({len(some)}) | {ours} | {name} | {theirs} | {theirs / ours:.3f} |", flush=True)
    some = [data for data in (made(seed) for seed in SEEDS) if data["name"].startswith("boards")][::5]
    pairs = [(timed(data)[0].cost, found) for data in some if (found := rivals.modelled(data, 5)) is not None]
    ours, theirs = sum(cost for cost, _ in pairs), sum(found[0] for _, found in pairs)
    print(f"| boards ({len(pairs)}) | {ours} | HiGHS, all patterns, 5 s | {theirs} | {theirs / ours:.3f} |")


def growth(plot: Path | None) -> None:
    """Print time and gap of problems two, four and eight times as large."""
    print("\n| shape | times | pieces | median s | gap % |\n|" + "---|" * 5)
    lines: dict[str, list[tuple[int, float, float]]] = {}
    for offset, shape in enumerate(SHAPES):
        for times in (1, 2, 4, 8):
            rows = []
            for seed in range(offset, 30, 3):
                data = made(seed)
                data["parts"] = [dict(part, count=part["count"] * times) for part in data["parts"]]
                rows.append((sum(part["count"] for part in data["parts"]), *timed(data)))
            pieces = round(statistics.mean(row[0] for row in rows))
            seconds = statistics.median(row[2] for row in rows)
            gap = 100 * (sum(row[1].cost for row in rows) / sum(row[1].bound for row in rows) - 1)
            lines.setdefault(shape, []).append((pieces, seconds, gap))
            print(f"| {shape} | {times} | {pieces} | {seconds:.2f} | {gap:.2f} |", flush=True)
    if plot:
        drawn(lines, plot)


def drawn(lines: dict[str, list[tuple[int, float, float]]], plot: Path) -> None:
    """Draw time and gap against the number of pieces."""
    import matplotlib as mpl

    mpl.use("svg")
    mpl.rcParams["svg.hashsalt"] = "cutting"
    from matplotlib import pyplot as plt

    figure, (left, right) = plt.subplots(1, 2, figsize=(8, 3.2))
    for mark, (shape, points) in zip("osd", lines.items(), strict=True):
        left.plot([p[0] for p in points], [p[1] for p in points], f"{mark}-", label=shape, color="0.2")
        right.plot([p[0] for p in points], [p[2] for p in points], f"{mark}-", label=shape, color="0.2")
    left.set(xlabel="pieces", ylabel="seconds (median)")
    right.set(xlabel="pieces", ylabel="cost above bound, %")
    right.legend()
    figure.tight_layout()
    figure.savefig(plot, metadata={"Date": None})


def published_set(folder: Path, name: str, steps: int, every: int) -> None:
    """Print hits, proofs and gap of a published set."""
    ours = theirs = hits = proved = compared_with = solved = 0
    start = time.process_time()
    some = published.instances(folder, name)[::every]
    for data, known in some:
        try:
            answer, _ = timed(data, steps)
        except Faulty as refused:
            print(f"{data['name']}: {refused.faults[0].message}")
            continue
        solved += 1
        proved += answer.proved
        if known is not None:
            compared_with += 1
            ours += answer.cost
            theirs += known
            hits += answer.cost <= known
    gap = 100 * (ours / theirs - 1) if theirs else 0.0
    taken = (time.process_time() - start) / max(1, solved)
    print(
        f"{name}: {solved} of {len(some)} solved, {proved} proved, "
        f"{hits} of {compared_with} at the best known, "
        f"cost {ours} against {theirs:.0f} ({gap:+.2f} %), {taken:.1f} s each",
        flush=True,
    )
