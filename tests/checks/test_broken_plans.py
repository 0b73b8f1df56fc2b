"""Every fault put into a demonstration plan is found, named right, at its line and column."""

from __future__ import annotations

import random
from collections.abc import Iterator

import pytest

from tests.checks.breaking import WAYS, Broken
from tests.checks.demo import SLUGS, found_in, read, sizes_of, text_of

SEED = 20261109
OF_EACH = 1
"""How many of one way of breaking a plan are tried of each plan."""


def broken_plans(slug: str) -> Iterator[Broken]:
    """Yield a seeded choice of the ways to break one plan."""
    chance = random.Random(f"{SEED} {slug}")
    for way in WAYS:
        every = list(way(text_of(slug), sizes_of(slug)))
        yield from chance.sample(every, min(OF_EACH, len(every)))


@pytest.mark.parametrize("slug", SLUGS)
def test_every_fault_is_found_at_its_place(slug, tmp_path):
    """Of the broken copies of each plan that can still be read, none passes the checks."""
    missed, unread = [], []
    for one in broken_plans(slug):
        source = read(one.text, tmp_path, slug)
        if source.fitter is None:
            unread.append(one.how)  # reading it tells what is wrong already
            continue
        found = [
            (each.code, each.spot.line, each.spot.column) for each in found_in(source, sweeping=one.sweeping)
        ]
        if (one.code, one.line, one.column) not in found:
            missed.append((one.how, (one.code, one.line, one.column), found))

    assert missed == []
    assert len(unread) <= 2


def test_there_are_enough_of_them():
    """The choice holds at least 120 broken plans, and nearly every check is asked for in some of them."""
    every = [one for slug in SLUGS for one in broken_plans(slug)]

    assert len(every) >= 120
    assert len({one.code for one in every}) >= 25
