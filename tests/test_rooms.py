"""The walls of the house: which room may lean on which, and what the engine may lean on at all."""

from __future__ import annotations

import ast
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

PACKAGE = Path(__file__).resolve().parent.parent / "plugins" / "scantling"

ENGINE = (
    "fault",
    "words",
    "quantities",
    "measure",
    "geometry",
    "formula",
    "form",
    "shop",
    "plan",
    "cutting",
    "report",
    "drawing",
    "calculators",
    "checks",
)
"""The engine's rooms from the lowest up: a room may import only what stands before it."""
ROOMS = (*ENGINE, "source", "pages", "paper", "build", "host", "cli")

NO_FLOATS = ("fault", "words", "measure", "formula", "form", "shop", "plan")
"""Rooms in which a size is exact from end to end."""

OUT_OF_REACH = {
    *("os", "io", "pathlib", "shutil", "tempfile", "glob", "fileinput"),  # files
    *("time", "random", "secrets", "uuid", "locale", "platform", "getpass"),  # this moment, this machine
    *("socket", "ssl", "urllib", "http", "subprocess", "multiprocessing", "threading", "ctypes"),  # the world
}
"""Modules of the standard library that give another answer on another day or machine."""
OUT_OF_REACH_CALLS = {"open", "input", "print", "eval", "exec", "compile", "__import__", "id", "hash"}

SLOW_TO_START = {"asyncio", "logging", "argparse", "unittest", "email", "http", "xml", "sqlite3", "pathlib"}
SLOW_TO_START |= {"ssl", "socket", "subprocess", "multiprocessing", "tempfile", "random", "statistics", "csv"}
"""Modules that the engine must not pull in: a reader waits for every one of them in the browser."""

IMPORT_ALL = """
import importlib, pkgutil, sys
sys.path.insert(0, {plugins!r})
import dataclasses, enum, fractions, json, re, typing
before = set(sys.modules)
for room in {rooms!r}:
    door = importlib.import_module("scantling." + room)
    if {inside!r}:
        for module in pkgutil.walk_packages(door.__path__, door.__name__ + "."):
            importlib.import_module(module.name)
print(*sorted(set(sys.modules) - before))
"""


def present(rooms: tuple[str, ...]) -> list[str]:
    """Return the rooms that are built already."""
    return [room for room in rooms if (PACKAGE / room / "__init__.py").is_file()]


def gained(rooms: list[str], *, inside: bool) -> set[str]:
    """Return what a fresh interpreter without any site-packages loads for these rooms."""
    code = IMPORT_ALL.format(plugins=str(PACKAGE.parent), rooms=rooms, inside=inside)
    done = subprocess.run(
        [sys.executable, "-I", "-S", "-c", code], capture_output=True, text=True, check=False
    )
    if done.returncode:
        pytest.fail("\n".join(done.stderr.splitlines()[-3:]), pytrace=False)
    return set(done.stdout.split())


