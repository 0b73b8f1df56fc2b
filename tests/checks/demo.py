"""The demonstration plans, whole and broken, as the checks see them."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from scantling.checks import CHECKS, examine, sweep
from scantling.measure import Length
from scantling.shop import Shop
from scantling.source import Diagnostic, SourcePlan, from_fault, load_plan, load_shop
from tests.checks.breaking import Sizes
from tests.checks.text import Text

PLANS = Path(__file__).resolve().parent.parent.parent / "plans"
SLUGS = sorted(path.parent.name for path in PLANS.glob("*/plan.md"))


@cache
def shop() -> Shop:
    """Return the demonstration shop."""
    found = load_shop(PLANS / "shop.yml").shop
    assert found is not None
    return found


@cache
def text_of(slug: str) -> Text:
    """Return a plan's text."""
    return Text((PLANS / slug / "plan.md").read_text("utf-8"))


@cache
def sizes_of(slug: str) -> Sizes:
    """Return what a plan's names come to at its usual size."""
    fitter = load_plan(PLANS / slug / "plan.md", shop()).fitter
    assert fitter is not None
    values = fitter.fit().values
    return Sizes({name: value.inches for name, value in values.items() if isinstance(value, Length)})


def read(text: str, folder: Path, slug: str) -> SourcePlan:
    """Return a plan of some text, written into a folder."""
    path = folder / "plan.md"
    path.write_text(text, "utf-8")
    return load_plan(path, shop(), slug=slug, root=folder)


def found_in(source: SourcePlan, *, sweeping: bool = False) -> list[Diagnostic]:
    """Return what the checks find in a plan at its usual size, or over all of its sizes."""
    assert source.fitter is not None
    faults = (sweep if sweeping else examine)(source.fitter, CHECKS)
    return [from_fault(fault, source.document, source.spans) for fault in faults]
