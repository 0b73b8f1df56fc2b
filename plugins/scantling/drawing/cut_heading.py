"""The heading of a cut diagram: which board it is, how large, and which way its grain runs."""

from __future__ import annotations

from scantling.drawing.arrow import arrow
from scantling.drawing.board_picture import BoardPicture
from scantling.drawing.cut_measures import HEADING, LABEL, LEFT, SMALL, TITLE
from scantling.drawing.lettering import text_width
from scantling.drawing.shape import Shape, Text
from scantling.words import say


def width_fits(board: BoardPicture, upscale: float) -> bool:
    """Return whether the board is drawn wide enough for a dimension line with words."""
    room = board.width * upscale
    return bool(board.width_shown) and text_width(board.width_shown, 11) + 6 <= room


def _name(board: BoardPicture) -> str:
    like = say(" ({count} boards cut alike)", count=board.like_this) if board.like_this > 1 else ""
    return board.name + like


def _size(board: BoardPicture, upscale: float) -> str:
    """Return the board's size, with its width where no dimension line has room for it."""
    if board.width_shown and not width_fits(board, upscale) and board.width_shown not in board.size:
        return f"{board.size} × {board.width_shown}"
    return board.size


def _after_name(board: BoardPicture) -> float:
    return LEFT + text_width(_name(board), TITLE, bold=True) + 10


def is_folded(board: BoardPicture, upscale: float, width: float) -> bool:
    """Return whether the size stands below the name: beside it, it would run into the word for the grain."""
    grain = text_width(say("grain"), SMALL) + 72 if board.has_grain else 0.0
    return _after_name(board) + text_width(_size(board, upscale), LABEL) + grain > width - LEFT


def heading(board: BoardPicture, upscale: float, width: float) -> list[Shape]:
    """Return the name, the size and the way of the grain."""
    folded = is_folded(board, upscale, width)
    x, y = (LEFT, 15 + HEADING) if folded else (_after_name(board), 15.0)
    shapes: list[Shape] = [
        Text(LEFT, 15, _name(board), TITLE, look="ink strong"),
        Text(x, y, _size(board, upscale), LABEL, look="soft"),
    ]
    if board.has_grain:
        level = y - 4
        shapes += [
            Text(width - 62, y, say("grain"), SMALL, "end", "soft"),
            arrow(width - 40, level, width - 10, level, head=6, look="edge"),
            arrow(width - 28, level, width - 58, level, head=6, look="edge"),
        ]
    return shapes
