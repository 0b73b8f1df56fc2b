"""The English wordings of the product, found in its code, scripts and templates."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from scantling.calculators import calculators
from scantling.checks import CHECKS
from scantling.checks.use_heights import USES
from scantling.pages.live.script_words import words_in

PACKAGE = Path(__file__).resolve().parents[2] / "plugins" / "scantling"
SCRIPTS = (
    *sorted((PACKAGE / "pages/live/web").glob("*.js")),
    PACKAGE / "pages/notebook/assets/scantling/finding.js",
)
TEMPLATES = sorted(
    [*(PACKAGE / "pages/notebook").rglob("*.html"), *(PACKAGE / "pages/templates").rglob("*.html")]
)


def asked() -> Iterator[tuple[str, bool]]:
    """Yield each wording that is told, and whether it depends on a number."""
    for path in sorted(PACKAGE.rglob("*.py")):
        if "cli" not in path.parts and "scantling.words" in (text := path.read_text("utf-8")):
            for node in ast.walk(ast.parse(text)):
                if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
                    if node.func.id in {"say", "mark", "tell"}:
                        yield from ((words, False) for words in _literals(node.args[0]))
                    elif node.func.id == "counted":
                        yield from ((words, True) for words in _literals(node.args[1]))
    for path in SCRIPTS:
        yield from ((words, False) for words in words_in(path.read_text("utf-8")))


def of_calculators() -> Iterator[str]:
    """Yield what every calculator says of itself and asks."""
    for one in calculators():
        yield from (one.title, one.question, one.exactness, one.caution, one.words, one.example.story)
        yield from (*one.formula, *one.source)
        for ask in one.asks:
            yield from (ask.label, ask.help, *ask.choices)


def of_checks() -> Iterator[str]:
    """Yield what the page of checks says of each, and the uses whose heights are compared."""
    for check in CHECKS:
        yield from (check.group, check.title, check.meaning, check.source, check.quotes)
    yield from (use.name for use in USES)


def unmarked() -> Iterator[str]:
    """Yield calls of `say` and `counted` with a wording that nobody can find: made on the spot."""
    for path in sorted(PACKAGE.rglob("*.py")):
        if "cli" in path.parts or "scantling.words" not in (text := path.read_text("utf-8")):
            continue
        for node in ast.walk(ast.parse(text)):
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") in {"say", "tell"}:
                yield from (
                    f"{path.name}:{node.lineno}"
                    for first in node.args[:1]
                    if isinstance(first, ast.JoinedStr | ast.BinOp)
                )


def in_templates() -> set[str]:
    """Return the wordings that templates look up."""
    return {
        words
        for path in TEMPLATES
        for words in re.findall(r"\.get\('([^']+)', '\1'\)", path.read_text("utf-8"))
    }


def _literals(node: ast.expr) -> list[str]:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return [node.value]
    if isinstance(node, ast.IfExp):
        return _literals(node.body) + _literals(node.orelse)
    return []
