"""Large pieces of a page go round the host's parsers, and the page is as if they had not."""

from __future__ import annotations

import json
import re
from pathlib import Path

from tests.host.test_build import build, built, digests  # noqa: F401 - a fixture
from tests.support.catalogs import BENCH, write_site


def test_no_mark_is_left_on_a_page(built):  # noqa: F811 - the fixture
    """Every piece is back in its place, and nothing that was meant for the search alone is left."""
    pages = list(built.rglob("*.html"))
    stool = (built / "plans/stool/index.html").read_text()

    assert len(pages) > 10
    assert [page for page in pages if "data-set-aside" in page.read_text()] == []
    assert [page for page in pages if "data-search-exclude" in page.read_text()] == []
    assert set(re.findall(r'data-fragment="([a-z-]+)"', stool)) > {"materials", "cut-list", "steps", "facts"}
    assert stool.index("<h1") < stool.index('data-fragment="materials"') < stool.index("</article>")


def test_the_search_finds_no_mark(built):  # noqa: F811 - the fixture
    """What holds a piece's place is not among the words of the index."""
    assert "set-aside" not in json.dumps(json.loads((built / "search/search_index.json").read_text()))


def test_a_place_in_a_piece_can_be_linked_to(tmp_path):
    """A link of an author's page to a step is whole, one to a step that is not there is told of."""
    for anchor, told in (("step-1", False), ("step-99", True)):
        site = write_site(tmp_path / anchor, stool=BENCH, settings="validation: {anchors: warn}\n")
        (site / "docs" / "own.md").write_text(f"# Own\n\n[It](plans/stool/index.md#{anchor})\n")
        done = build(site)

        assert (done.returncode != 0) == told, done.stderr
        assert (f"'#{anchor}'" in done.stderr) == told


def test_a_site_that_is_built_again_is_the_same_bytes(tmp_path):
    """Found, damaged and found again, everything remembered makes the same site; damage is told."""
    site = write_site(tmp_path, stool=BENCH)
    first = build(site, SOURCE_DATE_EPOCH="1700000000")
    seen = [digests(site / "site")]
    entries = [path for path in (site / ".cache" / "scantling").glob("*/*/*") if path.is_file()]
    for is_damaged in (False, True):
        for path in entries if is_damaged else ():
            _turn_a_bit(path)
        again = build(site, SOURCE_DATE_EPOCH="1700000000")
        seen.append(digests(site / "site"))

        assert ("was damaged" in again.stderr) == is_damaged
    assert first.returncode == 0
    assert seen[1:] == seen[:1] * 2
    assert {path.relative_to(site / ".cache/scantling").parts[0] for path in entries} >= {
        *("plans", "stacks", "drawings", "templates")
    }


def _turn_a_bit(path: Path) -> None:
    content = path.read_bytes()
    path.write_bytes(content[:-3] + bytes([content[-3] ^ 1]) + content[-2:])
