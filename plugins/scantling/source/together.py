"""What is wrong with plans beside each other: folders that are no addresses, titles that two plans share."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from scantling.fault import Place, Severity
from scantling.plan import slug_of
from scantling.source.diagnostic import Diagnostic, DiagnosticNote, Spot, spot_at
from scantling.source.loaded import SourcePlan


def check_together(plans: Iterable[SourcePlan]) -> Iterator[Diagnostic]:
    """Yield a fault for each folder that cannot be an address, and for each title that stands twice."""
    first: dict[str, Spot] = {}
    for plan in plans:
        where = _title(plan)
        if plan.slug != slug_of(plan.slug):
            message = f"the folder's name '{plan.slug}' cannot be an address"
            help_line = f"rename the folder: {slug_of(plan.slug)}"
            yield Diagnostic("unusable-folder", Severity.FAULT, message, where, help_line)
        title = plan.data.get("title") if isinstance(plan.data, dict) else None
        if not isinstance(title, str) or not title.strip():
            continue
        key = " ".join(title.casefold().split())
        if key in first:
            notes = (DiagnosticNote("it is first used here", first[key]),)
            message = f"two plans are called '{' '.join(title.split())}'"
            yield Diagnostic(
                "named-twice", Severity.FAULT, message, where, "give one of them another title", notes
            )
        else:
            first[key] = where


def _title(plan: SourcePlan) -> Spot:
    return spot_at(plan.document, *plan.spans.resolve(Place(("title",))))
