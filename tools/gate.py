"""Run the checks that the code must pass.

    python -m tools.gate check [--longest]     lint, format, types
    python -m tools.gate test [ARGUMENT...]    those, then the tests (arguments go to pytest)

Everything runs even when something fails, so that one run shows all there is to mend; pytest comes last.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

from tools import longest

ROOT = Path(__file__).resolve().parent.parent
CHECKS = {
    "ruff check": ["ruff", "check", "."],
    "ruff format": ["ruff", "format", "--check", "."],
    "mypy": ["mypy"],
}


def main(argv: list[str]) -> int:
    """Run what is asked for and return 0 only if all of it passed."""
    what, *rest = argv[1:] or ["check"]
    failed = [name for name, command in CHECKS.items() if not passes(name, command)]
    if what == "check":
        longest.report()
    if failed:
        print(f"not passed: {', '.join(failed)} (see above)", flush=True)
    tested = what == "check" or passes("pytest", ["pytest", "-n", "auto", *rest])
    return int(bool(failed) or not tested)


def passes(name: str, command: list[str]) -> bool:
    """Run one tool of the environment at the root and return whether it was content."""
    print(f"== {name}", flush=True)
    return subprocess.run([sys.executable, "-m", *command], cwd=ROOT, check=False).returncode == 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
