"""The project's own site, built once for all tests that look at it."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.serving import Serving
from tests.support.live_page import fresh_pages


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


@pytest.fixture(scope="module")
def home(site, serve_folder) -> Serving:
    """Return the site as a host serves it that many sites share: below a path, with no special headers."""
    return serve_folder(site, under="shop/by-the-harbour")


@pytest.fixture
def fresh(browser):
    """Return a function that opens a page in a context of its own; no page may log an error."""
    with fresh_pages(browser) as open_page:
        yield open_page
