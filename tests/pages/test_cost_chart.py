"""What each inch costs is drawn and told from the same reckoning as the page."""

from __future__ import annotations

import re

from scantling.measure import Display
from scantling.pages import Look, render_words
from scantling.pages.cost_chart import cost_drawing, cost_words
from scantling.plan import Fitter, read_plan
from scantling.report import cost_by_size, main_size, report_on
from scantling.shop import read_shop
from tests.support.workshop import bench_data, shop_data

FITTER = Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data()))
CHART = cost_by_size(FITTER, main_size(FITTER))
REPORT = report_on(FITTER)


def words(display: Display) -> str:
    """Return the chart's words without tags."""
    look = Look(display, render_words(FITTER.plan))
    html = cost_words(CHART, REPORT, cost_drawing(CHART, REPORT, display), look)
    return " ".join(re.sub(r"<[^>]*>", " ", html).replace("&nbsp;", " ").split())


def test_the_page_s_own_cost_is_picked_out():
    """The mark on the chart says what the page says."""
    assert f"${REPORT.totals.cost.cents / 100:.2f}" in cost_drawing(CHART, REPORT, Display()).svg


def test_each_good_place_to_stop_links_to_that_size():
    """A sweet spot is told with its cost, what the next costs more, and a link that chooses it."""
    look = Look(Display(), render_words(FITTER.plan))
    html = cost_words(CHART, REPORT, cost_drawing(CHART, REPORT, Display()), look)
    links = re.findall(r'href="\?width=(\d+)in"', html)

    assert links
    assert {int(link) for link in links} <= {int(spot.value.inches) for spot in CHART.sweet_spots}
    assert "more" in words(Display())


def test_it_says_how_finely_it_looked():
    """Where not every inch was tried, the page says so, in the reader's units."""
    assert words(Display()).startswith("From width 30 in to 72 in, tried every 2 in, the cost moves")
    assert words(Display("mm")).startswith("From width 762 mm to 1,829 mm") or "762 mm to 1829 mm" in words(
        Display("mm")
    )


def test_who_cannot_see_it_is_told_the_ends():
    """The alternative words give the cost at both ends of the range."""
    told = cost_drawing(CHART, REPORT, Display()).alt

    assert "at 30 in" in told
    assert "at 72 in" in told
