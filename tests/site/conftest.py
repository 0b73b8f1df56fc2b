"""The project's own site, built once for all tests that look at it."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.serving import Serving


@pytest.fixture(scope="session")
def site(once, root) -> Path:
    """Return the folder of the demo site, built strictly."""

    def make(folder: Path) -> None:
        command = [sys.executable, "-m", "mkdocs", "build", "--strict", "--site-dir", str(folder / "site")]
        told = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
        done = subprocess.run(command, cwd=root, env=told, capture_output=True, text=True, check=False)
        assert done.returncode == 0, done.stdout + done.stderr

    return once("demo-site", make) / "site"


@pytest.fixture(scope="session")
def served(site, serve_folder) -> Serving:
    """Return the demo site on a web server."""
    return serve_folder(site)
