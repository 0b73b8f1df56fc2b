"""Nothing is found in the demonstration plans, at any size that they advertise."""

from __future__ import annotations

import pytest

from scantling.source import render_full
from tests.checks.demo import SLUGS, found_in, read, text_of


@pytest.mark.parametrize("slug", SLUGS)
def test_no_check_raises_a_false_alarm(slug, tmp_path):
    """A sweep of a demonstration plan ends without a finding."""
    found = found_in(read(text_of(slug).text, tmp_path, slug), sweeping=True)

    assert render_full(found) == ""
