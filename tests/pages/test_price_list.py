"""The page of prices shows the list, its day, and what the last change did."""

from __future__ import annotations

from dataclasses import replace

from scantling.measure import Money
from scantling.pages import Choices, prices_page
from scantling.pages.price_plot import price_plot
from tests.report.test_prices import FIRST, record, shop_with


def test_the_first_page_lists_every_price():
    """Without a change there is the list and each plan's cost, and no plot of a single day."""
    finished = prices_page(shop_with("2026-09-01"), FIRST, Choices())
    (page,) = finished.pages

    assert finished.files == ()
    assert "2x4, 8&nbsp;ft" in page.markdown
    assert "$4.28" in page.markdown
    assert "What changed" not in page.markdown
    assert "2026-09-01" in page.markdown


def test_a_change_is_told_and_plotted():
    """After a change the page says what it did, and a plot shows both days; the same letters each time."""
    shop = shop_with("2026-10-01", glue="7.00")
    after = record(shop, FIRST)
    finished = prices_page(shop, after, Choices())

    assert '## What changed since&nbsp;<span class="sc-day">2026-09-01</span>' in finished.pages[0].markdown
    assert "wood glue: $6.00" in finished.pages[0].markdown
    (plot,) = finished.files
    assert plot.content.startswith("<svg")
    assert "2026-10-01" in plot.content
    assert finished == prices_page(shop, after, Choices())


def test_plans_are_named_by_their_titles_and_linked():
    """In the table and in what changed; a title that is hostile is escaped, a plan that went is no link."""
    shop = shop_with("2026-10-01", glue="7.00")
    gone = replace(FIRST, plans={**FIRST.plans, "old-stool": FIRST.plans["bench"]})
    after = record(shop, gone)
    titles = {"bench": "Harbour <bench>"}
    page = prices_page(shop, after, Choices(), titles).pages[0].markdown
    link = '<a href="../plans/bench/">Harbour &lt;bench&gt;</a>'

    assert f'<th scope="row">{link}</th>' in page
    assert f"<li>{link}: " in page
    assert "<li>old stool: gone" in page


def test_the_plot_shows_what_the_plans_cost_together():
    """The history adds up the plans' costs of each day."""
    after = record(shop_with("2026-10-01", glue="7.00"), FIRST)

    assert after.history["2026-10-01"] - after.history["2026-09-01"] == Money(100)


def test_many_days_do_not_run_into_each_other():
    """Below the plot stand four days at most, the last among them."""
    days = {f"2026-{month:02}-01": Money(100 * month) for month in range(1, 13)}
    plot = price_plot(days, "$")

    named = [day for day in days if day in plot]
    assert named[-1] == "2026-12-01"
    assert len(named) == 4
