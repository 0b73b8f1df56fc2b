"""Do the steps use up the hardware that is bought, no more and no less?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.building import Need, building
from scantling.checks.check import Check, Finding, Subject
from scantling.fault import Note, Place, Severity, did_you_mean
from scantling.measure import write_number
from scantling.plan import FittedHardware
from scantling.words import counted, say

MOST_NOTES = 6
"""Places that are told of one count."""


def _examine(subject: Subject) -> Iterator[Finding]:
    if not subject.fitted.steps:
        return
    bought: dict[str, list[FittedHardware]] = {}
    for item in subject.fitted.hardware:
        bought.setdefault(item.ware, []).append(item)
    needed: dict[str, list[Need]] = {}
    for need in (need for needs in building(subject).needs for need in needs):
        needed.setdefault(need.ware, []).append(need)
    for ware, needs in needed.items():
        if ware not in bought:
            yield from (_not_bought(subject, need, bought) for need in needs)
    for ware, items in bought.items():
        yield from _used_up(subject, ware, items, needed.get(ware, []))


def _not_bought(subject: Subject, need: Need, bought: dict[str, list[FittedHardware]]) -> Finding:
    known = [*bought, *subject.plan.hardware]
    help_line = did_you_mean(need.use.name, known, kind="things on the materials list")
    if not help_line.startswith("did you mean"):
        help_line = f"add '{need.use.name}' under 'hardware:', or a join that takes it"
    return Finding(
        say("'{name}' is not on the materials list", name=need.use.name), need.use.place, help_line
    )


def _used_up(
    subject: Subject, ware: str, items: list[FittedHardware], needs: list[Need]
) -> Iterator[Finding]:
    place = _place_of(subject, ware, items)
    if not needs:
        is_listed = all(item.hardware is not None for item in items)
        yield Finding(
            say("no step says when '{ware}' is used", ware=ware),
            place,
            f"add 'needs: {ware}' to the step that takes it",
            severity=Severity.WARNING if is_listed else None,
        )
        return
    have = sum(item.count for item in items)
    counts = [need for need in needs if need.use.count is not None]
    want = sum(need.count for need in counts)
    is_all_counted = len(counts) == len(needs) and have > 0
    if (is_all_counted and want != have) or (have > 0 and want > have):
        more = say("more than") if want > have else say("fewer than")
        last = counts[-1]
        yield Finding(
            counted(
                "the step takes {want} of '{ware}', {more} the {have} on the materials list",
                "the steps take {want} of '{ware}', {more} the {have} on the materials list",
                len(counts),
                want=want,
                ware=ware,
                more=more,
                have=write_number(have),
            ),
            last.use.count_place,
            "mend the count after 'needs:', or what the joins and the hardware say",
            tuple(_sources(subject, ware, items))[:MOST_NOTES],
        )


def _sources(subject: Subject, ware: str, items: list[FittedHardware]) -> Iterator[Note]:
    """Yield where the pieces on the materials list come from: the plan's own entries, then each join."""
    for item in items:
        if item.hardware is not None and item.count:
            yield Note(f"{write_number(item.count)} are listed here", item.hardware.place.key())
    for join in subject.fitted.joins:
        if join.fastener == ware and join.fasteners:
            verb = "holds" if join.fasteners == 1 else "hold"
            yield Note(f"{join.fasteners} {verb} this join", join.join.place.at("join"))


def _place_of(subject: Subject, ware: str, items: list[FittedHardware]) -> Place:
    """Return where a ware comes into the plan: its own entry, a join, or a banded edge."""
    for item in items:
        if item.hardware is not None:
            return item.hardware.place.key()
    for join in subject.fitted.joins:
        if join.fastener == ware:
            return join.join.place.at("fastener" if join.join.fastener else "with")
    banded = next((part for part in subject.fitted.parts if part.part.bands), None)
    return banded.part.place.at("band").key() if banded else Place(("hardware",)).key()


HARDWARE_USED = Check(
    name="hardware-used",
    group="Counts",
    title="Do the steps use up the hardware that is bought?",
    meaning="Screws left over make a builder wonder what was forgotten; screws that are missing stop the "
    "work.",
    mend="say under each step what it needs",
    severity=Severity.FAULT,
    examine=_examine,
)
"""Counts what the steps need against the materials list."""
