"""A small site with a blog, as others read it: posts, feed, sitemap, pictures of links."""

from __future__ import annotations

import re
from html import unescape
from pathlib import Path

from PIL import Image

from tests.support.catalogs import BENCH, LEAN, hostile_plan, write_site

URL = "https://yard.example.org/"
BLOG = """\
markdown_extensions: [attr_list]
copyright: "Plans &amp; words: <b>free</b>"
"""
POST = """\
---
date: 2026-11-10
categories: [Plans]
description: A stool, & why "it" <stands>.
---

# A stool for the *quay*

The first words.

<!-- more -->

[Quay stool](../../plans/stool/index.md){ .plan-card }

[Quay stool](../../plans/stool/index.md){ .plan-materials }

See [the plan](../../plans/stool/index.md) and ![a rule](rule.png).
"""
MOVED = BENCH.replace("room: entry", "room: entry\nformerly: [wet-stool]")


def write_blog(folder: Path, *, options: str = LEAN, settings: str = BLOG, post: str = POST) -> Path:
    """Write a small site with a blog of two posts below a folder."""
    site = write_site(folder, stool=MOVED, evil=hostile_plan(), settings=settings, options=options)
    written = (site / "mkdocs.yml").read_text("utf-8")
    blog = '{blog: {post_url_format: "{slug}", archive: false}}'
    (site / "mkdocs.yml").write_text(
        written.replace("plugins: [search,", f"plugins: [search, {blog},"), "utf-8"
    )
    posts = site / "docs" / "blog" / "posts"
    posts.mkdir(parents=True)
    (site / "docs" / "blog" / "index.md").write_text("# Blog\n\n[Feed](../feed.xml)\n", "utf-8")
    (posts / "stool.md").write_text(post, "utf-8")
    dates = "{created: 2025-01-02, updated: 2026-11-11T10:30:00+02:00}"
    (posts / "older.md").write_text(f"---\ndate: {dates}\n---\n\n# Older\n\nWords.\n", "utf-8")
    Image.new("RGB", (4, 4)).save(posts / "rule.png")
    return site


def read(published: Path, path: str) -> str:
    """Return a page of the site."""
    return (published / path).read_text("utf-8")


def meta(page: str) -> dict[str, str]:
    """Return what a page's head tells of it, by property."""
    pairs = re.findall(r'<meta (?:property|name)="((?:og|twitter):[^"]+)" content="([^"]*)"', page)
    assert len(dict(pairs)) == len(pairs)
    return {name: unescape(content) for name, content in pairs}
