"""Joinery details: a part's face with its grooves, dadoes, rabbets, notches and holes laid out."""

from __future__ import annotations

from scantling.drawing.arrow import numbered
from scantling.drawing.body import size_words
from scantling.drawing.detail_face import LEFT, Sheet, face_of, is_laid_out, wood
from scantling.drawing.detail_marks import first_distances, mark_at, marks_apart
from scantling.drawing.detail_words import end_words, work_words
from scantling.drawing.detail_work import DRAWN_BY
from scantling.drawing.dimension_line import across, upright
from scantling.drawing.lettering import wrap
from scantling.drawing.profile import has_profile, profile
from scantling.drawing.shape import Scene, Shape, Text
from scantling.measure import Display, local_marks
from scantling.plan import FittedPart, FittedWork
from scantling.words import say

_KEY = 11.0


def detail_drawing(
    part: FittedPart, display: Display, *, width: float = 440.0, face: float = 1.0
) -> Scene | None:
    """Return the detail of a part, or None for a part on which nothing that can be drawn is done.

    Args:
        face: how wide the letters run, as a share of the widest face in common use.
    """
    shown = [work for work in part.work if work.work.kind in DRAWN_BY and is_laid_out(work)]
    slanted = part.ends is not None and any(end.kind != "square" for end in part.ends)
    if not shown and not slanted:
        return None
    sheet = face_of(part, width)
    shapes: list[Shape] = [
        Text(LEFT, 15, f"{part.letter} {part.id}", 14, look="ink strong"),
        Text(LEFT, 30, size_words(part, display), 11, look="soft"),
        wood(sheet),
    ]
    for work in shown:
        shapes += DRAWN_BY[work.work.kind](sheet, work)
    wanted = [mark_at(sheet, work, number) for number, work in enumerate(shown, 1)]
    marks = marks_apart(wanted, sheet.left + sheet.length)
    shapes += [numbered(x, y, str(number), size=9.5) for number, (x, y) in enumerate(marks, 1)]
    y = sheet.top + sheet.width
    shapes.append(across(sheet.left, sheet.left + sheet.length, y + 14, display.length(part.length), to=y))
    right = sheet.left + sheet.length
    shapes.append(upright(sheet.top, y, right + 16, display.length(part.width), to=right))
    shapes += first_distances(sheet, shown, display)
    words = [(str(number), work_words(work, display)) for number, work in enumerate(shown, 1)]
    words += [("", work_words(work, display)) for work in part.work if not is_laid_out(work)]
    if slanted:
        words.append(("", say("ends: {how}", how=end_words(part))))
    more, y = _below(sheet, shown, words, y + 23, (width, face), display)
    told = f"{part.letter} {part.id}: " + "; ".join(text for _, text in words) + "."
    return Scene(width, y + 8, (*shapes, *more), say("{part}, joinery", part=part.id), told)


def _below(
    sheet: Sheet,
    works: list[FittedWork],
    words: list[tuple[str, str]],
    y: float,
    room: tuple[float, float],
    display: Display,
) -> tuple[list[Shape], float]:
    """Return the key, the profiles and the word about the scale, in a `room`: its width and the face's."""
    width, face = room
    shapes: list[Shape] = []
    for number, text in words:
        y += 17
        shapes += [numbered(LEFT + 8, y - 4, number, size=9)] if number else []
        for i, line in enumerate(wrap(text, _KEY * face, width - 2 * LEFT - 22)):
            y += 13 if i else 0
            shapes.append(Text(LEFT + 22, y, line, _KEY))
    shown = [(str(i), work) for i, work in enumerate(works, 1) if has_profile(work, sheet.part.thick)]
    distinct = {(work.work.kind, work.width, work.depth): (number, work) for number, work in reversed(shown)}
    x, apart = LEFT, min(140.0, max(122.0, (width - LEFT) / len(distinct or "1")))
    for number, work in list(distinct.values())[::-1][: 3 if width > 400 else 2]:
        shapes.append(profile(x, y + 16, number, work, sheet.part.thick, display))
        x += apart
    if distinct:
        y += 84
    if sheet.upscale > sheet.scale * 1.01:
        times = local_marks(f"{sheet.upscale / sheet.scale:.1f}".removesuffix(".0"))
        y += 16
        shapes.append(
            Text(
                LEFT,
                y,
                say("The width is drawn {times} times as large as the length.", times=times),
                10,
                look="soft",
            )
        )
    return shapes, y
