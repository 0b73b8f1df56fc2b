"""The cut list once more in the order of the work: board by board, with a box to tick for each piece."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from scantling.cutting import CutBoard, OffcutPiece
from scantling.measure import Display, Length
from scantling.pages import alike
from scantling.paper.tree import Node
from scantling.plan import FittedPart
from scantling.report import Report
from scantling.words import mark, say

MOST_BOXES = 16
"""A row with more pieces gets one box for all of them."""
_COLUMNS = (mark("Piece"), mark("Count"), mark("Cut to"))
Piece = tuple[FittedPart, Length, Length]


def board_list(report: Report, display: Display) -> list[Node]:
    """Return pieces under the board or the strips that each comes from: a table with a body for each."""
    groups = list(_groups(report, display))
    if not groups:
        return []
    head = _node("tr", *(_node("th", say(name)) for name in _COLUMNS))
    bodies = (_node("tbody", *rows) for rows in groups)
    heading = _node("h3", say("Board by board"))
    return [_node("div", heading, _node("table", _node("thead", head), *bodies), class_="sc-boards")]


def _groups(report: Report, display: Display) -> Iterator[list[Node]]:
    for boards in alike(report.cutting.boards):
        pieces = [(piece.part, piece.length, piece.width) for piece in boards[0].pieces]
        yield [_head(board_words(boards)), *_rows(pieces, len(boards), display)]
    strips: dict[str, list[OffcutPiece]] = {}
    for piece in report.cutting.from_offcuts:
        strips.setdefault(piece.strip.of, []).append(piece)
    for name, found in strips.items():
        cut = [(piece.part, piece.part.blank.along, piece.part.blank.across) for piece in found]
        yield [_head(say("Offcuts of {part}", part=name)), *_rows(cut, 1, display)]


def board_words(boards: list[CutBoard]) -> str:
    """Return what boards that are cut alike are called: "1x6 no. 1 and no. 2, 6 ft"."""
    first, last = boards[0], boards[-1]
    if last.number - first.number == len(boards) - 1 > 1:
        return f"{say('{board} to no. {last}', board=first.name, last=last.number)}, {first.sale.label}"
    names = [boards[0].name, *(say("no. {number}", number=board.number) for board in boards[1:])]
    listed = ", ".join(names[:-1]) + say(" and ") + names[-1] if len(names) > 1 else names[0]
    return f"{listed}, {boards[0].sale.label}"


def _rows(pieces: Iterable[Piece], times: int, display: Display) -> Iterator[Node]:
    counts: dict[tuple[str, Length, Length], int] = {}
    parts: dict[str, FittedPart] = {}
    for part, length, width in pieces:
        parts[part.id] = part
        counts[part.id, length, width] = counts.get((part.id, length, width), 0) + times
    for (name, length, width), count in counts.items():
        boxes = [_node("input")] * (count if count <= MOST_BOXES else 1)
        size = f"{display.length(length)} × {display.length(width)}".replace(" ", "\u00a0")
        words = _node("span", _node("b", parts[name].letter, class_="sc-mark"), f" {name}", *_gap(), *boxes)
        yield _node(
            "tr",
            _node("th", words),
            _node("td", str(count), class_="sc-count"),
            _node("td", size, class_="sc-size"),
        )


def _gap() -> tuple[str, ...]:
    return ("\u2003",)


def _head(words: str) -> Node:
    return _node("tr", {**_node("th", words), "colspan": str(len(_COLUMNS))}, class_="sc-shelf")


def _node(tag: str, *children: Node, class_: str = "") -> dict[str, object]:
    return {"t": tag, "c": class_, "k": list(children)}
