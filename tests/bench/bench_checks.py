"""How long a sweep of 200 sizes of a 40-part plan takes, and of every demonstration plan.

python -m tests.bench checks
"""

from __future__ import annotations

from itertools import islice, pairwise
from pathlib import Path
from time import process_time
from typing import Any

from scantling.checks import CHECKS, sweep, sweep_choices
from scantling.plan import Fitter, letter_of, read_plan
from scantling.shop import read_shop
from scantling.source import read_catalog
from tests.support.workshop import shop_data

PLANS = Path(__file__).resolve().parent.parent.parent / "plans"
PARTS = 40
SIZES = 200


def rack(*, placed: bool) -> dict[str, Any]:
    """Return a rack of forty kinds of part, joined in a row, put up in ten steps."""
    parts = {
        f"slat {letter_of(number)}": {
            "count": "2",
            "from": "1x6",
            "width": "5 in",
            "length": f"width - {number} * 1/8 in",
            **(
                {"place": {"left": "0 in", "bottom": f"{number} * height / 10", "mirror": "back"}}
                if placed
                else {}
            ),
        }
        for number in range(1, PARTS + 1)
    }
    names = list(parts)
    pairs = pairwise(names)
    joins = [{"join": f"{one} to {other}", "with": "glue", "glue": "yes"} for one, other in pairs]
    steps = [
        {
            "title": f"Put on {names[at]}",
            "uses": ", ".join(names[at : at + 4]),
            "needs": "wood glue",
            "tools": "clamps",
            "text": f"Glue them on, {{{names[at]}.length}} and {{{names[at + 1]}.length}} long.",
        }
        for at in range(0, PARTS, 4)
    ]
    return {
        "title": "Rack",
        "tools": ["clamps"],
        "sizes": {
            "width": {"usual": "36 in", "from": "20 in", "to": "60 in"},
            "height": {"usual": "20 in", "from": "12 in", "to": "26 in", "by": "1/4 in"},
            "depth": {"usual": "30 in", "from": "24 in", "to": "36 in", "by": "1/8 in"},
        },
        "lengths": {"half": "width / 2", "third": "width / 3"},
        "parts": parts,
        "joins": [] if placed else joins,
        "hardware": {"wood glue": "1"},
        "steps": steps,
    }


def main(argv: list[str]) -> int:
    """Time the sweeps and print them."""
    del argv
    shop = read_shop(shop_data())
    for placed in (False, True):
        fitter = Fitter(read_plan(rack(placed=placed), "rack"), shop)
        choices = list(islice(sweep_choices(fitter.plan), SIZES))
        start = process_time()
        for choice in choices:
            fitter.fit(choice)
        fitting = process_time() - start
        start = process_time()
        sweep(fitter, CHECKS, choices)
        taken = process_time() - start
        words = "placed" if placed else "without places"
        print(f"{PARTS} parts {words}: {len(choices)} sizes {taken:.2f} s, of which fitting {fitting:.2f} s")
    for plan in read_catalog(PLANS).plans:
        if plan.fitter is not None:
            start = process_time()
            sweep(plan.fitter, CHECKS)
            count = sum(1 for _ in sweep_choices(plan.fitter.plan))
            parts = len(plan.fitter.plan.parts)
            print(f"{plan.slug}: {parts} parts, {count} sizes {process_time() - start:.2f} s")
    return 0
