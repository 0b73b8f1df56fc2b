"""What does not fit the car is not bought where something shorter will do, or is cut at the store."""

from __future__ import annotations

from scantling.measure import Display, Length
from scantling.plan import Fitter, read_plan
from scantling.report import origin_words, plan_data, report_on, store_cuts, store_words
from scantling.shop import read_shop
from tests.support.workshop import bench_data, shop_data, with_part


def report_with(longest: str | None, plan=None, **rules):
    """Return the report on the bench for a car of some length."""
    data = shop_data(rules={"longest piece": longest, **rules} if longest else rules)
    data["lumber"]["2x4"]["lengths"]["10 ft"] = "4.00"
    return report_on(Fitter(read_plan(plan or bench_data(), "bench"), read_shop(data)))


def test_boards_too_long_for_the_car_are_not_bought():
    """With a car that takes 8 ft, no 10 ft board is bought, though one would be cheaper."""
    free, short = report_with(None), report_with("8 ft")

    assert any(board.sale.length > Length(96) for board in free.cutting.boards)
    assert all(board.sale.length <= Length(96) for board in short.cutting.boards)
    assert short.cutting.cost >= free.cutting.cost


def test_a_sheet_is_cut_at_the_store():
    """The first cuts are told until every panel fits, and no more."""
    report = report_with("60 in", with_part("top", length="70 in - 22 in", count="2"))
    cuts = store_cuts(report.cutting)
    long = [
        board for board in report.cutting.boards if board.sale.length > Length(60) and board.stock.is_sheet
    ]

    assert {cut.board.name for cut in cuts} >= {board.name for board in long}
    words = store_words(cuts, Display())
    assert all(": " in line and " at " in line for line in words)


def test_without_a_rule_nothing_is_asked_of_the_store():
    """A shop file that says nothing of a car asks for no cuts."""
    assert store_cuts(report_with(None).cutting) == ()


def test_a_strip_that_ends_up_narrow_is_told():
    """The cut list says how wide a strip ends up that the kerf leaves narrower than asked."""
    plan = {
        "title": "Two strips",
        "parts": {
            "wide": {"from": "1x6", "length": "90 in", "width": "4 in"},
            "narrow": {"from": "1x6", "length": "90 in", "width": "1 1/2 in", "least width": "1 3/8 in"},
        },
    }
    report = report_with(None, plan)

    assert len(report.cutting.boards) == 1
    told = [origin_words(origin, Display()) for origin in report.origins]
    assert told == ["1 ripped from 1x6 no. 1", "1 ripped from 1x6 no. 1; ends up 1 3/8 in wide"]
    assert told[1] in [row["from"] for row in plan_data(report, Display())["trace"]]
