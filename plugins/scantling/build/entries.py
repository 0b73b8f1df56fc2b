"""Finding again what was made of a plan.

An entry is named after the plan, the code, the author's choices and the part of the shop file that
the plan depends on: all stock that the plan's text mentions, and all articles, but the prices of
those alone that it buys. So another price touches the plans that pay it, and no others.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from scantling.build.cache import Cache, code_digest, digest
from scantling.build.job import Job, Made, laid_aside
from scantling.build.stored import find_result, keep_result
from scantling.source import SourceShop

KIND, WARES = "plans", "wares"
STOCK_SHELVES = ("lumber", "sheets", "pickets", "trim", "hardwood")
WARE_SHELVES = ("hardware", "finish")


def recall(cache: Cache, job: Job, shop: SourceShop) -> Made | None:
    """Return what was made of a plan from the same things before, or None."""
    first = _first_name(job)
    wares = find_result(cache, WARES, first)
    found = None if wares is None else find_result(cache, KIND, _name(first, job, shop, wares))
    return found if isinstance(found, Made) else None


def keep(cache: Cache, job: Job, shop: SourceShop, made: Made) -> Made:
    """Remember what was made of a plan, and return it with everything large laid aside."""
    first = _first_name(job)
    made = laid_aside(made, cache)
    keep_result(cache, WARES, first, made.wares)
    keep_result(cache, KIND, _name(first, job, shop, made.wares), made)
    return made


def _first_name(job: Job) -> str:
    pictures = (part for name, content in job.pictures.items() for part in (name, content))
    return digest(
        code_digest(), job.slug, job.folder, job.plan, repr(job.choices), str(job.with_paper), *pictures
    )


def _name(first: str, job: Job, shop: SourceShop, wares: tuple[str, ...]) -> str:
    if not isinstance(shop.data, dict) or shop.shop is None:
        return digest(first, job.shop)
    mine = relevant(shop.data, job.plan.decode("utf-8", "replace"), frozenset(wares))
    return digest(first, json.dumps(mine, sort_keys=True))


def relevant(shop: Mapping[str, Any], plan: str, wares: frozenset[str]) -> dict[str, Any]:
    """Return the part of a shop file's plain data that a plan depends on.

    Args:
        plan: the plan's text.
        wares: the articles that it buys.
    """
    mine = {
        key: value for key, value in shop.items() if key not in {*STOCK_SHELVES, *WARE_SHELVES, "price lists"}
    }
    for shelf in STOCK_SHELVES:
        mine[shelf] = {key: stock for key, stock in (shop.get(shelf) or {}).items() if key in plan}
    for shelf in WARE_SHELVES:
        mine[shelf] = {
            key: ware if key in wares else _without_price(ware)
            for key, ware in (shop.get(shelf) or {}).items()
        }
    return mine


def _without_price(ware: Any) -> Any:
    return {key: value for key, value in ware.items() if key != "price"} if isinstance(ware, dict) else ware
