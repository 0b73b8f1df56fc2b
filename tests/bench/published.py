"""Published cutting instances as problems of the cutting seam."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

EASY = ("paper-roll", "vsbpp-vpsolver-example", "falkenauer", "scholl-sample", "macedo-a")
HARD = ("hard28", "waescher", "class-500", "alvarez-atp", "cintra-gcutd-several-sizes")


def instances(folder: Path, name: str) -> list[tuple[dict[str, Any], float | None]]:
    """Return the problems of a set, each with the best cost known without turning, where one is."""
    data = json.loads((folder / f"{name}.json").read_text())
    return [
        (_problem(one), _known(one.get("known", {}))) for one in (data if isinstance(data, list) else [data])
    ]


def _problem(one: dict[str, Any]) -> dict[str, Any]:
    if "parts" in one:
        return {key: value for key, value in one.items() if key != "known"}
    stock = [
        {
            "id": f"s{number}",
            "family": "f",
            "length": item["length"],
            "width": item.get("width", 1),
            "price": round(item["price"]),
            **({"available": item["available"]} if item.get("available") else {}),
        }
        for number, item in enumerate(one["stock"])
    ]
    parts = [
        {
            "id": f"p{number}",
            "from": "f",
            "count": item["count"],
            "length": item["length"],
            "width": item.get("width", 1),
            "grain": "length",
        }
        for number, item in enumerate(one["items"])
    ]
    return {"name": one["name"], "unit": "1", "kerf": 0, "stages": 3, "stock": stock, "parts": parts}


def _known(known: dict[str, Any]) -> float | None:
    """Return the best known cost for three stages without turning, or the optimum for any stages."""
    for key in (
        "best_3stage_nonexact_horizontal_oriented",
        "optimum",
        "optimum:best_3stage_homogenous_vertical_oriented",
        "optimum:guillotine_oriented",
        "best_vsbpp_2stage_nonexact_horizontal_oriented",
    ):
        value = known.get(key)
        if isinstance(value, int | float) and value > 0:
            return float(value)
    return None
