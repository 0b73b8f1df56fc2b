"""Cut diagrams: where each part lies on a board or sheet, and the cuts that free it, in order.

A board is drawn to scale along its length. Where it would come out too thin to be read, its width is
drawn at a larger scale, and the drawing says so.
"""

from __future__ import annotations

from scantling.drawing.board_picture import BoardPicture, PiecePicture
from scantling.drawing.cut_frame import frame_of
from scantling.drawing.cut_heading import heading, width_fits
from scantling.drawing.cut_labels import led_letters, letter_fits, piece_label
from scantling.drawing.cut_notes import cautions_of, notes_below
from scantling.drawing.cut_numbers import inner_spots, numbered_cuts
from scantling.drawing.cut_order import steps_told
from scantling.drawing.cut_wood import wood
from scantling.drawing.dimension_line import across, upright
from scantling.drawing.shape import Scene
from scantling.words import say


def cut_diagram(board: BoardPicture, *, width: float = 440.0, face: float = 1.0) -> Scene:
    """Return the diagram of one board or sheet, `width` page units wide.

    Args:
        face: how wide letters run, as a share of the widest face in common use.
    """
    frame = frame_of(board, width, face)
    board_height = board.width * frame.upscale
    bottom = frame.top + board_height
    shapes = [*heading(board, frame.upscale, width), *wood(board, frame), *numbered_cuts(board, frame)]
    spots = inner_spots(board, frame)
    unnamed: list[PiecePicture] = []
    for piece in board.pieces:
        label, whole = piece_label(piece, frame, spots)
        shapes.append(label)
        if not whole:
            unnamed.append(piece)
    led, y = led_letters([piece for piece in unnamed if not letter_fits(piece, frame)], frame, bottom, width)
    shapes += led
    if board.length_shown:
        y += 16
        shapes.append(across(frame.x(0), frame.x(board.length), y, board.length_shown, to=bottom))
    if width_fits(board, frame.upscale):
        shapes.append(upright(frame.top, bottom, width - 12, board.width_shown, to=frame.x(board.length)))
    notes, y = notes_below(board, frame, unnamed, y + 12)
    return Scene(width, y + 7, (*shapes, *notes), f"{board.name}, {board.size}", told(board))


def told(board: BoardPicture) -> str:
    """Return what a diagram shows, in words."""
    pieces = "; ".join(f"{piece.letter} {piece.name}, {piece.size}" for piece in board.pieces)
    kept = "; ".join(say("kept offcut, {size}", size=offcut.size) for offcut in board.offcuts)
    cuts = "; ".join(
        say("cut {number}: {setting}", number=number, setting=setting)
        for number, setting in steps_told(board.cuts)
    )
    cautions = "; ".join(f"{mark} {words}" for mark, words in cautions_of(board))
    first = say("From {board}, {size}: {pieces}", board=board.name, size=board.size, pieces=pieces)
    sentences = [first, kept, cuts, cautions]
    return ". ".join(sentence for sentence in sentences if sentence) + "."
