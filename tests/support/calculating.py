"""Asking a calculator as a reader would, and taking the exact numbers from its data."""

from __future__ import annotations

from fractions import Fraction

from scantling.calculators import Answer, run
from scantling.measure import Display

INCHES, MILLIMETRES = Display(), Display("mm")


def ask(slug: str, display: Display = INCHES, **texts: str) -> Answer:
    """Return a good answer; underscores in names stand for hyphens."""
    answer = run(slug, texts, display)
    assert answer.is_good, [(fault.message, fault.help) for fault in answer.faults]
    return answer


def exact(answer: Answer, key: str) -> Fraction:
    """Return the exact value of a figure, in the unit that the data name."""
    (found,) = [one for one in answer.to_data()["results"] if one["key"] == key]
    return Fraction(found["value"])


def number(slug: str, key: str, **texts: str) -> float:
    """Return one figure of a calculator as a float, for comparing with what a library gives."""
    return float(exact(ask(slug, **texts), key))


def column(answer: Answer, table: int, heading: str) -> list[str]:
    """Return one column of a table as it is shown."""
    found = answer.to_data()["tables"][table]
    index = found["headings"].index(heading)
    return [row[index] for row in found["rows"]]
