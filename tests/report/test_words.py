"""What is said of a part besides its sizes."""

from __future__ import annotations

import pytest

from scantling.measure import Display
from scantling.plan import Fitter, read_plan
from scantling.report import part_notes
from scantling.shop import read_shop
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
