"""A small shop and a bench, as plain data: enough of everything, and nothing more."""

from __future__ import annotations

from copy import deepcopy
from typing import Any

SHOP: dict[str, Any] = {
    "kerf": "1/8 in",
    "prices of": "2026-11-02",
    "lumber": {
        "2x4": {"wood": "spruce-pine-fir", "lengths": {"8 ft": "4.28", "10 ft": "5.98"}},
        "1x6": {"wood": "eastern white pine", "lengths": {"6 ft": "7.00", "8 ft": "9.10"}},
        "1x2": {"wood": "eastern white pine", "lengths": {"8 ft": "2.20"}},
    },
    "sheets": {
        "3/4 plywood": {
            "thick": "23/32 in",
            "wood": "softwood plywood",
            "sizes": {"4 ft x 8 ft": "62.00", "4 ft x 4 ft": "38.00"},
        }
    },
    "hardware": {
        "pocket screw 1 1/4 in": {
            "kind": "pocket screw",
            "long": "1 1/4 in",
            "price": "8.40",
            "count": "100",
            "sold": "box of 100",
        },
        "wood glue": {"price": "6.00", "sold": "bottle"},
        "edge tape": {"kind": "edge banding", "long": "8 ft", "price": "4.00", "sold": "roll of 8 ft"},
    },
    "finish": {"exterior oil": {"covers": "10 sq ft", "price": "12.00", "sold": "can"}},
}
BENCH: dict[str, Any] = {
    "title": "Bench",
    "sizes": {
        "width": {"usual": "48 in", "from": "30 in", "to": "72 in", "offer": ["36 in", "60 in"]},
        "height": {"usual": "17 1/2 in", "from": "15 in", "to": "19 in"},
        "depth": "14 in",
    },
    "lengths": {"between legs": "width - 2 * leg.width - 2 * overhang", "overhang": "1 in"},
    "options": {
        "feet": {
            "question": "Feet?",
            "choices": {"plain": "cut square", "tapered": "tapered"},
            "usual": "plain",
        }
    },
    "parts": {
        "leg": {
            "count": "4",
            "from": "2x4",
            "glued up": "2 layers",
            "width": "2 3/4 in",
            "thick": "2 3/4 in",
            "longer": "1/2 in",
            "length": "height - top.thick",
        },
        "side strip": {
            "count": "4",
            "from offcut of": "leg",
            "width": "1/2 in",
            "thick": "2 3/4 in",
            "length": "depth - 2 * leg.width",
        },
        "top": {"from": "3/4 plywood", "length": "width", "width": "depth", "band": "all"},
        "rail": {"count": "2", "from": "1x6", "width": "4 3/4 in", "length": "between legs"},
        "middle leg": {"from": "2x4", "length": "leg.length", "only if": "width > 60 in"},
    },
    "joins": [{"join": "rail to leg", "with": "pocket screws", "each": "2", "joints": "4"}],
    "hardware": {"wood glue": "1", "exterior oil": {"area": "2 * surface"}},
    "steps": [
        {"title": "Make the legs", "uses": "4 leg", "text": "Trim to **{leg.width} square**."},
        {"title": "Build up", "uses": "side strip, top, rail", "needs": "8 pocket screw 1 1/4 in"},
        {"title": "Add the middle leg", "uses": "middle leg", "only if": "width > 60 in"},
    ],
}


def shop_data(**changes: Any) -> dict[str, Any]:
    """Return a copy of the shop's data with some of its top keys replaced."""
    return {**deepcopy(SHOP), **changes}


def bench_data(**changes: Any) -> dict[str, Any]:
    """Return a copy of the bench's data with some of its top keys replaced."""
    return {**deepcopy(BENCH), **changes}


def with_part(name: str, **fields: str) -> dict[str, Any]:
    """Return the bench's data with some fields of one part set; write `from_` for `from`."""
    data = bench_data()
    part = data["parts"].setdefault(name, {})
    part.update({key.rstrip("_").replace("_", " "): value for key, value in fields.items()})
    return data
