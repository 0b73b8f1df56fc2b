"""The catalogs that builds are timed with are in order."""

from __future__ import annotations

from scantling.source import read_catalog
from tests.bench.catalogs import DEMO, write_synthetic


def test_a_synthetic_catalog_has_no_faults(tmp_path):
    """The demo plans twice over and one more, each under its own name, at its own size."""
    count = 2 * len(list(DEMO.glob("*/plan.md"))) + 1
    catalog = read_catalog(write_synthetic(tmp_path, count))

    assert len(catalog.plans) == count
    assert [one for one in catalog.diagnostics if one.is_fault] == []
    assert len({one.plan.title for one in catalog.plans}) == count
