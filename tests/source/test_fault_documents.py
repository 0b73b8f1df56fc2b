"""What is said of faulty files, case by case, as documents."""

from __future__ import annotations

import pytest

from scantling.source import Diagnostic, load_plan, load_shop
from tests.fixtures.reading import cases, judge

PLANS, SHOPS = "faults/plan.md", "faults/shop.md"
SIGNS = {"⇥": "\t", "␣": " ", "␛": "\x1b"}
SHOP = """\
kerf: 1/8 in
lumber:
  2x4: {lengths: {8 ft: 4.28, 10 ft: 5.98}}
  1x6: {lengths: {6 ft: 7.00, 8 ft: 9.10}}
  1x2: {lengths: {8 ft: 2.20}}
sheets:
  3/4 plywood: {thick: 23/32 in, sizes: {4 ft x 8 ft: 62.00, 4 ft x 4 ft: 38.00}}
hardwood:
  rare oak: {thick: 3/4 in, rough: 1 in, width: 6 in, per board foot: , lengths: [8 ft]}
hardware:
  wood glue: {price: 6.00}
  tape: {kind: edge banding, long: 25 ft, price: 9.00}
  rare hinge: {price: }
  pocket screw 1 1/4 in: {kind: pocket screw, long: 1 1/4 in, price: 8.40, count: 100}
"""


@pytest.fixture(scope="module")
def shop(tmp_path_factory):
    """Return the shop that the documents tell of."""
    path = tmp_path_factory.mktemp("shop") / "shop.yml"
    path.write_text(SHOP, "utf-8")
    found = load_shop(path)

    assert found.diagnostics == ()
    return found.shop


def told(diagnostics: tuple[Diagnostic, ...]) -> str:
    """Return diagnostics as the documents have them."""
    lines: list[str] = []
    for one in diagnostics:
        spot = one.spot
        help_line = f" → {one.help}" if one.help else ""
        lines.append(f"{spot.path}:{spot.line}:{spot.column}: {one.code} {one.message}{help_line}")
        lines += [f"  {note.spot.line}:{note.spot.column}: {note.message}" for note in one.notes if note.spot]
    return "\n".join(lines) or "nothing"


def as_written(text: str) -> bytes:
    """Return the bytes of a file whose text uses the signs of the documents."""
    for sign, meant in SIGNS.items():
        text = text.replace(sign, meant)
    return f"{text}\n".encode() if text else b""


@pytest.mark.parametrize("case", cases(PLANS), ids=lambda case: case.name)
def test_a_faulty_plan(case, shop, tmp_path):
    """Each fault of a plan is told at its line and column, with its mend, all in one run."""

    def work(given: str) -> str:
        path = tmp_path / "plan.md"
        path.write_bytes(as_written(given))
        return told(load_plan(path, shop, root=tmp_path).diagnostics)

    judge(PLANS, case, work)


@pytest.mark.parametrize("case", cases(SHOPS), ids=lambda case: case.name)
def test_a_faulty_shop_file(case, tmp_path):
    """Each fault of a shop file is told at its line and column, with its mend, all in one run."""

    def work(given: str) -> str:
        path = tmp_path / "shop.yml"
        path.write_bytes(as_written(given))
        return told(load_shop(path, root=tmp_path).diagnostics)

    judge(SHOPS, case, work)
