"""A calculator's answer, ready for people and for programs."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

from scantling.calculators.kit.calculator import Calculator
from scantling.calculators.kit.given import Given
from scantling.calculators.kit.picture import ROOM
from scantling.calculators.kit.result import Result, Table
from scantling.calculators.kit.show import Shown, cell, show
from scantling.drawing import Scene, plot_scene
from scantling.fault import Fault, Faulty
from scantling.measure import Money, write_money
from scantling.words import say

WIDE = 100


@dataclass(frozen=True, slots=True)
class Answer:
    """What a calculator answers to what a reader typed: figures, or what is wrong."""

    calculator: Calculator = field(repr=False)
    texts: tuple[tuple[str, str], ...]
    """Every question's name and what stood in its field, in order."""
    given: Given | None
    result: Result | None
    faults: tuple[Fault, ...] = ()

    @property
    def is_good(self) -> bool:
        """True where there is an answer."""
        return self.result is not None

    def shown(self) -> tuple[Shown, ...]:
        """Return the figures as people read them; none where something is wrong."""
        if self.result is None or self.given is None:
            return ()
        return tuple(show(figure, self.given.display, self.given.currency) for figure in self.result.figures)

    def cells(self, table: Table) -> tuple[tuple[str, ...], ...]:
        """Return the rows of a table as people read them."""
        given = self._good()
        return tuple(tuple(cell(value, given.display, given.currency) for value in row) for row in table.rows)

    def working(self) -> tuple[str, ...]:
        """Return the formula with the numbers put in, line by line."""
        return tuple(line.replace("= ≈", "≈") for line in self.result.working) if self.result else ()

    def scene(self) -> Scene:
        """Return the picture, which follows the numbers.

        Raises:
            Faulty: where there is no answer.
        """
        given = self._good()
        assert self.result is not None
        return self.calculator.draw(given, self.result)

    def plot(self) -> Scene | None:
        """Return the curve with the reader's point on it, for the calculators that have one."""
        given = self._good()
        assert self.result is not None
        if self.calculator.plot is None:
            return None
        return plot_scene(self.calculator.plot(given, self.result), width=ROOM, height=230)

    def _good(self) -> Given:
        if self.given is None or self.result is None:
            raise Faulty(self.faults)
        return self.given

    def to_data(self) -> dict[str, Any]:
        """Return plain data, the same for the same answer."""
        result = self.result
        return {
            "calculator": self.calculator.slug,
            "inputs": dict(self.texts),
            "faults": [fault_data(fault) for fault in self.faults],
            "results": [shown.to_data() for shown in self.shown()],
            "tables": [self._table_data(table) for table in result.tables] if result else [],
            "working": list(self.working()),
            "remarks": list(result.remarks) if result else [],
            "formula": list(self.calculator.told_formula()),
            "source": list(self.calculator.told_source()),
            "exactness": say(self.calculator.exactness),
            "caution": say(self.calculator.caution),
        }

    def _table_data(self, table: Table) -> dict[str, Any]:
        rows = [list(row) for row in self.cells(table)]
        return {"title": table.title, "headings": list(table.headings), "rows": rows}

    def to_text(self) -> str:
        """Return the answer for a terminal, a line each, ending in a line break."""
        lines = [say(self.calculator.title), "", *self._inputs(), ""]
        if self.result is None:
            lines += fault_lines(self.faults)
        else:
            lines += _columns([(one.name, one.shop, one.aside) for one in self.shown()])
            for table in self.result.tables:
                lines += ["", table.title, *_grid(table.headings, self.cells(table))]
            lines += _block(say("Note"), self.result.remarks) + _block(say("Working"), self.working())
        calculator = self.calculator
        lines += _block(say("The formula"), calculator.told_formula())
        lines += _block(say("Where it comes from"), calculator.told_source())
        lines += _block(say("Exact?"), (say(calculator.exactness),))
        lines += _block(say("Caution"), (say(calculator.caution),) if calculator.caution else ())
        return "\n".join(line.rstrip() for line in lines) + "\n"

    def story(self) -> str:
        """Return the words of the worked example, an answer in the place of its question's name."""
        story = self.calculator.example.story
        return say(story, **dict(self.texts_shown())) if "{" in story else say(story)

    def texts_shown(self) -> Iterator[tuple[str, str]]:
        """Yield every question's name and its answer as people read it: a price with its sign."""
        given = self.given
        for name, text in self.texts:
            value = given.values[name] if given is not None else None
            if given is not None and isinstance(value, Money):
                yield name, write_money(value, given.currency)
            else:
                yield name, self.calculator.ask(name).shown(text)

    def asked(self) -> tuple[tuple[str, str], ...]:
        """Return every question and what stood in its field, as people read them."""
        return tuple((say(self.calculator.ask(name).label), text) for name, text in self.texts_shown())

    def _inputs(self) -> list[str]:
        rows = [(label, text or say("(left open)"), "") for label, text in self.asked()]
        return _columns(rows)


def fault_data(fault: Fault) -> dict[str, Any]:
    """Return a fault as plain data."""
    place = fault.place
    return {
        "code": fault.code,
        "message": fault.message,
        "help": fault.help,
        "input": place.path[0] if place.path else None,
        "start": place.start,
        "end": place.end,
    }


def fault_lines(faults: tuple[Fault, ...]) -> list[str]:
    """Return what is wrong and how to mend it, a line each."""
    lines = []
    for fault in faults:
        lines.append(f"  ! {fault.message}")
        if fault.help:
            lines.append(f"    {fault.help}")
    return lines


def _columns(rows: list[tuple[str, str, str]]) -> list[str]:
    names = max((len(name) for name, _, _ in rows), default=0)
    values = max((len(value) for _, value, aside in rows if aside), default=0)
    return [
        f"  {name:<{names}}  {value:<{values}}  {f'({aside})' if aside else ''}"
        for name, value, aside in rows
    ]


def _grid(headings: tuple[str, ...], rows: tuple[tuple[str, ...], ...]) -> list[str]:
    widths = [max(len(row[i]) for row in (headings, *rows)) for i in range(len(headings))]
    return [
        "  " + "  ".join(f"{text:<{width}}" for text, width in zip(row, widths, strict=True))
        for row in (headings, *rows)
    ]


def _block(name: str, lines: tuple[str, ...]) -> list[str]:
    if not lines:
        return []
    folded = [part for line in lines for part in _fold(line)]
    return ["", f"{name}", *(f"  {line}" for line in folded)]


def _fold(line: str) -> list[str]:
    folded = [""]
    for word in line.split(" "):
        if folded[-1] and len(folded[-1]) + 1 + len(word) > WIDE:
            folded.append(f"  {word}")
        else:
            folded[-1] = f"{folded[-1]} {word}" if folded[-1] else word
    return folded
