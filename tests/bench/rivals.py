"""What else one could do: by hand, or with a general-purpose packing library or solver."""

from __future__ import annotations

import itertools
from typing import Any

import numpy as np
import rectpack
from scipy.optimize import Bounds, LinearConstraint, milp


def by_hand(data: dict[str, Any]) -> int:
    """Return the cost of cutting boards the usual way: best price for length, the longest parts first.

    Only for problems in which lengths alone matter.
    """
    kerf = data["kerf"]
    stock = sorted(data["stock"], key=lambda item: item["price"] / item["length"])
    left = sorted((part["length"] for part in data["parts"] for _ in range(part["count"])), reverse=True)
    cost = 0
    while left:
        board = next(item for item in stock if item["length"] >= left[0])
        room, rest = board["length"] + kerf, []
        for length in left:
            if length + kerf <= room:
                room -= length + kerf
            else:
                rest.append(length)
        used = board["length"] + kerf - room
        cost += min(item["price"] for item in stock if item["length"] + kerf >= used)
        left = rest
    return cost


def packed(data: dict[str, Any]) -> int:
    """Return the least cost over many tries of rectpack; its layouts may not be cuttable at all.

    Each sheet that it fills is swapped for the cheapest that holds what lies on it.
    """
    kerf, best = data["kerf"], 10**12
    turn = any(part["grain"] == "any" for part in data["parts"])
    sorts = (rectpack.SORT_AREA, rectpack.SORT_LSIDE, rectpack.SORT_SSIDE)
    ways = (
        rectpack.GuillotineBssfSas,
        rectpack.GuillotineBafSas,
        rectpack.MaxRectsBssf,
        rectpack.SkylineMwfl,
    )
    for way, sort, item in itertools.product(ways, sorts, data["stock"]):
        packer = rectpack.newPacker(rotation=False, sort_algo=sort, pack_algo=way)
        trim = 2 * item.get("trim_edges", 0)
        packer.add_bin(
            item["length"] - 2 * item.get("trim_ends", 0) + kerf, item["width"] - trim + kerf, count=99
        )
        count = 0
        for part in data["parts"]:
            for _ in range(part["count"]):
                packer.add_rect(part["length"] + kerf, part["width"] + kerf)
                count += 1
        packer.pack()
        if sum(len(sheet) for sheet in packer) == count:
            best = min(best, sum(_cheapest(data, sheet, kerf) for sheet in packer))
    del turn
    return best


def _cheapest(data: dict[str, Any], sheet: Any, kerf: int) -> int:
    length = max(rect.x + rect.width for rect in sheet) - kerf
    width = max(rect.y + rect.height for rect in sheet) - kerf
    return min(
        item["price"]
        for item in data["stock"]
        if length <= item["length"] - 2 * item.get("trim_ends", 0)
        and (width <= item["width"] - 2 * item.get("trim_edges", 0) or width == item["width"])
    )


MOST_PATTERNS = 60_000


def modelled(data: dict[str, Any], seconds: float) -> tuple[int, int] | None:
    """Return the cost and bound of an integer programme over all maximal patterns, solved by HiGHS.

    Returns None where there are too many patterns to write down.
    """
    kerf = data["kerf"]
    lengths = [part["length"] + kerf for part in data["parts"]]
    counts = [part["count"] for part in data["parts"]]
    columns: list[tuple[int, tuple[int, ...]]] = []
    for item in data["stock"]:
        patterns = _patterns(lengths, counts, item["length"] + kerf)
        if patterns is None:
            return None
        columns += [(item["price"], pattern) for pattern in patterns]
    matrix = np.array([pattern for _, pattern in columns]).T
    prices = np.array([price for price, _ in columns])
    found = milp(
        prices,
        constraints=LinearConstraint(matrix, lb=counts),
        bounds=Bounds(0),
        integrality=np.ones(len(columns)),
        options={"time_limit": seconds},
    )
    return None if found.x is None else (round(found.fun), int(-(-found.mip_dual_bound // 1)))


def _patterns(lengths: list[int], counts: list[int], room: int) -> list[tuple[int, ...]] | None:
    found: list[tuple[int, ...]] = []

    def deeper(at: int, left: int, taken: tuple[int, ...]) -> bool:
        if at == len(lengths):
            if all(n == c or left < length for n, c, length in zip(taken, counts, lengths, strict=True)):
                found.append(taken)
            return len(found) <= MOST_PATTERNS
        return all(
            deeper(at + 1, left - n * lengths[at], (*taken, n))
            for n in range(min(counts[at], left // lengths[at]), -1, -1)
        )

    return found if deeper(0, room, ()) else None
