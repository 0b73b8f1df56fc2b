"""Several plans bought and cut as one."""

from __future__ import annotations

import json
import re
import subprocess
import sys

import pytest

from scantling.cutting import Lot, Problem, cut_together, solve
from scantling.plan import Fitter, read_plan
from scantling.report import report_on
from scantling.shop import read_shop
from tests.support.live import ask, opened
from tests.support.workshop import bench_data, shop_data


@pytest.fixture(scope="module")
def session():
    """Return a session with two plans open."""
    return opened(bench=bench_data(), stool=bench_data(title="Stool"))


def cents(text: str) -> int:
    """Return a sum of money as whole cents."""
    return int(re.sub(r"\D", "", text))


def sums(answer) -> list[int]:
    """Return what it costs each for itself, together, and what that saves."""
    return [cents(cell) for cell in re.findall(r"<dd>(.*?)</dd>", answer["fragments"]["trip-sum"])]


def test_one_plan_alone_costs_what_its_page_says(session):
    """With one piece on the list there is nothing to save."""
    answer = ask(session, ask="trip", items=[{"slug": "bench", "count": 1, "chosen": {}}])
    report = report_on(Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data())))

    assert sums(answer) == [report.totals.cost.cents, report.totals.cost.cents, 0]


def test_together_costs_no_more_and_the_saving_is_the_difference(session):
    """A list of several plans is never dearer than each for itself."""
    items = [
        {"slug": "bench", "count": 2, "chosen": {"width": "36 in"}},
        {"slug": "stool", "count": 1, "chosen": {"width": "52 in", "feet": "tapered"}},
    ]
    alone, together, saved = sums(ask(session, ask="trip", items=items))

    assert together < alone
    assert saved == alone - together


def test_parts_on_the_diagrams_name_their_plan(session):
    """Part A of the second plan is 2A."""
    items = [{"slug": slug, "count": 1, "chosen": {}} for slug in ("bench", "stool")]
    diagrams = ask(session, ask="trip", items=items)["fragments"]["trip-diagrams"]

    assert "1A" in diagrams
    assert "2A" in diagrams


@pytest.mark.parametrize(
    "item",
    [
        {"slug": "gone", "count": 1},
        {"slug": "bench", "count": 0},
        {"slug": "bench", "count": "many"},
        {"slug": "bench", "count": 1, "chosen": {"width": "900 in"}},
        "nonsense",
    ],
)
def test_what_cannot_be_built_is_told_and_left_out(session, item):
    """The rest of the list is still worked out."""
    good = {"slug": "bench", "count": 1, "chosen": {}}
    answer = ask(session, ask="trip", items=[item, good])

    assert {warning["control"] for warning in answer["warnings"]} == {"item 0"}
    assert [one["label"] for one in answer["items"]] == ["", "as drawn"]
    assert answer["fragments"]["trip-materials"]


def as_data(problem: Problem) -> dict[str, object]:
    """Return a cutting problem in the form of the cutting seam."""
    stock = [
        {
            "id": item.id,
            "family": item.family,
            "length": item.length,
            "width": item.width,
            "price": item.price,
            "trim_ends": item.trim_ends,
            "trim_edges": item.trim_edges,
        }
        for item in problem.stock
    ]
    parts = [
        {
            "id": item.id,
            "from": item.family,
            "count": item.count,
            "length": item.length,
            "width": item.width,
            "grain": "any" if item.may_turn else "length",
        }
        for item in problem.parts
    ]
    return {
        "unit": problem.unit,
        "kerf": problem.kerf,
        "stages": problem.stages,
        "stock": stock,
        "parts": parts,
    }


def test_a_joint_cutting_plan_can_be_cut(tmp_path):
    """The checker of cutting plans, which shares no code with the solver, finds the joint plan sound."""
    shop = read_shop(shop_data())
    fitted = Fitter(read_plan(bench_data(), "bench"), shop).fit()
    problem = cut_together((Lot(fitted, 2), Lot(fitted, 1)), shop).order.problem
    (tmp_path / "problem.json").write_text(json.dumps(as_data(problem)))
    (tmp_path / "answer.json").write_text(json.dumps(solve(problem).to_data()))
    command = [
        sys.executable,
        "tests/tools/verify_cuts.py",
        tmp_path / "problem.json",
        tmp_path / "answer.json",
    ]
    done = subprocess.run(command, capture_output=True, text=True, check=False)

    assert done.returncode == 0, done.stdout + done.stderr
    wanted = sum(part.blank.pieces * part.count for part in fitted.parts if part.part.source.stocks)
    assert sum(part.count for part in problem.parts) == 3 * wanted
