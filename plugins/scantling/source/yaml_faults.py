"""What is wrong with YAML that does not parse, in an author's words."""

from __future__ import annotations

import re
from dataclasses import replace

import yaml

from scantling.source.document import Found

_KEY_AND_WORDS = re.compile(r"^(?P<before>\s*(?:-\s+)?(?P<key>[^:#\n]+?):\s+)(?P<value>[^'\"\s\[{|>].*?)\s*$")


def found_of(error: yaml.YAMLError, text: str, start: int, end: int) -> Found:
    """Return the fault for an error of the YAML reader.

    Args:
        text: the whole file, of which `text[start:end]` was read.
    """
    if not isinstance(error, yaml.MarkedYAMLError):
        return Found("not-yaml", "this cannot be read", start, start)
    stopped = _offset(error.problem_mark or error.context_mark, start, end)
    where = _Where(text, stopped, _line_at(text, stopped), end)
    begun = _offset(error.context_mark, start, end) if error.context_mark else stopped
    for test, words in _CASES:
        if test(where, error):
            code, message, help_line = words(where)
            return _pointed(Found(code, message, stopped, where.token_end(), help_line), begun, text)
    message = "the 'key: value' lines cannot be read from here on"
    help_line = "see whether a quote, a bracket or an indent is missing"
    return Found("not-yaml", message, stopped, where.token_end(), help_line)


def _offset(mark: yaml.Mark | None, start: int, end: int) -> int:
    return min(end, start + (mark.index if mark else 0))


def _pointed(found: Found, begun: int, text: str) -> Found:
    """Return a fault moved to where something was begun that never ends, with a note of where that shows."""
    if found.code == "open-quote":
        return replace(found, start=begun, end=begun + 1)
    if found.code == "no-colon":
        return replace(found, start=begun, end=_line_end(text, begun))
    if found.code == "open-bracket" and "\n" in text[begun : found.start]:
        note = ("a comma or its other half is due before this", found.start, found.end)
        message = f"this {'brace' if text[begun] == '{' else 'bracket'} is never closed"
        return replace(found, message=message, start=begun, end=begun + 1, notes=(note,))
    return found


def _line_end(text: str, at: int) -> int:
    end = text.find("\n", at)
    return len(text) if end < 0 else end


class _Where:
    """The place where reading stopped."""

    def __init__(self, text: str, at: int, line: str, end: int) -> None:
        self.text = text
        self.at = at
        self.line = line
        self.end = end

    @property
    def letter(self) -> str:
        return self.text[self.at : self.at + 1] if self.at < self.end else ""

    def token_end(self) -> int:
        return self.at + 1 if self.letter not in {"", "\n"} else self.at

    @property
    def is_indented_with_tab(self) -> bool:
        return "\t" in self.line[: len(self.line) - len(self.line.lstrip())]


def _line_at(text: str, at: int) -> str:
    return text[text.rfind("\n", 0, at) + 1 : _line_end(text, at)]


def _tab(where: _Where, error: yaml.MarkedYAMLError) -> bool:
    return where.letter == "\t" or (where.is_indented_with_tab and "start any token" in (error.problem or ""))


def _tab_words(where: _Where) -> tuple[str, str, str]:
    if not where.is_indented_with_tab:
        return "stray-tab", "a tab stands between words here", "write a space"
    return "tab-indent", "a tab indents this line", "indent with spaces"


def _colon(_: _Where, error: yaml.MarkedYAMLError) -> bool:
    return "mapping values are not allowed" in (error.problem or "")


def _colon_words(where: _Where) -> tuple[str, str, str]:
    found = _KEY_AND_WORDS.match(where.line)
    help_line = "put words that hold a colon in quotes"
    if found and ":" in found["value"]:
        quote = "'" if '"' in found["value"] else '"'
        if quote not in found["value"]:
            help_line = f"put the words in quotes: {found['key'].strip()}: {quote}{found['value']}{quote}"
        return "stray-colon", "a second colon on this line", help_line
    return (
        "stray-colon",
        "this colon stands where no key can be",
        "see whether the line is indented as its neighbours are",
    )


