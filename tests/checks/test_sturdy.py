"""Whatever an author leaves out, the checks answer."""

from __future__ import annotations

import random

import pytest

from tests.checks.demo import SLUGS, found_in, read, text_of

LINES = 12
"""How many lines of each plan are left out, one at a time."""


@pytest.mark.parametrize("slug", SLUGS)
def test_a_lost_line_breaks_no_check(slug, tmp_path):
    """A plan from which one line is gone is read or refused, and if it is read, every check answers."""
    lines = text_of(slug).text.split("\n")
    for gone in random.Random(slug).sample(range(1, len(lines)), LINES):
        source = read("\n".join(lines[:gone] + lines[gone + 1 :]), tmp_path, slug)
        if source.fitter is not None:
            for one in found_in(source):
                assert one.message
                assert one.spot.line >= 1
