"""Run benchmarks by name, or list them.

    python -m tests.bench                            lists what there is
    python -m tests.bench cutting --data FOLDER      runs tests/bench/bench_cutting.py
    python -m tests.bench all

A benchmark is a module `tests/bench/bench_<name>.py` with a docstring and `main(argv) -> int`, which gets
every argument that is not a benchmark's name. Given options alone, every benchmark runs.
"""

from __future__ import annotations

import sys
from importlib import import_module
from pathlib import Path

HERE = Path(__file__).resolve().parent


def main(argv: list[str]) -> int:
    """Run the benchmarks that are named, one after another; the worst exit status is returned."""
    known = sorted(path.stem.removeprefix("bench_") for path in HERE.glob("bench_*.py"))
    names = [word for word in argv if word in known]
    rest = [word for word in argv if word not in known and word != "all"]
    if rest and not rest[0].startswith("-") and not names and "all" not in argv:
        print(f"there is no benchmark called {rest[0]!r}; there are: {', '.join(known) or 'none yet'}")
        return 2
    if not argv:
        for name in known:
            said = (import_module(f"tests.bench.bench_{name}").__doc__ or "").strip().splitlines()
            print(f"{name:16} {said[0] if said else ''}")
        if not known:
            print("no benchmarks yet")
        return 0
    return max((run(name, rest) for name in names or known), default=0)


def run(name: str, argv: list[str]) -> int:
    """Run one benchmark."""
    print(f"== {name}", flush=True)
    return import_module(f"tests.bench.bench_{name}").main(argv) or 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
