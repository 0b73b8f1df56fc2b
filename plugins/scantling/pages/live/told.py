"""Faults and warnings as a page shows them: in words, each beside the control that it concerns."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from scantling.fault import Fault

MOST_TOLD = 8


def told(faults: Iterable[Fault], touched: str = "") -> list[dict[str, Any]]:
    """Return faults for the page.

    Args:
        touched: the control that the reader changed last, for a fault that is of the plan as a whole.
    """
    found = [_told(fault, touched) for fault in faults]
    kept = [one for index, one in enumerate(found) if one not in found[:index]]
    return kept[:MOST_TOLD]


def _told(fault: Fault, touched: str) -> dict[str, Any]:
    return {
        "control": _control(fault) or touched,
        "code": fault.code,
        "message": _sentence(fault.message),
        "help": _sentence(fault.help),
    }


def _control(fault: Fault) -> str:
    """Return the name of the control: "size width", "option trim", "mine prices 2x4 | 8 ft"."""
    path = [str(key) for key in fault.place.path]
    if fault.code == "setting-left-out":
        return " ".join(["mine", *path])
    if len(path) >= 2 and path[0] in {"sizes", "options"}:
        return f"{path[0].removesuffix('s')} {path[1]}"
    return ""


def _sentence(words: str) -> str:
    if not words:
        return ""
    whole = words[:1].upper() + words[1:]
    return whole if whole.endswith((".", "!", "?")) else f"{whole}."
