"""What is wrong with plans beside each other: what two of them claim, tags spelled in two ways."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from scantling.fault import Place, Severity
from scantling.plan import slug_of
from scantling.source.diagnostic import Diagnostic, DiagnosticNote, Spot, spot_at
from scantling.source.loaded import SourcePlan


@dataclass(frozen=True, slots=True)
class Claim:
    """What a plan claims in a catalog, each with the place where it is written."""

    slug: str
    title: str
    """On one line; "" where there is none."""
    titled: Spot
    formerly: tuple[tuple[str, Spot], ...] = ()
    """Folders in which the plan stood before."""
    tags: tuple[tuple[str, Spot], ...] = ()


def claim_of(plan: SourcePlan) -> Claim:
    """Return what a plan claims; of a faulty one its folder and its title alone."""
    title = plan.data.get("title") if isinstance(plan.data, dict) else None
    words = " ".join(title.split()) if isinstance(title, str) else ""
    where = _spot(plan, Place(("title",)))
    if plan.plan is None:
        return Claim(plan.slug, words, where)
    return Claim(
        plan.slug,
        words,
        where,
        tuple(_each(plan, "formerly", plan.plan.formerly)),
        tuple(_each(plan, "tags", plan.plan.tags)),
    )


def _each(plan: SourcePlan, key: str, words: Iterable[str]) -> Iterator[tuple[str, Spot]]:
    for number, word in enumerate(words):
        yield word, _spot(plan, Place((key, number)))


def _spot(plan: SourcePlan, place: Place) -> Spot:
    return spot_at(plan.document, *plan.spans.resolve(place))


def check_together(claims: Iterable[Claim]) -> Iterator[Diagnostic]:
    """Yield what is wrong with the plans of a catalog beside each other."""
    claims = tuple(claims)
    yield from _folders(claims)
    yield from _titles(claims)
    yield from _former_folders(claims)
    yield from _tags(claims)


def _folders(claims: Iterable[Claim]) -> Iterator[Diagnostic]:
    for claim in claims:
        if claim.slug != slug_of(claim.slug):
            message = f"the folder's name '{claim.slug}' cannot be an address"
            help_line = f"rename the folder: {slug_of(claim.slug)}"
            yield Diagnostic("unusable-folder", Severity.FAULT, message, claim.titled, help_line)


def _titles(claims: Iterable[Claim]) -> Iterator[Diagnostic]:
    first: dict[str, Spot] = {}
    for claim in claims:
        key = claim.title.casefold()
        if key and key in first:
            notes = (DiagnosticNote("it is first used here", first[key]),)
            message = f"two plans are called '{claim.title}'"
            help_line = "give one of them another title"
            yield Diagnostic("named-twice", Severity.FAULT, message, claim.titled, help_line, notes)
        first.setdefault(key, claim.titled)


def _former_folders(claims: Iterable[Claim]) -> Iterator[Diagnostic]:
    """Yield a fault where a former address is another plan's, which its readers would not find."""
    now = {claim.slug: claim.titled for claim in claims}
    before: dict[str, Spot] = {}
    for claim in claims:
        for name, spot in claim.formerly:
            if name in now:
                notes = (DiagnosticNote("it is this plan's", now[name]),)
                message = f"the address '{name}' is in use"
                help_line = "leave it out, or give the other plan's folder another name"
                yield Diagnostic("address-taken", Severity.FAULT, message, spot, help_line, notes)
            elif name in before:
                notes = (DiagnosticNote("another plan says so here", before[name]),)
                message = f"two plans were formerly '{name}'"
                yield Diagnostic(
                    "address-taken", Severity.FAULT, message, spot, "leave it to one of them", notes
                )
            before.setdefault(name, spot)


def _tags(claims: Iterable[Claim]) -> Iterator[Diagnostic]:
    """Yield a warning where a tag was renamed in some plans and not in others, as far as spelling tells."""
    first: dict[str, tuple[str, Spot]] = {}
    told: set[str] = set()
    for claim in claims:
        for tag, spot in claim.tags:
            other, there = first.setdefault(_alike(tag), (tag, spot))
            if other != tag and tag not in told:
                told.add(tag)
                message = f"the tag '{tag}' is spelled '{other}' elsewhere"
                notes = (DiagnosticNote("it is spelled so here", there),)
                help_line = "spell it the same in all plans; a reader who looks for one misses the other"
                yield Diagnostic("tag-spelled-twice", Severity.WARNING, message, spot, help_line, notes)


def _alike(tag: str) -> str:
    """Return a tag without what people spell now so, now so: capitals, hyphens, the plural."""
    words = re.sub(r"[\s_-]+", " ", tag.casefold()).strip()
    return words.removesuffix("s")
