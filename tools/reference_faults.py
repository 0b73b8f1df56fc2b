"""What docs/reference/diagnostics.md says of each fault: words from the code, an example from the tests."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from tests.fixtures.reading import Case, cases

ROOT = Path(__file__).resolve().parent.parent
PACKAGE = ROOT / "plugins" / "scantling"
MAKERS = {"Fault", "Found", "complain", "fail", "fault", "_fault"}
"""What makes a fault, wherever it is called: its first argument is the code, its second the message."""
EXAMPLES = ("faults/plan.md", "faults/shop.md")
_CODE = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")
_SAID = re.compile(r"^\S+?:(?P<line>\d+):\d+: (?P<code>\S+) (?P<rest>.*)$")
MOST_MESSAGES = 4
STAND_IN = "\N{REPLACEMENT CHARACTER}"


def faults_part() -> str:
    """Return a section for each code, in the order of the alphabet."""
    examples = _examples()
    found = {**{code: [] for code in examples}, **codes()}
    return "\n".join(_section(code, found[code], examples.get(code)) for code in sorted(found))


def _section(code: str, messages: list[str], example: tuple[Case, str] | None) -> str:
    said = "".join(f"- {_plain(message)}\n" for message in messages[:MOST_MESSAGES])
    said = f"{said}\n" if said else ""
    if example is None:
        return f"## {code}\n\n{said}"
    case, line = example
    return f"## {code}\n\n{said}{_block(case.given)}\n{_block(line)}"


def _block(text: str) -> str:
    """Return a fenced block; the mark says that the tests of faulty files try it already."""
    printable = "".join(letter if letter.isprintable() or letter == "\n" else STAND_IN for letter in text)
    return f"<!-- run: not here; the tests of faulty files try it -->\n\n````text\n{printable}\n````\n"


def _plain(message: str) -> str:
    """Return a message that no Markdown can change."""
    return re.sub(r"([\\`*_{}\[\]<>#|!])", r"\\\1", message)


def _examples() -> dict[str, tuple[Case, str]]:
    """Return the shortest case of the documents that shows each code, with what is said there."""
    found: dict[str, tuple[Case, str]] = {}
    for name in EXAMPLES:
        for case in cases(name):
            said = [match for line in case.expected.splitlines() if (match := _SAID.match(line))]
            for match in said:
                code = match["code"]
                if code not in found or len(case.given) < len(found[code][0].given):
                    found[code] = (case, match[0])
    return found


def codes() -> dict[str, list[str]]:
    """Return every code that the package can give, with its messages; a blank stands where a value goes."""
    found: dict[str, list[str]] = {}
    for path in sorted(PACKAGE.rglob("*.py")):
        for code, message in _in_file(ast.parse(path.read_text("utf-8"))):
            said = found.setdefault(code, [])
            if message and message not in said:
                said.append(message)
    return found


def _in_file(tree: ast.Module) -> Iterator[tuple[str, str]]:
    for function in ast.walk(tree):
        if isinstance(function, (ast.FunctionDef, ast.Module)):
            named = _texts(function)
            for node in _own(function):
                yield from _made(node, named)


def _own(function: ast.AST) -> Iterator[ast.AST]:
    """Yield what stands in a function, without what stands in functions within it."""
    for node in ast.iter_child_nodes(function):
        yield node
        if not isinstance(node, (ast.FunctionDef, ast.Module)):
            yield from _own(node)


def _texts(function: ast.AST) -> dict[str, str]:
    """Return what each name stands for where it is given a text."""
    found: dict[str, str] = {}
    for node in _own(function):
        if isinstance(node, ast.Assign) and len(node.targets) == 1:
            target, value = node.targets[0], node.value
            if isinstance(target, ast.Name):
                found[target.id] = _text(value, found)
            elif isinstance(target, ast.Tuple) and isinstance(value, ast.Tuple):
                pairs = zip(target.elts, value.elts, strict=False)
                found |= {name.id: _text(one, {}) for name, one in pairs if isinstance(name, ast.Name)}
    return found


def _made(node: ast.AST, named: dict[str, str]) -> Iterator[tuple[str, str]]:
    """Yield the code and the message of a fault that is made here, whichever way it is written."""
    if isinstance(node, ast.Call) and _name(node.func) in MAKERS and len(node.args) > 1:
        code = _text(node.args[0], named)
        if code and _CODE.fullmatch(code):
            yield code, _text(node.args[1], named)
    elif isinstance(node, ast.Return) and isinstance(node.value, ast.Tuple):
        yield from _words(node.value.elts)
    elif isinstance(node, ast.Dict):
        for key, value in zip(node.keys, node.values, strict=True):
            if key is not None and isinstance(value, ast.Tuple) and _is_words([key, *value.elts]):
                yield _text(key, {}), _text(value.elts[0], {})


def _words(elements: list[ast.expr]) -> Iterator[tuple[str, str]]:
    if _is_words(elements):
        yield _text(elements[0], {}), _text(elements[1], {})


def _is_words(elements: list[ast.expr]) -> bool:
    """Return whether these are a code of several words, a message and a mend."""
    texts = [_text(element, {}) for element in elements]
    return (
        len(texts) == 3
        and all(texts[:2])
        and "-" in texts[0]
        and bool(_CODE.fullmatch(texts[0]))
        and " " in texts[1]
    )


def _name(function: ast.expr) -> str:
    return function.id if isinstance(function, ast.Name) else getattr(function, "attr", "")


def _text(node: ast.expr, named: dict[str, str]) -> str:
    """Return the text of a literal, with an ellipsis for each value; nothing for anything else."""
    if isinstance(node, ast.Constant):
        return node.value if isinstance(node.value, str) else ""
    if isinstance(node, ast.JoinedStr):
        return "".join(part.value if isinstance(part, ast.Constant) else "…" for part in node.values)  # type: ignore[misc]
    if isinstance(node, ast.Name):
        return named.get(node.id, "")
    if isinstance(node, ast.Call) and _name(node.func) in {"say", "mark"} and node.args:
        return re.sub(r"\{\w+\}", "…", _text(node.args[0], named))
    if isinstance(node, ast.Call) and _name(node.func) == "counted" and len(node.args) > 1:
        return re.sub(r"\{\w+\}", "…", _text(node.args[1], named))
    if isinstance(node, ast.IfExp):
        return _text(node.body, named)
    if isinstance(node, ast.BinOp) and isinstance(node.op, ast.Add):
        return _text(node.left, named) + _text(node.right, named)
    return ""