def imports(path: Path) -> Iterator[tuple[int, str]]:
    """Yield the line and the full dotted name of everything that a file imports, wherever it does so."""
    package = path.relative_to(PACKAGE.parent).with_suffix("").parts[:-1]
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            yield from ((node.lineno, alias.name) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            base = package[: len(package) - node.level + 1] if node.level else ()
            source = ".".join((*base, *([node.module] if node.module else [])))
            if source == "scantling":
                yield from ((node.lineno, f"scantling.{alias.name}") for alias in node.names)
            else:
                yield node.lineno, source


def files(room: str) -> list[Path]:
    """Return the Python files of a room."""
    return sorted((PACKAGE / room).rglob("*.py"))


def calls(tree: ast.AST) -> Iterator[tuple[int, str]]:
    """Yield line and name of every call of a plain name; in `__hash__` methods `hash` is at home."""
    for node in ast.iter_child_nodes(tree):
        if isinstance(node, ast.FunctionDef) and node.name == "__hash__":
            continue
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            yield node.lineno, node.func.id
        yield from calls(node)


def where(path: Path, line: int) -> str:
    """Return a place as a person would click on it."""
    return f"{path.relative_to(PACKAGE.parent.parent)}:{line}"


def cross_imports(path: Path, room: str) -> Iterator[tuple[int, str, list[str]]]:
    """Yield line, room and inner path of each import from another room."""
    for line, name in imports(path):
        top, *rest = name.split(".")
        if top == "scantling" and rest and rest[0] != room:
            yield line, rest[0], rest[1:]


def test_every_folder_of_the_package_is_a_known_room():
    """A new room gets its place in the order before anything is built on it."""
    found = {path.name for path in PACKAGE.iterdir() if path.is_dir() and any(path.glob("*.py"))}

    assert found - set(ROOMS) == set()


def test_the_engine_needs_nothing_but_the_standard_library():
    """Every file of the engine loads in an interpreter that has no packages, and loads no others."""
    tops = {name.partition(".")[0] for name in gained(present(ENGINE), inside=True)}

    assert tops - {"scantling"} - set(sys.stdlib_module_names) == set()


def test_the_engine_starts_fast():
    """Opening the engine's doors loads no module that a reader would wait for."""
    tops = {name.partition(".")[0] for name in gained(present(ENGINE), inside=False)}

    assert tops & SLOW_TO_START == set()


@pytest.mark.parametrize("room", present(ENGINE))
def test_an_engine_room_imports_only_the_library_and_lower_rooms(room):
    """Importing one room's door loads that room and rooms below it, never one above."""
    loaded = {name.split(".")[1] for name in gained([room], inside=True) if name.startswith("scantling.")}
    lower = set(ENGINE[: ENGINE.index(room) + 1])

    assert loaded - lower == set()


@pytest.mark.parametrize("room", present(ROOMS))
def test_no_import_climbs_the_stairs(room):
    """A room imports only rooms that stand below it, not even inside a function or for a type."""
    lower = ROOMS[: ROOMS.index(room)]
    climbing = [
        f"{where(path, line)} imports {other}"
        for path in files(room)
        for line, other, _ in cross_imports(path, room)
        if other not in lower
    ]

    assert climbing == []


@pytest.mark.parametrize("room", present(ROOMS))
def test_other_rooms_are_entered_by_the_door(room):
    """A room imports from `scantling.other`, never from a file inside it."""
    by_the_window = [
        f"{where(path, line)} imports scantling.{'.'.join([other, *rest])}"
        for path in files(room)
        for line, other, rest in cross_imports(path, room)
        if rest
    ]

    assert by_the_window == []


@pytest.mark.parametrize("room", present(ENGINE))
def test_the_engine_reads_no_file_clock_or_machine(room):
    """No engine file imports or calls what gives another answer on another day or machine."""
    found = []
    for path in files(room):
        found += [
            f"{where(path, line)} imports {name}"
            for line, name in imports(path)
            if name.partition(".")[0] in OUT_OF_REACH
        ]
        found += [
            f"{where(path, line)} calls {name}"
            for line, name in calls(ast.parse(path.read_text("utf-8")))
            if name in OUT_OF_REACH_CALLS
        ]

    assert found == []


@pytest.mark.parametrize("room", present(NO_FLOATS))
def test_sizes_are_never_floats(room):
    """No file below the drawings writes a float or makes one."""
    found = [
        where(path, node.lineno)
        for path in files(room)
        for node in ast.walk(ast.parse(path.read_text("utf-8")))
        if (isinstance(node, ast.Constant) and isinstance(node.value, float))
        or (isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "float")
    ]

    assert found == []


def public_names(door: Path) -> list[str]:
    """Return what a door's `__all__` lists."""
    for node in ast.parse(door.read_text("utf-8")).body:
        target = node.targets[0] if isinstance(node, ast.Assign) else getattr(node, "target", None)
        if isinstance(target, ast.Name) and target.id == "__all__":
            return ast.literal_eval(node.value)
    return []


def documented(body: list[ast.stmt]) -> Iterator[tuple[str, bool]]:
    """Yield each name that a module defines and whether a docstring says what it is."""
    for node, after in zip(body, [*body[1:], None], strict=True):
        if isinstance(node, ast.ClassDef | ast.FunctionDef | ast.AsyncFunctionDef):
            yield node.name, bool(ast.get_docstring(node))
        elif isinstance(node, ast.Assign | ast.AnnAssign):
            told = (
                isinstance(after, ast.Expr)
                and isinstance(after.value, ast.Constant)
                and isinstance(after.value.value, str)
            )
            targets = node.targets if isinstance(node, ast.Assign) else [node.target]
            yield from ((target.id, told) for target in targets if isinstance(target, ast.Name))


@pytest.mark.parametrize("room", present(ROOMS))
def test_every_public_name_says_what_it_is(room):
    """Each name in a door's `__all__` has a docstring where it is defined (a constant, one below it)."""
    names = public_names(PACKAGE / room / "__init__.py")
    defined: dict[str, bool] = {}
    for path in files(room):
        for name, told in documented(ast.parse(path.read_text("utf-8")).body):
            defined[name] = told or defined.get(name, False)

    assert names, f"{room}/__init__.py has no __all__"
    assert [name for name in names if not defined.get(name)] == []


def test_the_walls_would_be_seen_to_fall(tmp_path, monkeypatch):
    """The readers of imports find what climbs, what goes round a door, and what is relative."""
    package = tmp_path / "scantling"
    (package / "plan").mkdir(parents=True)
    culprit = package / "plan" / "culprit.py"
    culprit.write_text(
        "from scantling.measure.reading import read_length\n"
        "from ..host import plugin\n"
        "from scantling import cli\n"
        "def late():\n    import scantling.report.cost\n"
        "from .own import thing\n"
    )
    monkeypatch.setitem(globals(), "PACKAGE", package)

    assert sorted(cross_imports(culprit, "plan")) == [
        (1, "measure", ["reading"]),
        (2, "host", []),
        (3, "cli", []),
        (5, "report", ["cost"]),
    ]
