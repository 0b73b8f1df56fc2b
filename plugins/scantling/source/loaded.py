"""A shop file and a plan file as they were read."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from scantling.plan import Fitter, Plan
from scantling.shop import Shop
from scantling.source.diagnostic import Diagnostic
from scantling.source.document import Document
from scantling.source.spans import Spans
from scantling.source.yaml_data import Data


@dataclass(frozen=True, slots=True)
class SourceShop:
    """A shop file as it was read."""

    path: Path
    document: Document
    data: Data | None
    shop: Shop | None
    """None where it is faulty."""
    spans: Spans
    diagnostics: tuple[Diagnostic, ...]


@dataclass(frozen=True, slots=True)
class SourcePlan:
    """A plan file as it was read."""

    slug: str
    path: Path
    document: Document
    data: Data | None
    """Nested plain data whose scalars are text; None where the file does not parse."""
    plan: Plan | None
    """None where it is faulty."""
    spans: Spans
    fitter: Fitter | None = None
    """None where it is faulty, or where there is no shop."""
    diagnostics: tuple[Diagnostic, ...] = ()
