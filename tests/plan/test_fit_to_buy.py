"""What is bought for a plan is the same, fitted whole or for the purchase alone."""

from __future__ import annotations

from dataclasses import replace
from itertools import islice
from pathlib import Path

import pytest

from scantling.checks import sweep_choices
from scantling.fault import Faulty
from scantling.plan import Choice, Fitter, read_plan
from scantling.shop import read_shop
from scantling.source import read_catalog
from tests.support.workshop import bench_data, shop_data

PLANS = read_catalog(Path(__file__).resolve().parent.parent.parent / "plans").plans


@pytest.mark.parametrize("source", PLANS, ids=lambda source: source.slug)
def test_it_is_the_whole_fit_without_places_work_and_words(source):
    """At sizes all over its range, a demo plan has the same parts, offcuts, joins and hardware both ways."""
    for choice in islice(sweep_choices(source.fitter.plan), 12):
        whole, bought = source.fitter.fit(choice), source.fitter.fit_to_buy(choice)
        bare = tuple(replace(part, placed=(), work=(), note=old.note) for part, old in _pairs(whole, bought))

        assert bought.parts == bare
        assert (bought.offcuts, bought.joins, bought.hardware) == (whole.offcuts, whole.joins, whole.hardware)
        assert not bought.steps


def _pairs(whole, bought):
    return zip(whole.parts, bought.parts, strict=True)


def test_it_complains_of_what_cannot_be_bought():
    """A size outside the range is told in the same words."""
    fitter = Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data()))

    with pytest.raises(Faulty) as whole:
        fitter.fit(Choice({"height": fitter.plan.sizes["height"].most * 2}, {}))
    with pytest.raises(Faulty) as bought:
        fitter.fit_to_buy(Choice({"height": fitter.plan.sizes["height"].most * 2}, {}))
    assert bought.value.faults == whole.value.faults
