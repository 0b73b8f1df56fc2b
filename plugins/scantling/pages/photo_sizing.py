"""Making an author's photo fit for the web: a few widths, upright, without location or camera data."""

from __future__ import annotations

import io
import warnings
from collections.abc import Iterator
from contextlib import contextmanager

from PIL import Image, ImageCms, ImageOps, UnidentifiedImageError

from scantling.pages.photo import PhotoSize, sized_file

WIDTHS = (480, 960, 1600)
"""For phones, for most pages, and for large or fine screens."""
MOST_PIXELS = 80_000_000
"""A picture with more is not opened: it is a mistake or an attack."""
QUALITY = {"jpg": 80, "webp": 78}
_FORMATS = {"png": "PNG", "webp": "WEBP", "gif": "GIF"}
_SIDEWAYS = range(5, 9)
"""Values of EXIF's orientation (tag 274) that turn a picture by a quarter (Exif 2.32, 4.6.4 A)."""
_ORIENTATION = 274


class NoPhotoError(Exception):
    """What is in the file is no picture that can be shown; its words say why."""


def photo_size(content: bytes) -> PhotoSize:
    """Return the widths that are made of a photo, reading no more than its head.

    Raises:
        NoPhotoError: where it is none.
    """
    with _opened(content) as picture:
        width, height = picture.size
        if picture.getexif().get(_ORIENTATION) in _SIDEWAYS:
            width, height = height, width
        return _size(width, height)


def _size(width: int, height: int) -> PhotoSize:
    widest = min(width, WIDTHS[-1])
    widths = (*(step for step in WIDTHS if step < widest), widest)
    return PhotoSize(widest, _height(width, height, widest), widths)


def _height(width: int, height: int, narrow: int) -> int:
    return max(1, (height * narrow * 2 + width) // (width * 2))


def sized(file: str, content: bytes) -> dict[str, bytes]:
    """Return the files that are made of a photo, by their names below the plan's folder.

    Raises:
        NoPhotoError: where it is none.
    """
    with _opened(content) as picture:
        picture.draft(
            "RGB", (WIDTHS[-1] * 2, WIDTHS[-1] * 2)
        )  # a large JPEG is read at a fraction of its size
        upright = _in_plain_colours(ImageOps.exif_transpose(picture))
        size = photo_size(content)
        files = {file: _written(_scaled(upright, size.width, size.height), _kind(file))}
        for width in size.widths:
            small = _scaled(upright, width, _height(size.width, size.height, width))
            for kind in QUALITY:
                files[sized_file(file, width, kind)] = _written(small, kind)
        return files


@contextmanager
def _opened(content: bytes) -> Iterator[Image.Image]:
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore", Image.DecompressionBombWarning)
            with Image.open(io.BytesIO(content)) as picture:
                if picture.width * picture.height > MOST_PIXELS:
                    millions = picture.width * picture.height // 1_000_000
                    raise NoPhotoError(f"has {millions} million pixels, more than can be made small here")
                yield picture
    except Image.DecompressionBombError as error:
        raise NoPhotoError("has more pixels than can be made small here") from error
    except (UnidentifiedImageError, OSError, ValueError, SyntaxError) as error:
        raise NoPhotoError("is no picture that can be read, or is cut short") from error


def _in_plain_colours(picture: Image.Image) -> Image.Image:
    """Return the picture in red, green and blue as screens expect them, on white where it is transparent."""
    profile = picture.info.get("icc_profile")
    if picture.mode in {"P", "PA", "LA", "RGBA"}:
        layered = picture.convert("RGBA")
        white = Image.new("RGBA", layered.size, "white")
        picture = Image.alpha_composite(white, layered)
    plain = picture if picture.mode in {"RGB", "CMYK"} else picture.convert("RGB")
    if profile:
        try:
            own = ImageCms.ImageCmsProfile(io.BytesIO(profile))
            turned = ImageCms.profileToProfile(plain, own, ImageCms.createProfile("sRGB"), outputMode="RGB")
        except (ImageCms.PyCMSError, OSError):
            turned = None  # a profile that does not fit the picture says nothing of its colours
        plain = turned or plain
    return plain.convert("RGB")


def _scaled(picture: Image.Image, width: int, height: int) -> Image.Image:
    return picture.resize((width, height), Image.Resampling.LANCZOS, reducing_gap=3.0)


def _kind(file: str) -> str:
    ending = file.rpartition(".")[2].lower()
    return ending if ending in _FORMATS else "jpg"


def _written(picture: Image.Image, kind: str) -> bytes:
    """Return the picture as a file that holds nothing but it."""
    clean = Image.new("RGB", picture.size)
    clean.paste(picture)
    out = io.BytesIO()
    if kind == "jpg":
        clean.save(out, "JPEG", quality=QUALITY["jpg"], optimize=True, progressive=True)
    elif kind == "webp":
        clean.save(out, "WEBP", quality=QUALITY["webp"], method=4)
    else:
        clean.save(out, _FORMATS[kind], optimize=True)
    return out.getvalue()
