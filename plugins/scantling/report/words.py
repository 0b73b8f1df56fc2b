"""Values and short sentences as people read them; one place, so that page, paper and terminal agree."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from scantling.formula import Value
from scantling.measure import (
    Angle,
    Area,
    Display,
    Length,
    local_marks,
    write_angle,
    write_area,
    write_fraction,
    write_number,
)
from scantling.plan import FittedEnd, FittedPart, FittedProse
from scantling.report.trace import Origin
from scantling.words import counted, mark, say

SHEET_DENOMINATOR = 32
"""Plywood called 3/4 in measures some 23/32 in."""


def write_value(value: Value, display: Display) -> str:
    """Write any value of a formula."""
    if isinstance(value, bool):
        return say("yes") if value else say("no")
    if isinstance(value, Length):
        return write_measure(value, display)
    if isinstance(value, Area):
        return write_area(value, system=display.system)
    if isinstance(value, Angle):
        return write_angle(value)
    return value if isinstance(value, str) else local_marks(write_number(value))


def write_measure(length: Length, display: Display) -> str:
    """Write a length; under an inch to 1/32 in where that is exact: a groove for a sheet is cut to it."""
    is_small = abs(length) < Length(1) and SHEET_DENOMINATOR % length.inches.denominator == 0
    return write_thick(length, display) if is_small else display.length(length)


def plain_text(prose: FittedProse, display: Display) -> str:
    """Return prose as its author wrote it, with the quotes filled in."""
    return "".join(
        piece if isinstance(piece, str) else write_value(piece.value, display) for piece in prose.pieces
    )


def exact_inches(length: Length) -> str:
    """Return a length in inches, exactly: `35 1/2`."""
    return write_fraction(length.inches)


def write_thick(length: Length, display: Display) -> str:
    """Write a thickness, to 1/32 in at least: sheets are sold thinner than their name by that much."""
    if display.system == "in" and display.denominator < SHEET_DENOMINATOR:
        return Display("in", SHEET_DENOMINATOR).length(length)
    return display.length(length)


def percent(share: Fraction) -> str:
    """Return a share in whole percent, rounded half up."""
    return f"{int(share * 100 + Fraction(1, 2))} %"


def end_words(ends: tuple[FittedEnd, FittedEnd] | None, *, parallel: bool) -> str:
    """Say how the ends are cut: "mitre 45° at both ends, parallel"."""
    if ends is None:
        return ""
    left, right = ends
    if left == right:
        told = say("{end} at both ends", end=_end(left))
    else:
        told = say("{left} at the left end, {right} at the right", left=_end(left), right=_end(right))
    return told + (say(", parallel") if parallel else "")


def _end(end: FittedEnd) -> str:
    return say(end.kind) if end.kind == "square" else f"{say(end.kind)} {write_angle(end.angle)}"


def part_notes(part: FittedPart, display: Display) -> list[str]:
    """Say everything about a part that its three sizes do not: ends, edges, blank, work."""
    notes = []
    if part.ends is not None and part.part.ends is not None:
        notes.append(end_words(part.ends, parallel=part.part.ends.parallel))
    if part.part.bands:
        notes.append(say("banded: {edges}", edges=_edge_words(part.part.bands)))
    if part.is_trimmed:
        notes.append(_blank_words(part, display))
    if part.blank.least_across < part.blank.across:
        notes.append(say("may end up a kerf narrower"))
    notes += [_work_words(part, index, display) for index in range(len(part.work))]
    if part.note:
        notes.append(plain_text(part.note, display))
    return notes


def _edge_words(bands: tuple[str, ...]) -> str:
    """Say which edges are banded: "one long edge, both short edges"."""
    if len(bands) == len(_EDGES) * 2:
        return say("all edges")
    counts = [(told, sum(band.startswith(kind) for band in bands)) for kind, told in _EDGES.items()]
    return ", ".join(say(told[count - 1]) for told, count in counts if count)


_EDGES = {
    "long": (mark("one long edge"), mark("both long edges")),
    "short": (mark("one short edge"), mark("both short edges")),
}


def _blank_words(part: FittedPart, display: Display) -> str:
    size = f"{display.length(part.blank.along)} × {display.length(part.blank.across)}"
    glue_up = part.part.glue_up
    if glue_up is None:
        return say("cut {size}, trim to size", size=size)
    pieces = part.blank.pieces
    if glue_up.how == "layers":
        return say(
            "glue up from {pieces} layers, each cut {size}, then trim to size", pieces=pieces, size=size
        )
    return say(
        "glue up from {pieces} strips, edge to edge, each cut {size}, then trim to size",
        pieces=pieces,
        size=size,
    )


def _work_words(part: FittedPart, index: int, display: Display) -> str:
    work = part.work[index]
    kind = say(work.work.kind)
    words = [kind if work.count in (None, 1) else f"{work.count} × {kind}"]
    for measure, told in (
        (work.width, "{size} wide"),
        (work.depth, "{size} deep"),
        (work.length, "{size} long"),
    ):
        if measure is not None:
            words.append(say(told, size=write_measure(measure, display)))
    if work.work.where:
        words.append(work.work.where)
    if work.from_end is not None:
        words.append(say("first at {size}", size=display.length(work.from_end)))
    if work.apart is not None:
        words.append(say("{size} apart", size=display.length(work.apart)))
    if work.note:
        words.append(plain_text(work.note, display))
    return ", ".join(words)


def origin_words(origin: Origin, display: Display) -> str:
    """Say where some blanks come from: "2 ripped from 1x6 no. 1", "4 from the offcuts of leg"."""
    if origin.board is None:
        return say(
            "{count} from the offcuts of {part}", count=origin.count, part=origin.part.part.source.offcut_of
        )
    is_ripped = origin.is_ripped and not origin.board.stock.is_sheet
    told = mark("{count} ripped from {board}") if is_ripped else mark("{count} cut from {board}")
    return say(told, count=origin.count, board=origin.board.name) + _shortfall(origin, display)


FEW_BOARDS = 2
"""Boards in a row that give as many blanks each are told one by one up to so many."""


def origins_words(origins: Iterable[Origin], display: Display) -> list[str]:
    """Say where blanks come from, boards in a row together: "1 cut from each of 1x6 no. 1 to no. 6"."""
    told: list[str] = []
    for run in _runs(origins, display):
        first, last = run[0], run[-1]
        if len(run) <= FEW_BOARDS or first.board is None or last.board is None:
            told += [origin_words(origin, display) for origin in run]
            continue
        ripped = first.is_ripped and not first.board.stock.is_sheet
        words = (
            mark("{count} ripped from each of {board} to no. {last}")
            if ripped
            else mark("{count} cut from each of {board} to no. {last}")
        )
        told.append(say(words, count=first.count, board=first.board.name, last=last.board.number))
    return told


def _runs(origins: Iterable[Origin], display: Display) -> list[list[Origin]]:
    """Return origins in runs of boards that follow each other and are told alike but for their numbers."""
    runs: list[list[Origin]] = []
    for origin in origins:
        before = runs[-1][-1] if runs else None
        short = any(_shortfall(one, display) for one in (before, origin) if one is not None)
        if before is not None and _follows(origin, before) and not short:
            runs[-1].append(origin)
        else:
            runs.append([origin])
    return runs


def _follows(origin: Origin, before: Origin) -> bool:
    one, other = before.board, origin.board
    return (
        one is not None
        and other is not None
        and one.stock.key == other.stock.key
        and other.number == one.number + 1
        and (before.count, before.is_ripped) == (origin.count, origin.is_ripped)
    )


def _shortfall(origin: Origin, display: Display) -> str:
    """Say how wide those end up that the kerf leaves narrower than asked."""
    narrow = [piece for piece in origin.pieces if piece.short_by > Length(0)]
    widths = dict.fromkeys(display.length(piece.width) for piece in narrow)
    if not narrow:
        return ""
    wide = say(" and ").join(widths)
    if len(narrow) == origin.count:
        return counted("; ends up {wide} wide", "; end up {wide} wide", len(narrow), wide=wide)
    return counted(
        "; {count} of them ends up {wide} wide",
        "; {count} of them end up {wide} wide",
        len(narrow),
        wide=wide,
    )
