"""The answer to a calculator's page: what it shows for what the reader typed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any, Literal

from scantling.calculators import Answer, run
from scantling.fault import Fault, Faulty
from scantling.measure import Display
from scantling.pages.calculator_fragment import answer_html
from scantling.pages.live.choice import LONGEST_TYPED
from scantling.pages.live.fit import data_address, pairs
from scantling.pages.live.my_shop import read_settings
from scantling.pages.live.opened import Opened
from scantling.pages.live.told import told

LONGEST_LIST = 1_000
"""Letters of a list of pieces that are read; more is refused by the calculator itself."""


def calculate(opened: Opened, question: Mapping[str, Any]) -> dict[str, Any]:
    """Return a calculator's answer as a piece of its page, or what is wrong, field by field."""
    texts = {name: text[: LONGEST_LIST + 1] for name, text in pairs(question.get("chosen"))}
    display = _display(opened, question, texts.pop("units", ""))
    answer = run(str(question.get("calculator"))[:LONGEST_TYPED], texts, display, _currency(opened))
    if not answer.is_good:
        return {"ok": False, "faults": _told(answer.faults)}
    return {"ok": True, "fragments": {"answer": answer_html(answer, data_address)}, "say": _say(answer)}


def _display(opened: Opened, question: Mapping[str, Any], units: str) -> Display:
    settings = read_settings(question.get("mine"), opened.display)
    system: Literal["in", "mm"] = settings.display.system
    if units in {"in", "mm"}:
        system = "mm" if units == "mm" else "in"
    return replace(settings.display, system=system)


def _currency(opened: Opened) -> str:
    try:
        return opened.shop.currency
    except Faulty:
        return "$"


def _told(faults: Iterable[Fault]) -> list[dict[str, Any]]:
    """Return faults for the page, each at the field that it names."""
    found = []
    for fault in faults:
        (one,) = told([fault])
        name = str(fault.place.path[0]) if fault.place.path else ""
        found.append({**one, "control": f"input {name}" if name else ""})
    return found


def _say(answer: Answer) -> str:
    """Return the main figures in a sentence, for who listens."""
    return "; ".join(f"{one.name}: {one.shop}" for one in answer.shown() if one.main) + "."
