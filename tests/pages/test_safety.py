"""The page says what can hurt, where the author forgot to."""

from __future__ import annotations

from scantling.cutting import cut_plan
from scantling.pages.safety import safety
from scantling.report import make_report
from tests.checks.bench_plan import fitter_of
from tests.checks.test_cautions import one_part, with_tool


def page_of(data):
    """Return the safety section of a plan without cautions of its own."""
    fitter = fitter_of(data)
    report = make_report(fitter.fit(), fitter.shop)
    assert cut_plan(report.fitted, fitter.shop).boards
    return safety(report, None)


def test_what_the_work_calls_for_is_inserted():
    """A plan that takes a router says so at its step, with the source; another says nothing."""
    shown = page_of(with_tool("router"))

    assert "In step 2: Clamp the work, move the router against the turn of the bit" in shown
    assert "(See: the router&#39;s manual; common practice.)" in shown or "(See: the router's manual" in shown
    assert "sc-caution" not in page_of(one_part("1x4"))