def _quote(_: _Where, error: yaml.MarkedYAMLError) -> bool:
    return "quoted scalar" in (error.context or "") and "unexpected end" in (error.problem or "")


def _quote_words(_: _Where) -> tuple[str, str, str]:
    return "open-quote", "a quote is never closed", "close it, or take the quotes away"


def _escape(_: _Where, error: yaml.MarkedYAMLError) -> bool:
    return "escape" in (error.problem or "") and "double-quoted" in (error.context or "")


def _escape_words(_: _Where) -> tuple[str, str, str]:
    return (
        "stray-backslash",
        "a backslash in double quotes means nothing here",
        "write two of them, or use single quotes",
    )


def _after_quote(where: _Where, error: yaml.MarkedYAMLError) -> bool:
    """Return whether a value goes on after its closing quote, as in `"Bench" with a back`."""
    before = where.text[: where.at].rstrip(" ")
    return (
        before.endswith(('"', "'"))
        and "\n" not in where.text[len(before) : where.at]
        and _ended_early(where, error)
    )


def _after_quote_words(_: _Where) -> tuple[str, str, str]:
    return (
        "after-quote",
        "something stands after the closing quote",
        "put all of the value in quotes, or none of it",
    )


def _ended_early(_: _Where, error: yaml.MarkedYAMLError) -> bool:
    return "expected <block end>" in (error.problem or "") or "',' or" in (error.problem or "")


def _after_brace(where: _Where, error: yaml.MarkedYAMLError) -> bool:
    before = where.text[: where.at].rstrip(" ")
    return (
        before.endswith(("}", "]"))
        and "\n" not in where.text[len(before) : where.at]
        and _ended_early(where, error)
    )


def _after_brace_words(where: _Where) -> tuple[str, str, str]:
    sort = "brace" if where.text[: where.at].rstrip(" ").endswith("}") else "bracket"
    return (
        "after-brace",
        f"something stands after the closing {sort}",
        f"put words that begin with a {sort} in quotes",
    )


def _question(where: _Where, error: yaml.MarkedYAMLError) -> bool:
    return where.letter == "?" and "flow" in (error.context or "")


def _question_words(_: _Where) -> tuple[str, str, str]:
    return (
        "stray-question-mark",
        "a question mark within braces needs quotes",
        "put the whole question in quotes",
    )


def _flow(_: _Where, error: yaml.MarkedYAMLError) -> bool:
    return "flow" in (error.context or "") and (
        "',' or" in (error.problem or "") or "stream end" in (error.problem or "")
    )


def _flow_words(_: _Where) -> tuple[str, str, str]:
    return (
        "open-bracket",
        "a comma or a closing bracket is due here",
        "close the bracket, or put a comma between the entries",
    )


def _sign(_: _Where, error: yaml.MarkedYAMLError) -> bool:
    return "cannot start any token" in (error.problem or "")


def _sign_words(where: _Where) -> tuple[str, str, str]:
    return "stray-sign", f"a value cannot begin with {where.letter}", "put it in quotes"


def _key(_: _Where, error: yaml.MarkedYAMLError) -> bool:
    return "could not find expected ':'" in (error.problem or "")


def _key_words(_: _Where) -> tuple[str, str, str]:
    return "no-colon", "this line has a name and no colon", "write 'name: value'"


def _indent(_: _Where, error: yaml.MarkedYAMLError) -> bool:
    problem = error.problem or ""
    return "expected <block end>" in problem or "are not allowed here" in problem


def _indent_words(_: _Where) -> tuple[str, str, str]:
    return (
        "stray-indent",
        "this line is not indented as its neighbours are",
        "give lines that belong together the same indent",
    )


_CASES = (
    (_tab, _tab_words),
    (_quote, _quote_words),
    (_escape, _escape_words),
    (_colon, _colon_words),
    (_after_quote, _after_quote_words),
    (_after_brace, _after_brace_words),
    (_question, _question_words),
    (_flow, _flow_words),
    (_sign, _sign_words),
    (_key, _key_words),
    (_indent, _indent_words),
)
