"""Get the validator of HTML that the tests hold the site to: html-validate, from npm, pinned.

python -m tools.validator      fetches it once into the user's cache
"""

from __future__ import annotations

import subprocess
import sys
import tempfile
from pathlib import Path

from scantling.pages.live.runtime import Node, cache_folder

VERSION = "10.17.0"
"""Newest that runs on Node.js 20."""


def home() -> Path:
    """Return the folder that it is in, or will be."""
    return cache_folder() / f"html-validate-{VERSION}"


def fetch() -> Path:
    """Return its script, fetched if it is not there; no script of any package is run on the way."""
    folder = home()
    if not folder.is_dir():
        print(f"set-up: fetching html-validate {VERSION} (once)", flush=True)
        folder.parent.mkdir(parents=True, exist_ok=True)
        with tempfile.TemporaryDirectory(dir=folder.parent, prefix="fetching-") as aside:
            made = Path(aside) / "made"
            made.mkdir()
            quiet = ("--ignore-scripts", "--no-audit", "--no-fund", "--silent", "--prefer-offline")
            asked = ["install", "--prefix", str(made), f"html-validate@{VERSION}", *quiet]
            subprocess.run([*Node.find().npm, *asked], check=True)
            made.rename(folder)
    return folder / "node_modules" / "html-validate" / "bin" / "html-validate.mjs"


if __name__ == "__main__":
    fetch()
    sys.exit(0)
