"""What changed in a plan, told to a reader who had the older one."""

from __future__ import annotations

import pytest

from scantling.fault import Faulty
from scantling.measure import Display
from scantling.pages import Look, render_words
from scantling.pages.notes import changes_since
from scantling.plan import Fitter, read_plan
from scantling.shop import read_shop
from tests.support.live import ask, fit, opened
from tests.support.workshop import bench_data, shop_data

ERRATA = [
    {"day": "2026-09-14", "parts": "leg", "text": "The legs are {leg.length} long now."},
    {"day": "2026-05-02", "text": "An older slip."},
]


def dated(**more):
    """Return a bench that was mended twice."""
    return {**bench_data(), "revised": "2026-06-01", "errata": ERRATA, **more}


def told(day: str, **more) -> str:
    """Return what a reader is told who had the plan of a day."""
    plan = read_plan(dated(**more), "bench")
    fitted = Fitter(plan, read_shop(shop_data())).fit()
    return changes_since(fitted, day, Look(Display(), render_words(plan)))


def test_what_was_mended_since_is_told_with_its_day_and_part():
    """The later mend alone, its number at this size."""
    html = told("2026-06-01")

    assert "2026-09-14" in html
    assert "<b>leg: </b>" in html
    assert "long now" in html
    assert "older slip" not in html


def test_who_had_the_plan_as_it_is_now_is_told_nothing():
    """Nor is who never saved it."""
    assert told("2026-09-14") == ""
    assert "older slip" in told("2026-01-01")


def test_a_revision_without_a_word_is_told_by_its_day():
    """The author said no more than that it is another one."""
    assert "revised on 2026-11-09" in told("2026-10-01", revised="2026-11-09")


def test_a_part_that_is_not_there_is_a_fault():
    """A note may name the plan's own parts alone."""
    with pytest.raises(Faulty) as caught:
        read_plan(dated(errata=[{"day": "2026-09-14", "parts": "lge", "text": "x"}]), "bench")
    (fault,) = caught.value.faults
    assert fault.code == "unknown-part"
    assert fault.place.path[:1] == ("errata",)
    assert "leg" in fault.help


def test_a_link_that_tells_its_day_is_answered_with_what_changed():
    """The live page asks with the day of the link; another word than a day is none."""
    session = opened(bench=dated())

    assert "2026-09-14" in fit(session, asOf="2026-06-01")["changed"]
    assert fit(session, asOf="<b>")["changed"] == fit(session)["changed"] == ""


def test_the_shopping_trip_tells_what_changed_in_each_plan():
    """Of the plan that was put on the list before it was mended, and not of the other."""
    session = opened(bench=dated())
    items = [{"slug": "bench", "count": 1, "revised": day} for day in ("2026-06-01", "2026-09-14")]
    answer = ask(session, ask="trip", items=items)
    old, new = answer["items"]

    assert "2026-09-14" in old["changed"]
    assert new["changed"] == ""
    assert old["revised"] == "2026-09-14"
