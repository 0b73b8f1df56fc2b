"""The picture that a link to a page shows elsewhere: 1200 by 630 dots, as the protocol's users expect it.

It is drawn here, offline and the same bytes each time, in the colours of the notebook look by day.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from io import BytesIO

from PIL import Image, ImageDraw, ImageOps

from scantling.pages.lettering import fitted, put

WIDTH, HEIGHT = 1200, 630
_PAGE, _GRID, _SHEET, _LINE = "#f6f0e2", "#efe7d4", "#fbf7ee", "#cdbf9f"
_INK, _SOFT, _ACCENT = "#33302b", "#625c52", "#a63a22"
_EDGE, _SQUARE = 56, 30
_PICTURE = (640, 56, 1144, 574)
"""Where the picture lies: left, top, right, bottom."""
_MOST_COLOURS = 64
PICTURE_WIDTH = 504
"""Dots that a picture need be wide."""


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
        picture: of the piece; without one the words take the whole width.
        is_photo: whether it is a photo, which lies on no paper.
    """
    image = _paper().copy()
    draw = ImageDraw.Draw(image)
    _write(draw, card, (_PICTURE[0] if picture else WIDTH) - 2 * _EDGE)
    if picture is not None:
        place = _place_photo if is_photo else _place_drawing
        place(image, picture)
    made = BytesIO()
    if is_photo:
        image.save(made, "JPEG", quality=82, optimize=True)
    else:
        flat = image.quantize(_MOST_COLOURS, method=Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE)
        flat.save(made, "PNG", compress_level=7)
    return made.getvalue()


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


def _place_drawing(image: Image.Image, drawing: Image.Image) -> None:
    """Put a drawing on a sheet of paper, with room around it."""
    left, top, right, bottom = _PICTURE
    ImageDraw.Draw(image).rectangle(_PICTURE, fill=_SHEET, outline=_LINE, width=2)
    margin = 26
    size = right - left - 2 * margin, bottom - top - 2 * margin
    whole = ImageOps.contain(drawing, size)
    x, y = left + margin + (size[0] - whole.width) // 2, top + margin + (size[1] - whole.height) // 2
    image.paste(whole, (x, y), whole if whole.mode == "RGBA" else None)
