"""What is said of a part besides its sizes."""

from __future__ import annotations

import re

import pytest

from scantling.measure import Display
from scantling.plan import Fitter, read_plan
from scantling.report import origins_words, part_notes, report_on
from scantling.shop import read_shop
from scantling.source import read_catalog
from tests.support.workshop import shop_data, with_part


@pytest.mark.parametrize(
    ("band", "told"),
    [
        ("one long edge", "banded: one long edge"),
        ("long edges, one short edge", "banded: both long edges, one short edge"),
        ("one long edge, short edges", "banded: one long edge, both short edges"),
        ("all", "banded: all edges"),
    ],
)
def test_banded_edges_are_named_as_a_builder_would(band, told):
    """Not by the numbers that tell them apart inside: 'long 1, short 1, short 2' helps nobody at the iron."""
    data = with_part("top", band=band)
    part = Fitter(read_plan(data, "bench"), read_shop(shop_data())).fit().part("top")

    assert told in part_notes(part, Display())


def test_boards_in_a_row_that_give_as_many_are_told_together(root):
    """Six pickets, one long piece from each, are one line; two boards are still told one by one."""
    report = report_on(read_catalog(root / "plans").plan("picket-headboard").fitter)

    def told(name):
        return origins_words((one for one in report.origins if one.part.id == name), Display())

    assert told("long piece") == ["1 cut from each of cedar picket no. 1 to no. 6"]
    assert told("rail") == ["1 cut from 2x4 no. 1", "1 cut from 2x4 no. 2"]


@pytest.mark.parametrize("slug", ["picket-headboard", "potting-bench", "herb-planter"])
def test_lines_that_are_told_together_still_add_up(root, slug):
    """However a part's boards are put together, the counts told come to all its blanks."""
    report = report_on(read_catalog(root / "plans").plan(slug).fitter)
    for part in report.fitted.parts:
        origins = [one for one in report.origins if one.part.id == part.id]
        total = 0
        for line in origins_words(origins, Display()):
            each, first, last = re.match(r"(\d+) .*?(?:no\. (\d+))?(?: to no\. (\d+))?$", line).groups()
            total += int(each) * (int(last) - int(first) + 1 if last else 1)
        assert total == sum(one.count for one in origins), part.id
