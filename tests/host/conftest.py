"""The small site with a blog, built once for all tests that read what is published."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from tests.host.test_build import build
from tests.support.blog import POST, write_blog
from tests.support.catalogs import LEAN


@pytest.fixture(scope="session")
def published(once) -> Path:
    """Return a small site with two plans and two posts, built strictly."""
    return once("published", _built(write_blog)) / "site"


@pytest.fixture(scope="session")
def plain(once) -> Path:
    """Return the site with what can be left out left out, and a post that is shown whole in the list."""
    return once("plain", _built(_write_plain)) / "site"


def _built(write: Callable[[Path], Path]) -> Callable[[Path], None]:
    def make(folder: Path) -> None:
        done = build(write(folder))
        assert done.returncode == 0, done.stdout + done.stderr

    return make


def _write_plain(folder: Path) -> Path:
    options = f"{LEAN}, feed: false, link_cards: false, style: false"
    post = POST.replace("<!-- more -->", "").replace("categories:", "image: blog/rule.png\ncategories:")
    site = write_blog(folder, options=options, post=post)
    (site / "docs" / "blog" / "index.md").write_text("# Blog\n", "utf-8")
    return site
