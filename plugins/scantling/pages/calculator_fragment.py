"""A calculator's answer as a piece of a page: the build and the reader's browser call the same function."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping

from scantling.calculators import Answer, Shown, Table, run
from scantling.measure import Display, hold
from scantling.pages.drawings import Drawing, as_drawing
from scantling.pages.html import escape, items, tag
from scantling.words import say

Address = Callable[[Drawing], str]
"""Says where a drawing is: a file beside the page, or an address that carries the drawing itself."""


def calculator_fragment(
    name: str, inputs: Mapping[str, str], *, display: Display, currency: str, address: Address
) -> str:
    """Return what a page shows of a calculator's answer, "" where something is wrong with the inputs.

    Raises:
        Faulty: where there is no calculator of that name.
    """
    answer = run(name, inputs, display, currency)
    return answer_html(answer, address) if answer.is_good else ""


def answer_html(answer: Answer, address: Address) -> str:
    """Return a good answer as HTML: what was found, pictures, tables, notes, the numbers given, the sum."""
    assert answer.result is not None
    shown = answer.shown()
    parts = [
        _main(one for one in shown if one.main),
        _rest(one for one in shown if not one.main),
        tag("div", "".join(_figures(answer, address)), class_="sc-diagrams"),
        *(_table(answer, table) for table in answer.result.tables),
        _notes(answer),
        _working(answer),
    ]
    return "".join(parts)


def answer_drawings(answer: Answer) -> tuple[Drawing, ...]:
    """Return the picture of an answer and its curve, where it has one."""
    picture, curve = as_drawing("picture", answer.scene(), ""), answer.plot()
    return (picture,) if curve is None else (picture, as_drawing("curve", curve, ""))


def _given(answer: Answer) -> str:
    """Return the numbers that the answer is for, so that it stands alone."""
    asked = ((label, text) for label, text in answer.asked() if text.strip())
    words = "; ".join(f"{escape(label)}: {tag('b', escape(hold(text)))}" for label, text in asked)
    return tag("p", words, class_="sc-text")


def _main(shown: Iterable[Shown]) -> str:
    facts = "".join(
        tag("div", tag("dt", escape(one.name)) + tag("dd", _value(one)), class_="sc-fact sc-fact--cost")
        for one in shown
    )
    return tag("dl", facts, class_="sc-facts")


def _rest(shown: Iterable[Shown]) -> str:
    rows = "".join(
        tag("tr", tag("th", escape(one.name), scope="row") + tag("td", _value(one))) for one in shown
    )
    return tag("table", tag("tbody", rows), class_="sc-table") if rows else ""


def _value(one: Shown) -> str:
    aside = tag("small", escape(hold(one.aside))) if one.aside else ""
    return escape(hold(one.shop)) + (f" {aside}" if aside else "")


def _figures(answer: Answer, address: Address) -> Iterator[str]:
    for drawing in answer_drawings(answer):
        picture = tag(
            "img",
            src=address(drawing),
            alt=drawing.alt,
            width=drawing.width,
            height=drawing.height,
            decoding="async",
        )
        yield tag("figure", picture, class_="sc-paper")


def _table(answer: Answer, table: Table) -> str:
    head = "".join(tag("th", escape(words), scope="col") for words in table.headings)
    rows = "".join(
        tag("tr", "".join(tag("td", escape(hold(text))) for text in row)) for row in answer.cells(table)
    )
    caption = tag("caption", escape(table.title))
    return tag("table", caption + tag("thead", tag("tr", head)) + tag("tbody", rows), class_="sc-table")


def _notes(answer: Answer) -> str:
    assert answer.result is not None
    return items(escape(hold(remark)) for remark in answer.result.remarks)


def _working(answer: Answer) -> str:
    """Return what the answer is for, below it: on a phone the answer stands right under the fields."""
    head = tag("p", tag("b", say("The sum, with these numbers")))
    return head + _given(answer) + items(escape(hold(line)) for line in answer.working())
