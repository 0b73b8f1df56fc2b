"""The engine's side of a live page: a question as JSON text in, an answer as JSON text out.

It runs in the reader's browser, and in the tests just the same. Whatever is asked, an answer comes back.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Mapping
from typing import Any

from scantling.fault import Fault, Faulty
from scantling.pages.live.calculate import calculate
from scantling.pages.live.fit import fit
from scantling.pages.live.from_stock import one_from_stock, plans_from_stock
from scantling.pages.live.opened import Opened
from scantling.pages.live.told import told
from scantling.pages.live.trip import plan_trip
from scantling.words import mark, say, speaking

_BROKEN = mark("this could not be worked out; the page shows what it showed before")
_ASKS: Mapping[str, Callable[[Opened, Mapping[str, Any]], dict[str, Any]]] = {
    "fit": fit,
    "trip": plan_trip,
    "calculate": calculate,
    "from-stock": plans_from_stock,
    "one-from-stock": one_from_stock,
}


class Session:
    """What is kept between questions."""

    def __init__(self) -> None:
        self._opened = Opened()

    def answer(self, text: str) -> str:
        """Return the answer to one question; what it hands over (`shop`, `plans`) is kept."""
        question: object = None
        try:
            question = json.loads(text)
        except ValueError:
            question = None
        with speaking(self._opened.language_of(question)):
            answer = self._told(question)
        return json.dumps(answer, ensure_ascii=False)

    def _told(self, question: object) -> dict[str, Any]:
        try:
            return self._answer(question)
        except Faulty as faulty:
            return _refused(faulty.faults, question)
        except Exception as error:  # noqa: BLE001 - a page must get an answer, whatever happened
            return _refused([Fault("broken", f"{say(_BROKEN)} ({type(error).__name__})")], question)

    def _answer(self, question: object) -> dict[str, Any]:
        if not isinstance(question, dict):
            raise Faulty([Fault("unknown-question", say(_BROKEN))])
        self._opened.take(question)
        if question.get("ask") == "open":
            return {"ok": True}
        ask = _ASKS.get(str(question.get("ask")))
        if ask is None:
            raise Faulty([Fault("unknown-question", say(_BROKEN))])
        return ask(self._opened, question)


def _refused(faults: Iterable[Fault], question: object) -> dict[str, Any]:
    touched = str(question.get("touched", "")) if isinstance(question, dict) else ""
    return {"ok": False, "faults": told(faults, touched)}
