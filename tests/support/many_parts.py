"""A plan with as many kinds of part as one wants, each leaning on the one before."""

from __future__ import annotations

from typing import Any

from scantling.plan import Fitter, read_plan
from scantling.shop import read_shop
from tests.support.workshop import bench_data, shop_data


def many_parts_data(parts: int) -> dict[str, Any]:
    """Return a bench with so many kinds of part besides its own, with joins, hardware and quoted prose."""
    data = bench_data()
    own = len(data["parts"])
    for number in range(parts - own):
        before = f"slat n{number - 1}" if number else "rail"
        data["parts"][f"slat n{number}"] = {
            "count": "2 + round down(width / 30 in, 1)",
            "from": "1x6",
            "width": "max(2 in, leg.width - 1/8 in)",
            "length": f"min({before}.length, width) - 1/16 in",
            "only if": "width > 20 in and depth < 30 in",
        }
        data["lengths"][f"reveal n{number}"] = f"slat n{number}.length / 2 - kerf"
        data["joins"].append({"join": f"slat n{number} to rail", "with": "glue", "joints": "4"})
        data["steps"].append(
            {
                "title": f"Fix slat n{number}",
                "uses": f"slat n{number}",
                "text": f"{{slat n{number}.count}} of {{slat n{number}.length}}, {{reveal n{number}}} in.",
            }
        )
    return data


def many_parts(parts: int) -> Fitter:
    """Return such a bench, ready to be fitted."""
    return Fitter(read_plan(many_parts_data(parts), "many"), read_shop(shop_data()))
