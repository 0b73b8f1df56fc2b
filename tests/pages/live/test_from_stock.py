"""What can be built from what a reader has: asked as the page asks."""

from __future__ import annotations

from scantling.plan import Fitter, read_plan
from scantling.report import stock_needs
from scantling.shop import read_shop
from tests.support.live import ask, opened
from tests.support.workshop import bench_data, shop_data

PLENTY = "20 2x4 10 ft\n20 1x4 8 ft\n20 1x6 8 ft\n20 2x6 8 ft\n4 3/4 plywood"


def catalog():
    """Return what the page knows of a catalog with one bench."""
    fitted = Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data())).fit()
    needs = [[list(need.stocks), need.area, need.longest] for need in stock_needs(fitted)]
    return [
        {"slug": "bench", "title": "Bench", "sizes": [{"at": "", "label": "", "chosen": {}, "needs": needs}]}
    ]


def listed(text: str):
    """Return what of the shop a list names, without what the shop does not sell."""
    stocks = read_shop(shop_data()).stocks
    return "\n".join(line for line in text.split("\n") if any(key in line for key in stocks))


def test_a_plan_that_may_do_is_found_and_worked_out():
    """With plenty of each the bench needs nothing more, but for its hardware."""
    session = opened()
    text = listed(PLENTY)
    found = ask(session, ask="from-stock", text=text, catalog=catalog())
    one = ask(session, ask="one-from-stock", text=text, slug="bench", chosen={})

    assert found["ok"]
    assert found["found"] == [[0, 0]]
    assert (one["enough"], one["more"]) == (True, "nothing more")


def test_what_is_lacking_is_told_with_its_price():
    """One board is not enough: what is bought besides is what the plan's own list would buy."""
    session = opened()
    one = ask(session, ask="one-from-stock", text="1 2x4 8 ft", slug="bench", chosen={})

    assert not one["enough"]
    assert "2x4" in one["more"]
    assert "$" in one["more"]


def test_what_is_not_understood_is_told_and_the_rest_is_used():
    """A stock that the shop does not sell, beside one that it does; nothing at all."""
    session = opened()
    answer = ask(session, ask="from-stock", text="1 2x5 8 ft\n<b> 2x4 8 ft\n2 2x4 8 ft", catalog=catalog())

    assert [fault["message"] for fault in answer["faults"]] == [
        "There is no stock called '2x5 8 ft'.",
        "'<b>' does not say how many.",
    ]
    assert answer["understood"] == "<li>2 × 2x4, 96 in</li>"
    assert (
        "Nothing is written" in ask(session, ask="from-stock", text=" ", catalog=[])["faults"][0]["message"]
    )


def test_a_thousand_plans_are_ranked_in_a_moment():
    """Three sizes each: a glance at each, and no more than the best are handed on."""
    import time

    plan = catalog()[0]
    many = [{**plan, "slug": f"plan-{n}", "sizes": plan["sizes"] * 3} for n in range(1_000)]
    session = opened()
    started = time.process_time()
    answer = ask(session, ask="from-stock", text="1 2x4 8 ft", catalog=many)

    assert len(answer["found"]) == 60
    assert time.process_time() - started < 2
