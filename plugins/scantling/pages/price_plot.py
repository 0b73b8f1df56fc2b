"""How the cost of the whole catalog moved, as a plot."""

from __future__ import annotations

import io
from collections.abc import Mapping
from math import ceil

from scantling.measure import Money, write_round_money
from scantling.words import say

MOST_DAYS = 4
"""Days that are named below the line; more would run into each other."""
SALT = "scantling"
INK, PENCIL = "#2b2621", "#6b6258"


def price_plot(history: Mapping[str, Money], currency: str) -> str:
    """Return an SVG of the cost of all plans by day; the same history gives the same letters.

    Args:
        history: at least two days, 2026-11-02, in order.
    """
    import matplotlib as mpl  # noqa: PLC0415 - slow to load, and most builds draw no plot
    from matplotlib.figure import Figure  # noqa: PLC0415 - likewise

    with mpl.rc_context(
        {"svg.hashsalt": SALT, "svg.fonttype": "none", "font.family": "sans-serif", "font.size": 11}
    ):
        figure = Figure(figsize=(5.4, 2.6), layout="constrained")
        axes = figure.subplots()
        days = list(history)
        costs = [money.cents / 100 for money in history.values()]
        axes.step(range(len(days)), costs, where="post", color=INK, linewidth=1.8)
        axes.plot(range(len(days)), costs, "o", color=INK, markersize=4)
        named = range(len(days) - 1, -1, -ceil(len(days) / MOST_DAYS))
        axes.set_xticks(named, [days[day] for day in named])
        axes.yaxis.set_major_formatter(
            lambda value, _: write_round_money(Money(round(value) * 100), currency)
        )
        axes.set_ylabel(say("all plans together"), color=PENCIL)
        axes.margins(y=0.25)
        axes.tick_params(colors=PENCIL)
        for side in ("top", "right"):
            axes.spines[side].set_visible(False)
        out = io.StringIO()
        figure.savefig(out, format="svg", transparent=True, metadata={"Date": None, "Creator": None})
    return _svg_alone(out.getvalue())


def _svg_alone(text: str) -> str:
    """Return the SVG without what stands before it."""
    return text[text.index("<svg") :]
