"""What shows a piece in three dimensions: got once by the ordinary package client, checked, kept.

It is three.js, from its package on npm, pinned and checked; of it only what draws, what reads the 3-D file
and what turns it by hand. A site without it shows the pictures alone.
"""

from __future__ import annotations

import hashlib
import tempfile
from collections.abc import Callable
from pathlib import Path

from scantling.pages.live.runtime import Node, NoRuntime, Runtime, cache_folder, put, unpack

THREE = "0.185.1"
SHA512 = (
    "e5aa231425cac278c1459bd49eddd615f11cbd426090de4b9628d114df7984cc"
    "bc595906e08d1035c244f8eb96bee2746ce752b6b6df5e7d2991debf43288096"
)
"""Of the package as npm delivers it: three-0.185.1.tgz."""
MADE = ("build/three.core.min.js", "build/three.module.min.js")
ADDED = (
    "examples/jsm/controls/OrbitControls.js",
    "examples/jsm/loaders/GLTFLoader.js",
    "examples/jsm/utils/BufferGeometryUtils.js",
    "examples/jsm/utils/SkeletonUtils.js",
)
"""Written for a tool that finds packages by name; a browser wants to be told where the files are."""
WHERE = {"'three'": "'./three.module.min.js'", "'../utils/": "'./"}
NOTICE = f"three.js {THREE}, https://threejs.org/, as published but for where imports lead; its licence:\n\n"


def find_viewer(cache: Path | None = None) -> Runtime | None:
    """Return what was kept before, or None."""
    digest = _digest()
    folder = (cache or cache_folder()) / f"viewer-{digest}"
    return Runtime(folder, digest) if (folder / "NOTICE.txt").is_file() else None


def get_viewer(cache: Path | None = None) -> Runtime:
    """Return the files of the viewer, after fetching them if need be.

    Raises:
        NoRuntime: where there is no package client or the package cannot be had.
    """
    cache = cache or cache_folder()
    found = find_viewer(cache)
    if found is not None:
        return found
    cache.mkdir(parents=True, exist_ok=True)
    digest = _digest()
    with tempfile.TemporaryDirectory(dir=cache, prefix="fetching-") as workshop:
        Node.find().pack(f"three@{THREE}", Path(workshop))
        out = Path(workshop) / "out"
        unpack(next(Path(workshop).glob("*.tgz")), SHA512, (*MADE, *ADDED, "LICENSE"), out)
        _finish(out)
        put(out, cache / f"viewer-{digest}")
    return Runtime(cache / f"viewer-{digest}", digest)


def ready_viewer(tell: Callable[[str], None]) -> str:
    """Return the digest of the viewer, after fetching it if need be; "" where it cannot be had.

    Args:
        tell: gets words for the author of the site, where there is something to know.
    """
    try:
        if find_viewer() is None:
            tell("fetching what turns a piece around in the reader's browser (once)")
        return get_viewer().digest
    except NoRuntime as why:
        tell(f"the site is built without pieces to turn around: {why}")
        return ""


def _finish(folder: Path) -> None:
    """Make imports lead to the files beside, and the licence a notice."""
    for name in ADDED:
        path = folder / name.rpartition("/")[2]
        text = path.read_text("utf-8")
        for package, file in WHERE.items():
            text = text.replace(f"from {package}", f"from {file}")
        path.write_text(text, "utf-8", newline="\n")
    licence = (folder / "LICENSE").read_text("utf-8")
    (folder / "LICENSE").unlink()
    (folder / "NOTICE.txt").write_text(NOTICE + licence, "utf-8", newline="\n")


def _digest() -> str:
    """Return a name for the viewer: of the package, and of what is done to it."""
    return hashlib.sha256(repr((SHA512, MADE, ADDED, WHERE, NOTICE)).encode()).hexdigest()[:16]
