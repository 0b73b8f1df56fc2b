"""Do screws and nails bite enough, and stay inside the wood?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.boxes import Box, boxes, overlap
from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import length
from scantling.fault import Place, Severity
from scantling.measure import Length
from scantling.plan import FittedJoin, FittedPart, wanted_length
from scantling.words import mark, say

THROUGH = {"screws", "nails", "brads and glue"}
"""What goes straight through the first part into the second."""
POCKET = "pocket screws"
Said = tuple[str, Severity] | None
"""What is wrong with a fastener, and how much it matters."""


def bite(fastener: Length, held: Length) -> Length:
    """Return how much of a fastener is left for the second part, its head level with the first."""
    return fastener - held


def _examine(subject: Subject) -> Iterator[Finding]:
    for join in subject.fitted.joins:
        first, second = (subject.fitted.part(name) for name in (join.join.first, join.join.second))
        long = subject.shop.wares[join.fastener].long if join.fastener in subject.shop.wares else None
        if first is None or second is None or long is None or not join.fasteners:
            continue
        said: Said = None
        if join.join.how in THROUGH:
            said = _straight(subject, join, first, second, long)
        elif join.join.how == POCKET:
            said = _pocket(join, first, second, long)
        if said is not None:
            words, severity = said
            help_line = _help(join, first, second)
            yield Finding(words, _place(join), help_line, severity=severity, about=(first.id, second.id))


def _straight(
    subject: Subject, join: FittedJoin, first: FittedPart, second: FittedPart, long: Length
) -> Said:
    name, bites = join.fastener, bite(long, first.thick)
    if bites <= Length(0):
        words = say(
            "'{name}' is no longer than '{first}' is thick ({thick}): it holds nothing",
            name=name,
            first=first.id,
            thick=length(first.thick),
        )
        return words, Severity.FAULT
    holding = max(second.thick, _depth_there(subject, first, second) or second.thick)
    if bites > holding:
        return say(
            "'{name}' comes out of '{second}' by {bites}",
            name=name,
            second=second.id,
            bites=length(bites - holding),
        ), Severity.FAULT
    wanted = wanted_length(join.join.how, first.thick, second.thick)
    if wanted is not None and long < wanted[0]:
        least = length(bite(wanted[0], first.thick))
        return say(
            "'{name}' bites only {bites} into '{second}'; {least} is wanted",
            name=name,
            bites=length(bites),
            second=second.id,
            least=least,
        ), Severity.WARNING
    return None


def _pocket(join: FittedJoin, first: FittedPart, second: FittedPart, long: Length) -> Said:
    wanted = wanted_length(POCKET, first.thick, second.thick)
    if wanted is None or long == wanted[0]:
        return None
    told = (
        mark("'{fastener}' is long for a pocket hole in '{first}', {thick} thick")
        if long > wanted[0]
        else mark("'{fastener}' is short for a pocket hole in '{first}', {thick} thick")
    )
    words = say(
        told,
        fastener=join.fastener,
        first=first.id,
        thick=length(first.thick),
    )
    return words, Severity.WARNING


def _depth_there(subject: Subject, first: FittedPart, second: FittedPart) -> Length | None:
    """Return how deep the second part is along the way in which the two touch, where they are placed."""
    standing = boxes(subject)
    ours = [box for box in standing if box.part is first]
    theirs = [box for box in standing if box.part is second]
    axes = [axis for one in ours for other in theirs for axis in _touching(one, other)]
    if not axes:
        return None
    way = theirs[0].axes.index(axes[0])
    return (second.length, second.width, second.thick)[way]


def _touching(one: Box, other: Box) -> Iterator[int]:
    """Yield the axis across which two boxes touch face to face."""
    shared = [overlap(one, other, axis) for axis in range(3)]
    for axis in range(3):
        rest = [shared[side] for side in range(3) if side != axis]
        if abs(shared[axis]) < 1 / 64 and min(rest) > 1 / 64:
            yield axis


def _place(join: FittedJoin) -> Place:
    return join.join.place.at("fastener" if join.join.fastener else "with")


def _help(join: FittedJoin, first: FittedPart, second: FittedPart) -> str:
    wanted = wanted_length(join.join.how, first.thick, second.thick)
    if wanted is None:
        return ""
    least, most = wanted
    if least == most:
        return f"take one that is {length(least)} long"
    return f"take one that is {length(least)} to {length(most)} long"


FASTENER_LENGTH = Check(
    name="fastener-length",
    group="Fasteners",
    title="Do screws and nails bite enough, and stay inside?",
    meaning="A screw bites at least as deep as the piece it holds is thick, or half of what it goes "
    "into; a nail "
    "is three times as long as the piece it holds is thick; a brad holds only while the glue sets. The head "
    "is taken to be level with the face.",
    mend="name a fastener of another length with 'fastener:', or leave it out to have one chosen",
    severity=Severity.FAULT,
    examine=_examine,
    source="Nails: US Navy training manual NAVEDTRA 14119. Screws, brads and pocket screws: common "
    "practice, no source.",
)
"""Compares the length of each fastener with the thicknesses that it joins."""
