"""Synthetic catalogs: the demo plans over and over, each time under another name and at another size."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

from scantling.measure import Length, write_fraction
from scantling.plan import Plan, Size
from scantling.source import SourcePlan, load_plan, load_shop

DEMO = Path(__file__).resolve().parent.parent.parent / "plans"


def write_synthetic(folder: Path, count: int) -> Path:
    """Write a catalog of `count` plans with three sizes each into `folder`, and return its folder of plans.

    Plans differ in their usual size, so that no two have the same cuts.
    """
    plans = folder / "plans"
    plans.mkdir(parents=True)
    shutil.copy(DEMO / "shop.yml", plans)
    shop = load_shop(DEMO / "shop.yml").shop
    sources = [load_plan(path, shop) for path in sorted(DEMO.glob("*/plan.md"))]
    for number in range(count):
        source = sources[number % len(sources)]
        home = plans / f"{source.slug}-{number:04}"
        home.mkdir()
        (home / "plan.md").write_text(_varied(source, number // len(sources), number), "utf-8")
    return plans


def _varied(source: SourcePlan, turn: int, number: int) -> str:
    assert source.plan is not None
    text = source.document.text
    size = _main_size(source.plan)
    if size is not None:
        usual = size.least + size.step * (turn % max(1, size.count_steps()))
        others = [size.most, size.least]
        text = _replaced(source, size, usual, [value for value in others if value != usual])
    text = re.sub(r"^formerly: .*\n", "", text, flags=re.MULTILINE)  # one address cannot lead to two plans
    # only one plan may stand where another did
    text = re.sub(r"^formerly:.*\n(?:[ -].*\n)*", "", text, flags=re.MULTILINE)
    return re.sub(r"^title: (.*)$", rf"title: \1, number {number}", text, count=1, flags=re.MULTILINE)


def _main_size(plan: Plan) -> Size | None:
    return next(
        (size for size in plan.sizes.values() if isinstance(size.usual, Length) and size.least != size.most),
        None,
    )


def _replaced(source: SourcePlan, size: Size, usual: Length, offered: list[Length]) -> str:
    """Return the plan's text with another usual value of one size, and two sizes offered in all."""
    text = source.document.text
    start, end = source.spans.resolve(size.place.at("usual"))
    text = text[:start] + _written(usual) + text[end:]
    text = re.sub(r",? *offer: \[[^\]]*\]", "", text)
    text = re.sub(r"^offer:\n(?:  - .*\n)+", "", text, flags=re.MULTILINE)
    written = ", ".join(f"{{{size.name}: {_written(value)}}}" for value in offered)
    return text.replace("\nparts:", f"\noffer: [{written}]\nparts:", 1)


def _written(length: Length) -> str:
    return f"{write_fraction(length.inches)} in"
