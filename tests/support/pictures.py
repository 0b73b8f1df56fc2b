"""Photos for tests."""

from __future__ import annotations

import io

from PIL import Image


def picture(width: int, height: int, kind: str = "JPEG", **how) -> bytes:
    """Return a picture, red at its top left and blue elsewhere."""
    image = Image.new("RGB", (width, height), "blue")
    image.paste("red", (0, 0, width // 2, height // 2))
    out = io.BytesIO()
    image.save(out, kind, **how)
    return out.getvalue()
