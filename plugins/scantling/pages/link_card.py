"""The picture that a link to a page shows elsewhere: 1200 by 630 dots, as the protocol's users expect it.

It is drawn here, offline and the same bytes each time, in the colours of the notebook look by day.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from io import BytesIO

from PIL import Image, ImageDraw, ImageOps

from scantling.pages.lettering import face, fitted, height, put

WIDTH, HEIGHT = 1200, 630
_PAGE, _GRID, _SHEET, _LINE = "#f6f0e2", "#efe7d4", "#fbf7ee", "#cdbf9f"
_INK, _SOFT, _ACCENT = "#33302b", "#625c52", "#a63a22"
_EDGE, _SQUARE = 56, 30
_PICTURE = (640, 56, 1144, 574)
"""Where the picture lies: left, top, right, bottom."""
_BELOW = (56, 304, 1144, 574)
"""Where a wide drawing lies instead, below words that take one line each."""
_FULL = WIDTH - 2 * _EDGE
_MARGIN = 26
_MOST_COLOURS = 64
_SIDES = re.compile(rb'viewBox="0 0 ([\d.]+) ([\d.]+)"')
PICTURE_WIDTH = _BELOW[2] - _BELOW[0] - 2 * _MARGIN
"""Dots that a picture need be wide."""

_Place = tuple[int, int, int, int]


@dataclass(frozen=True, slots=True)
class LinkCard:
    """What a card says."""

    title: str
    site: str
    """What the site is called."""
    facts: tuple[str, ...] = ()
    """A few lines below the title."""


def draw_card(card: LinkCard, picture: Image.Image | None = None, *, is_photo: bool = False) -> bytes:
    """Return a card as a PNG, or as a JPEG where it shows a photo.

    Args:
        picture: of the piece; without one the words take the whole card.
        is_photo: whether it is a photo, which lies on no paper.
    """
    image = _paper().copy()
    draw = ImageDraw.Draw(image)
    if picture is None:
        _write_large(draw, card)
    elif is_photo:
        _write(draw, card, _PICTURE[0] - 2 * _EDGE)
        _place_photo(image, picture)
    else:
        place = _place_of(card, *picture.size)
        _write(draw, card, _FULL if place is _BELOW else _PICTURE[0] - 2 * _EDGE)
        _place_drawing(image, picture, place)
    made = BytesIO()
    if is_photo:
        image.save(made, "JPEG", quality=82, optimize=True)
    else:
        flat = image.quantize(_MOST_COLOURS, method=Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE)
        flat.save(made, "PNG", compress_level=7)
    return made.getvalue()


def draw_card_with(card: LinkCard, svg: bytes) -> bytes:
    """Return a card as a PNG, with a drawing."""
    from scantling.pages.raster import dots  # noqa: PLC0415 - a preview starts without what makes dots

    found = _SIDES.search(svg)
    assert found is not None
    width, height = float(found[1]), float(found[2])
    scale = _scale(width, height, _place_of(card, width, height))
    return draw_card(card, dots(svg, round(width * scale)))


@cache
def _paper() -> Image.Image:
    """Return squared paper with a ruler's edge below."""
    image = Image.new("RGB", (WIDTH, HEIGHT), _PAGE)
    draw = ImageDraw.Draw(image)
    for x in range(_SQUARE, WIDTH, _SQUARE):
        draw.line((x, 0, x, HEIGHT), fill=_GRID)
    for y in range(_SQUARE, HEIGHT, _SQUARE):
        draw.line((0, y, WIDTH, y), fill=_GRID)
    draw.rectangle((0, HEIGHT - 14, WIDTH, HEIGHT), fill=_ACCENT)
    for number, x in enumerate(range(0, WIDTH, 15)):
        draw.line((x, HEIGHT - (14 if number % 4 == 0 else 8), x, HEIGHT), fill=_PAGE, width=2)
    return image


def _place_of(card: LinkCard, width: float, height: float) -> _Place:
    """Return where a drawing is seen larger: beside the words, or below those that are short."""
    lines = ((card.title, "head", 84), *((fact, "text", 34) for fact in card.facts))
    if len(card.facts) > 1 or any(_is_long(*line) for line in lines):
        return _PICTURE
    return max((_PICTURE, _BELOW), key=lambda place: _scale(width, height, place))


def _is_long(words: str, name: str, size: int) -> bool:
    return face(name, size, words).getlength(words) > _FULL


def _scale(width: float, height: float, place: _Place) -> float:
    left, top, right, bottom = place
    return min((right - left - 2 * _MARGIN) / width, (bottom - top - 2 * _MARGIN) / height)


def _write_large(draw: ImageDraw.ImageDraw, card: LinkCard) -> None:
    """Write words that have the card to themselves: the site above, the rest large at its foot."""
    font, set_ = fitted(card.site, "strong", (36, 30), _FULL, 1)
    put(draw, (_EDGE, _EDGE), set_, font, _ACCENT)
    title, titled = fitted(card.title, "head", (128, 112, 98, 84, 72), _FULL, 3)
    told = [fitted(fact, "text", (44, 38, 34), _FULL, 3) for fact in card.facts[:2]]
    high = height(titled, title) + sum(height(words, font) + 8 for font, words in told) + 24
    y = put(draw, (_EDGE, HEIGHT - 14 - 44 - high), titled, title, _INK) + 24
    for font, words in told:
        y = put(draw, (_EDGE, y), words, font, _SOFT) + 8


def _write(draw: ImageDraw.ImageDraw, card: LinkCard, width: int) -> None:
    font, set_ = fitted(card.site, "strong", (30, 26), width, 1)
    y = put(draw, (_EDGE, _EDGE), set_, font, _ACCENT) + 26
    font, set_ = fitted(card.title, "head", (84, 72, 62, 54), width, 4)
    y = put(draw, (_EDGE, y), set_, font, _INK) + 24
    for number, fact in enumerate(card.facts):
        first = "strong" if number == 0 and len(card.facts) > 1 else "text"
        font, set_ = fitted(fact, first, (34, 30), width, 4 if len(card.facts) == 1 else 2)
        if y + len(set_) * font.size > HEIGHT - _EDGE:
            break
        y = put(draw, (_EDGE, y), set_, font, _INK if first == "strong" else _SOFT) + 8


def _place_photo(image: Image.Image, photo: Image.Image) -> None:
    """Put a photo whole, in a frame of its own shape: what is cut off might be the piece."""
    left, top, right, bottom = _PICTURE
    whole = ImageOps.contain(photo.convert("RGB"), (right - left - 3, bottom - top - 3))
    x, y = (left + right - whole.width) // 2, (top + bottom - whole.height) // 2
    frame = (x - 2, y - 2, x + whole.width + 1, y + whole.height + 1)
    ImageDraw.Draw(image).rectangle(frame, outline=_LINE, width=2)
    image.paste(whole, (x, y))


def _place_drawing(image: Image.Image, drawing: Image.Image, place: _Place) -> None:
    """Put a drawing on a sheet of paper, with room around it."""
    left, top, right, bottom = place
    ImageDraw.Draw(image).rectangle(place, fill=_SHEET, outline=_LINE, width=2)
    size = right - left - 2 * _MARGIN, bottom - top - 2 * _MARGIN
    whole = ImageOps.contain(drawing, size)
    x, y = left + _MARGIN + (size[0] - whole.width) // 2, top + _MARGIN + (size[1] - whole.height) // 2
    image.paste(whole, (x, y), whole if whole.mode == "RGBA" else None)
