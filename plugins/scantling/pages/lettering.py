"""Setting words on a picture, in the faces of the notebook look."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

from PIL import ImageDraw, ImageFont

from scantling.measure import NO_BREAK_SPACE
from scantling.pages.spare_fonts import font_folder
from scantling.pages.theme import THEME

_FACES = {
    "head": ("rokkitt.woff2", "Bold", "DejaVuSerif-Bold.ttf"),
    "text": ("cabin.woff2", "Regular", "DejaVuSans.ttf"),
    "strong": ("cabin.woff2", "SemiBold", "DejaVuSans-Bold.ttf"),
}
"""For each face its file, its weight, and the face that is taken where it lacks a letter."""
_ROOM = re.compile(r"[ \t\n]+")
"""Where a line may end: not at a space that holds words together."""
_BEYOND_LATIN = frozenset("–—‘’“”…•€−×")
"""Further letters that the faces have."""


def face(name: str, size: int, words: str) -> ImageFont.FreeTypeFont:
    """Return a face that has all letters of some words, as far as any that we have does."""
    return _face(name, size, all(ord(sign) < 0x100 or sign in _BEYOND_LATIN for sign in words))


@cache
def _face(name: str, size: int, is_own: bool) -> ImageFont.FreeTypeFont:  # noqa: FBT001 - a key of the cache
    file, weight, other = _FACES[name]
    if not is_own:
        return ImageFont.truetype(font_folder() / other, round(size * 0.85))
    path = THEME / "assets" / "scantling" / "fonts" / file
    font = ImageFont.truetype(path, size, layout_engine=ImageFont.Layout.BASIC)
    font.set_variation_by_name(weight)
    return font


def lines(words: str, font: ImageFont.FreeTypeFont, width: int) -> list[str]:
    """Return words as lines that are no wider than so many dots; a longer word is broken."""
    made: list[str] = []
    for word in _pieces(words, font, width):
        longer = f"{made[-1]} {word}" if made else word
        if made and font.getlength(longer) <= width:
            made[-1] = longer
        else:
            made.append(word)
    return made


def _pieces(words: str, font: ImageFont.FreeTypeFont, width: int) -> Iterator[str]:
    for held in _ROOM.split(words.strip()):
        word = held.replace(NO_BREAK_SPACE, " ")
        while font.getlength(word) > width:
            counts = range(len(word) - 1, 0, -1)
            fits = next((count for count in counts if font.getlength(word[:count]) <= width), 1)
            yield word[:fits]
            word = word[fits:]
        yield word


def fitted(
    words: str, name: str, sizes: tuple[int, ...], width: int, most: int
) -> tuple[ImageFont.FreeTypeFont, list[str]]:
    """Return the largest face in which words take no more than so many lines, and the lines.

    In the smallest what is too much is left out, with three dots in its place.
    """
    for size in sizes:
        font = face(name, size, words)
        set_ = lines(words, font, width)
        if len(set_) <= most:
            return font, set_
    while font.getlength(f"{set_[most - 1]}…") > width:
        set_[most - 1] = set_[most - 1].rpartition(" ")[0]
    return font, [*set_[: most - 1], f"{set_[most - 1]}…"]


def put(
    draw: ImageDraw.ImageDraw, at: tuple[int, int], set_: list[str], font: ImageFont.FreeTypeFont, ink: str
) -> int:
    """Write lines from a place downwards, and return how far down the next may stand."""
    x, y = at
    for line in set_:
        draw.text((x, y), line, font=font, fill=ink)
        y += _step(font)
    return y


def height(set_: list[str], font: ImageFont.FreeTypeFont) -> int:
    """Return how many dots down lines take."""
    return len(set_) * _step(font)


def _step(font: ImageFont.FreeTypeFont) -> int:
    return round(font.size * (1.02 if font.size > 50 else 1.16))
