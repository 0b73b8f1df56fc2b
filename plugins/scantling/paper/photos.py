"""An author's photo made fit to print: small enough, and without what the camera wrote into it."""

from __future__ import annotations

import io
import warnings

from PIL import Image, ImageOps, UnidentifiedImageError

MOST_PIXELS = 60_000_000
"""A picture with more is not opened: it is a mistake or an attack."""
LONGEST_SIDE = 1400
"""Pixels on the longer side in print: about 200 dots an inch over a page's width."""
QUALITY = 82


def printable(content: bytes) -> bytes | None:
    """Return the picture as a small JPEG without location or camera data, or None if it is none."""
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error", Image.DecompressionBombWarning)
            with Image.open(io.BytesIO(content)) as picture:
                if picture.width * picture.height > MOST_PIXELS:
                    return None
                upright = ImageOps.exif_transpose(picture).convert("RGB")
                upright.thumbnail((LONGEST_SIDE, LONGEST_SIDE))
                out = io.BytesIO()
                upright.save(out, "JPEG", quality=QUALITY, optimize=True)
                return out.getvalue()
    except (
        UnidentifiedImageError,
        OSError,
        ValueError,
        Image.DecompressionBombError,
        Image.DecompressionBombWarning,
    ):
        return None
