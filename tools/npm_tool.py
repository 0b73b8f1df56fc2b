"""Get a tool of the developers' from npm, pinned, once, into the user's cache."""

from __future__ import annotations

import subprocess
import tempfile
from dataclasses import dataclass
from pathlib import Path

from scantling.pages.live.runtime import Node, cache_folder


@dataclass(frozen=True)
class NpmTool:
    """A package with a script in it that Node.js runs."""

    name: str
    version: str
    script: str
    """Below the package's folder."""

    def fetch(self) -> Path:
        """Return its script, fetched if it is not there; no script of any package is run on the way."""
        folder = cache_folder() / f"{self.name}-{self.version}"
        if not folder.is_dir():
            print(f"set-up: fetching {self.name} {self.version} (once)", flush=True)
            folder.parent.mkdir(parents=True, exist_ok=True)
            with tempfile.TemporaryDirectory(dir=folder.parent, prefix="fetching-") as aside:
                made = Path(aside) / "made"
                made.mkdir()
                quiet = ("--ignore-scripts", "--no-audit", "--no-fund", "--silent", "--prefer-offline")
                asked = ["install", "--prefix", str(made), f"{self.name}@{self.version}", *quiet]
                subprocess.run([*Node.find().npm, *asked], check=True)
                made.rename(folder)
        return folder / "node_modules" / self.name / self.script

    def command(self) -> list[str]:
        """Return what starts it."""
        return [Node.find().node, str(self.fetch())]
