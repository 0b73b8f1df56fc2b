"""From what a reader typed to an answer."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from scantling.calculators.kit.answer import Answer
from scantling.calculators.kit.ask import Ask
from scantling.calculators.kit.calculator import Calculator
from scantling.calculators.kit.given import Given
from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.measure import Display
from scantling.words import say


def answer(calculator: Calculator, texts: Mapping[str, str], display: Display, currency: str = "$") -> Answer:
    """Return what a calculator answers; a question that is not in `texts` keeps its usual answer."""
    texts = {key.strip().casefold().replace("_", "-").replace(" ", "-"): text for key, text in texts.items()}
    standing = tuple((ask.name, texts.get(ask.name, ask.standing(display))) for ask in calculator.asks)
    faults = _unknown(calculator, texts)
    values = _values(calculator.asks, dict(standing), display, faults)
    if faults:
        return Answer(calculator, standing, None, None, tuple(faults))
    given = Given(values, display, currency)
    try:
        return Answer(calculator, standing, given, calculator.compute(given))
    except Faulty as faulty:
        return Answer(calculator, standing, None, None, faulty.faults)


def _unknown(calculator: Calculator, texts: Mapping[str, str]) -> list[Fault]:
    names = [ask.name for ask in calculator.asks]
    return [
        Fault(
            "unknown-input",
            say("this calculator does not ask for '{name}'", name=name[:40]),
            Place((name,), on_key=True),
            did_you_mean(name, names, kind=say("questions"), tell=say),
        )
        for name in texts
        if name not in names
    ]


def _values(
    asks: tuple[Ask, ...], texts: Mapping[str, str], display: Display, faults: list[Fault]
) -> dict[str, Any]:
    """Return what the texts mean, adding everything that is wrong to `faults`."""
    values: dict[str, Any] = {}
    for ask in asks:
        try:
            values[ask.name] = ask.read(texts[ask.name], display)
        except Faulty as faulty:
            faults.extend(faulty.faults)
    return values
