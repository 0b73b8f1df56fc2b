"""Writes `engine.zip` and `stdlib.zip` for the browser; run by Pyodide itself in Node (see `pack.mjs`)."""

from __future__ import annotations

import ast
import dataclasses
import importlib.util
import marshal
import sys
import zipfile
from pathlib import Path
from types import CodeType
from typing import Any

ROOMS = [
    "fault",
    "words",
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
]
"""Rooms that go whole; of `pages`, only what the session loads."""
KEPT = ("encodings.utf", "encodings.ascii", "encodings.latin", "sysconfig", "_sysconfig")
"""What the interpreter reaches for before anybody can see it do so."""
PLUGINS, OUT = Path("/plugins"), Path("/out")


def engine_paths() -> list[Path]:
    """Return every file of the package that the browser needs."""
    importlib.import_module("scantling.pages.live.session")
    ours = [module for name, module in sys.modules.items() if name.split(".")[0] == "scantling"]
    paths = {Path(module.__file__) for module in ours if module.__file__}
    for room in ROOMS:
        paths |= set((PLUGINS / "scantling" / room).rglob("*.py"))
    return sorted(paths)


def names_in_engine() -> str:
    """Return every library module that a file of the engine names anywhere, so that none is missing later."""
    found: set[str] = set()
    for path in engine_paths():
        for node in ast.walk(ast.parse(path.read_bytes())):
            if isinstance(node, ast.Import):
                found |= {alias.name for alias in node.names}
            elif isinstance(node, ast.ImportFrom) and node.module and not node.level:
                found.add(node.module)
    return " ".join(sorted(name for name in found if name.split(".")[0] in sys.stdlib_module_names))


def write_archives(used: str) -> None:
    """Write both archives."""
    engine = {path.relative_to(PLUGINS).as_posix(): path.read_bytes() for path in engine_paths()}
    files = {f"{name}c": compiled(lean(source), name) for name, source in engine.items()}
    write_zip(OUT / "engine.zip", {**files, "ready.bin": marshal.dumps(METHODS)})
    write_zip(OUT / "stdlib.zip", library_files(set(used.split())))


METHODS: dict[str, CodeType] = {}
"""Code of the methods that `dataclasses` writes for each class, by its text.

Compiling them is half of what importing the engine takes; the browser is given them ready made.
"""


def watch_dataclasses() -> None:
    """Keep what `dataclasses` compiles from now on."""

    def watched(text: str, *scopes: dict[str, Any]) -> None:
        METHODS[text] = compile(text, "<dataclass>", "exec", dont_inherit=True)
        exec(METHODS[text], *scopes)  # noqa: S102 - in the place of the library's own call

    dataclasses.exec = watched  # type: ignore[attr-defined]


def library_files(used: set[str]) -> dict[str, bytes]:
    """Return the compiled files of the standard library that are used."""
    made = {}
    with zipfile.ZipFile(next(Path("/lib").glob("python3*.zip"))) as library:
        for name in library.namelist():
            module = name.removesuffix(".py").replace("/", ".").removesuffix(".__init__")
            if name.endswith(".py") and (module in used or module.startswith(KEPT)):
                made[f"{name}c"] = compiled(library.read(name), name, optimize=2)
    return made


def lean(source: bytes) -> ast.Module:
    """Return the tree of a file without documentation, which nobody reads in a browser.

    A class keeps a stub: a dataclass without any would work out its signature instead, which is slow.
    Asserts stay, so that the code does the same as in the build.
    """
    tree = ast.parse(source)
    for node in ast.walk(tree):
        if isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef | ast.AsyncFunctionDef):
            stub = [ast.Expr(ast.Constant("."))] if isinstance(node, ast.ClassDef) else []
            body = [line for line in node.body if not is_words(line)]
            node.body = [*stub, *body] or [ast.Pass()]
    return ast.fix_missing_locations(tree)


def is_words(line: ast.stmt) -> bool:
    """Return whether a statement is a text alone."""
    return (
        isinstance(line, ast.Expr)
        and isinstance(line.value, ast.Constant)
        and isinstance(line.value.value, str)
    )


def compiled(source: bytes | ast.Module, name: str, optimize: int = 0) -> bytes:
    """Return the content of a `.pyc` that is never checked against a source."""
    code = compile(source, name, "exec", dont_inherit=True, optimize=optimize)
    unchecked = (1).to_bytes(4, "little") + bytes(8)
    return importlib.util.MAGIC_NUMBER + unchecked + marshal.dumps(code)


def write_zip(path: Path, files: dict[str, bytes]) -> None:
    """Write a zip that is the same bytes on every day."""
    with zipfile.ZipFile(path, "w") as made:
        for name in sorted(files):
            info = zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0))
            info.compress_type = zipfile.ZIP_DEFLATED
            made.writestr(info, files[name], compresslevel=9)
