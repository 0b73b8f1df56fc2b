"""Readers can see what every plan is asked, and calculators lead to the questions that use them."""

from __future__ import annotations

import re

from scantling.calculators import SLUGS, calculator
from scantling.checks import CHECKS
from scantling.pages import Choices, make_pages
from scantling.source import read_catalog
from tests.support.catalogs import write_catalog


def pages(tmp_path) -> dict[str, str]:
    """Return the pages of a small catalog by path."""
    return {
        page.path: page.markdown
        for page in make_pages(read_catalog(write_catalog(tmp_path)), Choices()).pages
    }


def test_every_check_is_told(tmp_path):
    """Each check's question stands on the page, at an address of its own."""
    told = pages(tmp_path)["checks/index.md"]

    assert re.findall(r'id="([a-z-]+)"', told) == sorted(
        (check.name for check in CHECKS), key=lambda name: told.index(f'id="{name}"')
    )
    assert {check.name for check in CHECKS} == set(re.findall(r'id="([a-z-]+)"', told))


def test_calculators_link_to_the_questions_that_use_them(tmp_path):
    """Every check that a calculator names is linked, and is there."""
    told = pages(tmp_path)
    named = {name for slug in SLUGS for name in calculator(slug).checks}

    assert named <= {check.name for check in CHECKS}
    for slug in SLUGS:
        for name in calculator(slug).checks:
            assert f'href="../../checks/#{name}"' in told[f"calculators/{slug}/index.md"]
