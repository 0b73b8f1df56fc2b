"""Show the longest functions and files of the package: a person decides what to do about them."""

from __future__ import annotations

import ast
from pathlib import Path
from statistics import median, quantiles

PACKAGE = Path(__file__).resolve().parent.parent / "plugins" / "scantling"
SHOWN = 5


def report() -> None:
    """Print the five longest functions, and how long functions and files are in general."""
    files = sorted(PACKAGE.rglob("*.py"))
    found = sorted((size, where) for file in files for size, where in functions(file))
    lines = [len(file.read_text("utf-8").splitlines()) for file in files]
    print("== the longest functions")
    for size, where in reversed(found[-SHOWN:]):
        print(f"{size:5} lines  {where}")
    print(f"functions: {len(found)}, {spread([size for size, _ in found])}")
    print(f"files: {len(files)}, {spread(lines)}")


def functions(file: Path) -> list[tuple[int, str]]:
    """Return the length in lines of each function in a file, and where it is."""
    tree = ast.parse(file.read_text("utf-8"))
    found = [node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)]
    near = file.relative_to(PACKAGE.parent)
    return [
        ((node.end_lineno or node.lineno) - node.lineno + 1, f"{near}:{node.lineno} {node.name}")
        for node in found
    ]


def spread(sizes: list[int]) -> str:
    """Return the median, the 90th percentile and the most of some line counts, in words."""
    if len(sizes) < 2:
        return f"lines {sizes}"
    return f"lines: median {median(sizes):.0f}, p90 {quantiles(sizes, n=10)[-1]:.0f}, most {max(sizes)}"


if __name__ == "__main__":
    report()
