"""What a new catalog begins with besides its plan: a site with a blog, and how to publish it."""

from __future__ import annotations

from datetime import date
from importlib.metadata import PackageNotFoundError, version

SETTINGS = """\
site_name: NAME
# The address at which the site will be read. Printed plans lead back to it, and the feed takes it.
# site_url: https://plans.example.org/
theme:
  name: material
  font: false
plugins:
  - search
  - blog:
      archive: false
  - scantling
markdown_extensions:
  - attr_list
nav:
  - Home: index.md
  - Plans: plans/index.md
  - Blog:
      - blog/index.md
"""

HOME = """\
# NAME

Plans for things to build. [See them all](plans/index.md), or read [what we write about them](blog/index.md).
"""

BLOG = """\
---
title: Blog
hide: [navigation, toc]
---

# Blog

What was built, and what was learned.
"""

_POST = """\
---
date: DAY
description: A first post, with a plan in it.
---

# The bench is cleared

There are plans on this site now, and this is the first post beside them.

<!-- more -->

The first is a crate. Below is its card, which follows the plan whatever becomes of its prices:

[First crate](../../plans/first-crate/index.md){ .plan-card }
"""

WORKFLOW = """\
# Checks the plans and publishes the site whenever the main branch changes.
name: Publish the plans
on:
  push:
    branches: [main]
permissions:
  contents: read
  pages: write
  id-token: write
concurrency: publish
jobs:
  site:
    runs-on: ubuntu-latest
    environment: github-pages
    steps:
      - uses: actions/checkout@v4
      - uses: actions/setup-python@v5
        with: {python-version: "3.12", cache: pip}
      - uses: actions/cache@v4
        with:
          path: .cache
          key: plans-${{ github.sha }}
          restore-keys: plans-
      - run: pip install -r requirements.txt
      - run: scantling check --sweep --format github
      - run: mkdocs build --strict
      - uses: actions/upload-pages-artifact@v3
        with: {path: site}
      - uses: actions/deploy-pages@v4
"""

IGNORED = """\
/.cache/
/site/
"""

_REQUIREMENTS = """\
# What builds this site. With the same versions the same plans give the same site.
# scantling itself lies in wheels/; put it there: pip wheel --no-deps --wheel-dir wheels PATH-TO-SCANTLING
./wheels/scantling-VERSION-py3-none-any.whl
"""
_PINNED = ("mkdocs", "mkdocs-material", "pillow", "typst", "matplotlib")
"""What shows in the bytes of a site."""


def first_post(day: date) -> str:
    """Return a post of that day, with the first plan in it."""
    return _POST.replace("DAY", day.isoformat())


def requirements() -> str:
    """Return the versions that are installed here, as `pip` reads them."""
    pinned = "".join(f"{name}=={found}\n" for name in _PINNED if (found := _version(name)))
    return _REQUIREMENTS.replace("VERSION", _version("scantling")) + pinned


def _version(name: str) -> str:
    try:
        return version(name)
    except PackageNotFoundError:
        return ""
