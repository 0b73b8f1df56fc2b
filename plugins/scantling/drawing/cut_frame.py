"""Where a board lies on the page of its cut diagram, and at what scale."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.drawing.board_picture import BoardPicture, OffcutPicture, PiecePicture
from scantling.drawing.cut_heading import is_folded
from scantling.drawing.cut_measures import CIRCLE, HEADING, KEY, LEFT
from scantling.drawing.lettering import text_width, wrap

_RIGHT = 26.0
_LOWEST_STRIP, _HIGHEST = 26.0, 150.0
"""A strip gets at least so much height, if the whole board then stays below the other."""


@dataclass(frozen=True, slots=True)
class Frame:
    """The board's place on the page."""

    left: float
    top: float
    scale: float
    """Page units for each unit of the board's length."""
    upscale: float
    """Page units for each unit of its width."""
    width: float
    """How wide the page is."""
    face: float
    """How wide letters run, as a share of the widest face in common use."""

    def wide(self, words: str, size: float, *, bold: bool = False) -> float:
        """Return about how wide words of a size are."""
        return text_width(words, size, bold=bold) * self.face

    def x(self, value: float) -> float:
        """Return where a place along the board lies on the page."""
        return self.left + value * self.scale

    def y(self, value: float) -> float:
        """Return where a place across it lies."""
        return self.top + value * self.upscale

    def lines(self, words: str, indent: float = 0.0) -> list[str]:
        """Return the lines in which words stand below the board."""
        return wrap(words, KEY * self.face, self.width - 2 * LEFT - indent)

    def box(self, thing: PiecePicture | OffcutPicture) -> tuple[float, float, float, float]:
        """Return the left and upper end of something on the board, its length and its height."""
        return self.x(thing.x), self.y(thing.y), thing.length * self.scale, thing.width * self.upscale


def frame_of(board: BoardPicture, width: float, face: float) -> Frame:
    """Return the place of a board on a page so wide."""
    rips = any(cut.y1 == cut.y2 for cut in board.cuts)
    left = LEFT + (14.0 if rips else 0.0)
    right = _RIGHT if board.width_shown else LEFT
    scale = (width - left - right) / board.length
    thinnest = min([board.width, *(piece.width for piece in board.pieces)])
    wanted = min(_LOWEST_STRIP / thinnest, _HIGHEST / board.width)
    crossed = any(cut.x1 == cut.x2 for cut in board.cuts)
    upscale = max(scale, wanted)
    folded = HEADING if is_folded(board, upscale, width) else 0.0
    return Frame(left, 26.0 + folded + (CIRCLE + 6 if crossed else 0), scale, upscale, width, face)
