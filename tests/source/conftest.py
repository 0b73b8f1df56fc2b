"""A shop, and a way to read a plan from its bytes."""

from __future__ import annotations

import pytest

from scantling.source import load_plan, load_shop
from tests.source.test_fault_documents import SHOP


@pytest.fixture(scope="session")
def small_shop(tmp_path_factory):
    """Return the shop that sells what the tests' plans are made of."""
    path = tmp_path_factory.mktemp("shop") / "shop.yml"
    path.write_text(SHOP, "utf-8")
    return load_shop(path).shop


@pytest.fixture
def read(tmp_path, small_shop):
    """Return a function that reads a plan file's text or bytes."""

    def read(data: str | bytes, shop=small_shop):
        folder = tmp_path / "box"
        folder.mkdir(exist_ok=True)
        path = folder / "plan.md"
        path.write_bytes(data.encode("utf-8") if isinstance(data, str) else data)
        return load_plan(path, shop, root=tmp_path)

    return read
