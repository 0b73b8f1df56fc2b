"""Faces that have nearly every letter, for dots and paper: matplotlib brings them."""

from __future__ import annotations

from functools import cache
from pathlib import Path


@cache
def font_folder() -> Path:
    """Return the folder that they lie in."""
    import matplotlib as mpl  # noqa: PLC0415 - slow to load, and few builds need it

    return Path(mpl.get_data_path(), "fonts", "ttf")
