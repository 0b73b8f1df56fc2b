"""The accessibility library axe-core, fetched once by the ordinary package client and checked."""

from __future__ import annotations

import hashlib
import tarfile
import tempfile
from pathlib import Path

from scantling.pages.live.runtime import Node, NoRuntime, cache_folder

VERSION = "4.11.0"
SHA512 = (
    "8a561a9c453cbf1c417b1a4977c716338125490ab841cb422ca8a1d1349f8c87"
    "c24137b21ffeb356b98825f2cfaca4ca2516e21be71f9d96d02230252661758d"
)
"""Of the package as npm delivers it."""


def script() -> Path | None:
    """Return the library as one script for a page, or None where it cannot be had."""
    kept = cache_folder() / f"axe-core-{VERSION}.js"
    if kept.is_file():
        return kept
    kept.parent.mkdir(parents=True, exist_ok=True)
    try:
        with tempfile.TemporaryDirectory(dir=kept.parent) as workshop:
            Node.find().pack(f"axe-core@{VERSION}", Path(workshop))
            fresh = Path(workshop) / "axe.min.js"
            fresh.write_bytes(_taken_out(next(Path(workshop).glob("*.tgz"))))
            fresh.replace(kept)
    except NoRuntime as why:
        print(f"set-up: {why}", flush=True)
        return None
    return kept


def _taken_out(archive: Path) -> bytes:
    if hashlib.sha512(archive.read_bytes()).hexdigest() != SHA512:
        raise NoRuntime(f"the package axe-core {VERSION} that came is not the one that was tested")
    with tarfile.open(archive) as members:
        member = members.extractfile("package/axe.min.js")
        assert member is not None
        return member.read()
