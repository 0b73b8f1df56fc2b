"""What docs/reference/checks.md says of each check, from the check itself."""

from __future__ import annotations

from scantling.checks import CHECKS, Check
from scantling.fault import Severity

_MATTERS = {
    Severity.FAULT: "a fault: it cannot be built as written",
    Severity.WARNING: "a warning: somebody will probably be hurt, puzzled or out of pocket",
    Severity.HINT: "a hint: it could be better",
}


def checks_part() -> str:
    """Return a chapter for each group of checks, and a section for each check."""
    chapters: dict[str, list[Check]] = {}
    for check in CHECKS:
        chapters.setdefault(check.group, []).append(check)
    return "\n".join(
        f"## {group}\n\n" + "\n".join(map(_section, checks)) for group, checks in chapters.items()
    )


def _section(check: Check) -> str:
    lines = [
        f"### {check.name}",
        f"**{check.title}** {check.explained()}",
        f"- It is {_MATTERS[check.severity]}.",
        f"- How to mend it: {check.mend}.",
    ]
    lines.append(f'- To accept it at one place: `accept: {{{check.name}: "the reason"}}`.')
    if check.source:
        lines.append(f"- Source: {check.source.rstrip('.')}.")
    return "\n\n".join([*lines[:2], "\n".join(lines[2:])]) + "\n"
