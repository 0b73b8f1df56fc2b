"""Say beside each check what it checks, and against what.

    @checked(
        quantity="actual-size",
        document="PS 20-20, American Softwood Lumber Standard",
        place="table 3",
        kind="standard",
    )
    def test_a_two_by_four_is_1_1_2_by_3_1_2(): ...

One test may carry several of these. The page "What the numbers are checked against" is made from them
(`make docs`), and the suite fails for a computed quantity that none of them names.
"""

from __future__ import annotations

import inspect
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from importlib import import_module
from pathlib import Path
from types import ModuleType
from typing import TypeVar

from scantling.quantities import Quantity

HERE = Path(__file__).resolve().parent
PACKAGE = HERE.parent.parent / "plugins" / "scantling"

KINDS = {
    "standard": "a published standard",
    "handbook": "a handbook, a worked example or open data",
    "library": "a general-purpose library",
    "common practice": "common practice of the trade, no source",
    "from memory": "a value remembered, its source not at hand",
}
"""The kinds of source, best first, and what each means."""

NEEDS_NO_DOCUMENT = {"common practice", "from memory"}

Test = TypeVar("Test", bound=Callable[..., object])


@dataclass(frozen=True, slots=True, order=True)
class Check:
    """One quantity checked by one test against one source."""

    quantity: str
    document: str
    place: str
    kind: str
    test: str = ""
    """The test module and function, as `test_lumber.test_name`."""

    def problems(self, known: Iterable[str]) -> list[str]:
        """Return what keeps this from being a source that a reader could look up."""
        found = []
        if self.quantity not in set(known):
            found.append(f"no quantity is called {self.quantity!r} (see plugins/scantling/quantities)")
        if self.kind not in KINDS:
            found.append(f"{self.kind!r} is no kind of source: {', '.join(KINDS)}")
        if self.kind not in NEEDS_NO_DOCUMENT:
            found += [
                f"the {name} is empty" for name in ("document", "place") if not getattr(self, name).strip()
            ]
        return [f"{self.test}: {problem}" for problem in found]


def checked(*, quantity: str, document: str = "", place: str = "", kind: str) -> Callable[[Test], Test]:
    """Mark a test with what it checks and against what.

    Args:
        quantity: the id of a quantity in `scantling.quantities`.
        document: the standard, book, data set or library, so named that a stranger finds it.
        place: table, page or section; for a library, its version.
        kind: one of `KINDS`.
    """

    def mark(test: Test) -> Test:
        name = f"{test.__module__.rpartition('.')[2]}.{test.__qualname__.rpartition('<locals>.')[2]}"
        before = getattr(test, "checks", ())
        test.checks = (*before, Check(quantity, document, place, kind, name))
        return test

    return mark


def modules() -> list[ModuleType]:
    """Return every test module of this folder."""
    return [import_module(f"tests.outside.{path.stem}") for path in sorted(HERE.glob("test_*.py"))]


def tests_of(module: ModuleType) -> list[Callable[..., object]]:
    """Return the test functions and methods that a module defines."""
    classes = [kind for name, kind in inspect.getmembers(module, inspect.isclass) if name.startswith("Test")]
    return [
        test
        for home in (module, *classes)
        for name, test in inspect.getmembers(home, inspect.isfunction)
        if name.startswith("test_") and test.__module__ == module.__name__
    ]


def all_checks() -> list[Check]:
    """Return every check of every test in this folder, sorted."""
    return sorted(
        {check for module in modules() for test in tests_of(module) for check in getattr(test, "checks", ())}
    )


def unchecked(quantities: Iterable[Quantity], checks: Iterable[Check]) -> list[str]:
    """Return the ids of quantities that no check names, of the rooms that are there."""
    named = {check.quantity for check in checks}
    return [
        quantity.id
        for quantity in quantities
        if quantity.id not in named and (PACKAGE / quantity.room / "__init__.py").is_file()
    ]
