"""Do grooves, dadoes and rabbets fit what goes into them, as thick as it really is?"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import length, quoted
from scantling.fault import Note, Severity
from scantling.measure import Length
from scantling.plan import FittedJoin, FittedPart, FittedWork
from scantling.words import say

LETS_IN = {"groove", "dado"}
_TONGUES = {"rabbet", "half-lap", "chamfer"}
LOOSE = Length.of_inches(Fraction(1, 64))
"""A dado wider than its panel by more than this is loose (common practice)."""


def _examine(subject: Subject) -> Iterator[Finding]:
    for join in subject.fitted.joins:
        first, second = (subject.fitted.part(name) for name in (join.join.first, join.join.second))
        if first is not None and second is not None and join.join.how in LETS_IN:
            yield from _joined(join, first, second)
    for part in subject.fitted.parts:
        yield from (_too_deep(part, work) for work in part.work if _is_too_deep(part, work))


def _joined(join: FittedJoin, first: FittedPart, second: FittedPart) -> Iterator[Finding]:
    how = join.join.how
    cut = _cut_for(first, second, how)
    if not cut:
        yield Finding(
            say(
                "'{first}' goes into a {how} of '{second}', which has none",
                first=first.id,
                how=say(how),
                second=second.id,
            ),
            join.join.place.at("join"),
            f"add the {how} to the 'work:' of '{second.id}'",
            (Note("its work stands here", second.part.place.key()),),
            about=(first.id, second.id),
        )
        return
    if any(work.work.kind in _TONGUES for work in first.work):
        return  # a tongue goes in, whose thickness nobody wrote
    fitting = [work for work in cut if _fits(first, work)]
    if not fitting:
        yield _misfit(first, second, min(cut, key=lambda work: abs(_width(work) - first.thick)))
        return
    depths = [work.depth for work in fitting if work.depth is not None]
    if join.depth is not None and depths and join.depth not in depths:
        yield Finding(
            say(
                "this join is {depth} deep, but the {how} of '{second}' is {there}",
                depth=length(join.depth),
                how=say(how),
                second=second.id,
                there=length(depths[0]),
            ),
            join.join.place.at("depth"),
            "give both one name under 'lengths:'",
            (Note(f"the {how} is here", fitting[0].work.place.at("depth")),),
            about=(first.id, second.id),
        )


def _cut_for(first: FittedPart, second: FittedPart, how: str) -> list[FittedWork]:
    """Return the grooves of the second part: those whose words name the first, if any do."""
    cut = [work for work in second.work if work.work.kind == how and work.width is not None]
    named = re.compile(rf"\b{re.escape(first.id.casefold())}s?\b")
    return [work for work in cut if named.search(work.work.where.casefold())] or cut


def _width(work: FittedWork) -> Length:
    return work.width if work.width is not None else Length(0)


def _fits(part: FittedPart, work: FittedWork) -> bool:
    return part.thick <= _width(work) <= part.thick + LOOSE


def _misfit(first: FittedPart, second: FittedPart, work: FittedWork) -> Finding:
    width, kind = _width(work), work.work.kind
    stock = quoted(first.part.source.stocks[:1]) if first.part.source.stocks else "it"
    if width < first.thick:
        said, severity = say("does not go in"), Severity.FAULT
    else:
        said, severity = say("is loose by {width}", width=length(width - first.thick)), Severity.WARNING
    return Finding(
        say(
            "this {kind} is {width} wide; '{first}' {said}: {stock} is {thick} thick",
            kind=say(kind),
            width=length(width),
            first=first.id,
            said=said,
            stock=stock,
            thick=length(first.thick),
        ),
        work.work.place.at("width"),
        f"write 'width: {first.id}.thick'",
        severity=severity,
        about=(first.id, second.id),
    )


def _is_too_deep(part: FittedPart, work: FittedWork) -> bool:
    where = work.work.where.casefold()
    in_face = "face" in where or not re.search(r"\b(?:end|ends|edge|edges)\b", where)
    return (
        in_face
        and work.work.kind in {*LETS_IN, "rabbet"}
        and work.depth is not None
        and part.thick * 2 < work.depth * 3
        and work.depth < part.thick  # as deep as that it goes through, which is told elsewhere
    )


def _too_deep(part: FittedPart, work: FittedWork) -> Finding:
    assert work.depth is not None
    return Finding(
        say(
            "this {kind} leaves {left} of '{part}', {whole} thick; a third of it should stay",
            kind=say(work.work.kind),
            left=length(part.thick - work.depth),
            part=part.id,
            whole=length(part.thick),
        ),
        work.work.place.at("depth"),
        "make it shallower: a third of the thickness is enough",
    )


GROOVE_FITS = Check(
    name="groove-fits",
    group="Wood",
    title="Does what goes into a groove fit, as thick as it really is?",
    meaning="Plywood sold as 3/4 in is mostly 23/32 in thick: a dado of 3/4 in is loose, and one for a "
    "thicker panel "
    "does not close. The groove must be there, as deep as the join says, and leave a third of its board.",
    mend="write the width as the part's own thickness: 'width: shelf.thick'",
    severity=Severity.WARNING,
    examine=_examine,
    source="Thickness of plywood: PS 1 (APA table of performance categories). Fit within 1/64 in and a "
    "third of the "
    "thickness left: common practice, no source.",
)
"""Compares each groove with the part that goes into it and the board that it is cut in."""
