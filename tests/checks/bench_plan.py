"""A small plan as data, in which nothing is found, to be changed in one place."""

from __future__ import annotations

from copy import deepcopy
from typing import Any

from scantling.checks import CHECKS, examine, sweep
from scantling.fault import Fault
from scantling.plan import Fitter, read_plan
from scantling.shop import read_shop

SHOP: dict[str, Any] = {
    "kerf": "1/8 in",
    "lumber": {
        "2x4": {"wood": "spruce-pine-fir", "lengths": {"8 ft": "4.28"}},
        "1x4": {"wood": "eastern white pine", "lengths": {"8 ft": "6.58"}},
        "1x12": {"wood": "eastern white pine", "lengths": {"8 ft": "25.74"}},
        "reclaimed 1x6": {
            "thick": "3/4 in",
            "width": "5 1/2 in",
            "varies": "1/4 in",
            "wood": "eastern white pine",
            "lengths": {"8 ft": "4.00"},
        },
    },
    "sheets": {
        "3/4 plywood": {"thick": "23/32 in", "wood": "hardwood plywood", "sizes": {"4 ft x 8 ft": "71.94"}},
        "1/4 plywood": {"thick": "7/32 in", "wood": "hardwood plywood", "sizes": {"4 ft x 8 ft": "31.88"}},
        "3/4 mdf": {
            "thick": "3/4 in",
            "wood": "medium-density fibreboard",
            "sizes": {"4 ft x 8 ft": "40.00"},
        },
    },
    "hardware": {
        "pocket screw 2 1/2 in": {
            "kind": "pocket screw",
            "long": "2 1/2 in",
            "price": "9.36",
            "count": "100",
            "sold": "box",
        },
        "wood screw 2 in": {
            "kind": "wood screw",
            "long": "2 in",
            "price": "6.84",
            "count": "100",
            "sold": "box",
        },
        "wood glue": {"kind": "glue", "price": "6.48", "sold": "bottle"},
        "wall anchor kit": {"kind": "wall anchor", "price": "6.74", "sold": "pair"},
    },
    "finish": {"linseed oil": {"kind": "finish", "covers": "100 sq ft", "price": "12.00", "sold": "can"}},
}
FRAME: dict[str, Any] = {
    "title": "Trestle",
    "summary": "A trestle {width} wide.",
    "tags": ["trestle"],
    "skill": "first project",
    "tools": ["mitre saw", "drill", "pocket-hole jig", "clamps"],
    "sizes": {
        "width": {"usual": "36 in", "from": "24 in", "to": "48 in"},
        "height": {"usual": "24 in", "from": "20 in", "to": "26 in"},
        "depth": "8 in",
    },
    "parts": {
        "post": {
            "count": "2",
            "from": "2x4",
            "length": "height",
            "place": {"runs": "up", "mirror": "across"},
        },
        "rail": {
            "from": "2x4",
            "length": "width - 2 * post.width",
            "work": [{"kind": "pocket holes", "where": "front face, each end", "count": "2"}],
            "place": {"faces": "front", "left": "post.right", "top": "height"},
        },
        "panel": {
            "from": "1x4",
            "length": "rail.length",
            "place": {"faces": "front", "left": "post.right", "back": "0 in", "top": "height"},
        },
    },
    "joins": [
        {"join": "rail to post", "with": "pocket screws", "each": "2", "joints": "2"},
        {"join": "panel to rail", "with": "screws", "each": "3", "joints": "1"},
    ],
    "overall": {"depth": "whole depth"},
    "lengths": {"whole depth": "post.thick + panel.thick"},
    "steps": [
        {
            "title": "Cut",
            "tools": "mitre saw",
            "text": "Cut {post.count} posts {post.length} long and a rail {rail.length} long.",
        },
        {
            "title": "Screw the frame together",
            "uses": "post, rail",
            "needs": "4 pocket screw 2 1/2 in",
            "tools": "drill, pocket-hole jig",
        },
        {"title": "Put on the panel", "uses": "panel", "needs": "3 wood screw 2 in", "tools": "drill"},
    ],
}


def frame(**changes: Any) -> dict[str, Any]:
    """Return a copy of the trestle with some of its top keys replaced."""
    return {**deepcopy(FRAME), **changes}


def fitter_of(data: dict[str, Any]) -> Fitter:
    """Return a plan made ready for the shop of these tests."""
    return Fitter(read_plan(data, "trestle"), read_shop(deepcopy(SHOP)))


def found(data: dict[str, Any], *, sweeping: bool = False) -> list[Fault]:
    """Return what all checks find in a plan."""
    return (sweep if sweeping else examine)(fitter_of(data), CHECKS)


def codes(data: dict[str, Any], *, sweeping: bool = False) -> list[str]:
    """Return the codes of what all checks find."""
    return [fault.code for fault in found(data, sweeping=sweeping)]
