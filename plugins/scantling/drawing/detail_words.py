"""What is done on a part, in words."""

from __future__ import annotations

from fractions import Fraction

from scantling.drawing.detail_face import runs_along
from scantling.measure import Display, Length, write_angle
from scantling.plan import FittedPart, FittedProse, FittedWork, Quoted
from scantling.report import write_measure
from scantling.words import mark, say


def end_words(part: FittedPart) -> str:
    """Return how a part's ends are cut: "mitre 33.9°, both leaning the same way"."""
    if part.ends is None:
        return say("square")
    left, right = (
        say(end.kind) if end.kind == "square" else f"{say(end.kind)} {write_angle(end.angle)}"
        for end in part.ends
    )
    both = left if left == right else say("{left} at the left, {right} at the right", left=left, right=right)
    if left != right or part.part.ends is None:
        return both
    return f"{both}, " + (
        say("both leaning the same way") if part.part.ends.parallel else say("leaning towards each other")
    )


def work_words(work: FittedWork, display: Display) -> str:
    """Return one piece of work in words: "dado, inside face: 3/4 in wide, 1/4 in deep, 3 in from the end"."""
    kind = work.work.kind
    round_hole = "holes" in kind and kind != "pocket holes"
    measures = [
        say("{count} of them", count=work.count) if work.count and work.count > 1 else "",
        say("{size} across" if round_hole else "{size} wide", size=write_measure(work.width, display))
        if work.width
        else "",
        say("{size} deep", size=write_measure(work.depth, display)) if work.depth else "",
        say("{size} long", size=display.length(work.length)) if work.length else "",
        _first_words(work, display) if work.from_end else "",
        say("{size} apart", size=display.length(work.apart)) if work.apart else "",
        _plain(work.note, display),
    ]
    told = ", ".join(measure for measure in measures if measure)
    where = f", {work.work.where}" if work.work.where else ""
    return f"{say(kind)}{where}" + (f": {told}" if told else "")


def _plain(prose: FittedProse, display: Display) -> str:
    """Return prose as plain words."""
    return "".join(
        piece if isinstance(piece, str) else _value(piece, display) for piece in prose.pieces
    ).strip()


def _value(quoted: Quoted, display: Display) -> str:
    value = quoted.value
    if isinstance(value, Length):
        return display.length(value)
    return str(int(value)) if isinstance(value, Fraction) and value.denominator == 1 else str(value)


def _first_words(work: FittedWork, display: Display) -> str:
    assert work.from_end is not None
    from_edge = runs_along(work) or work.work.kind == "pocket holes"
    told = mark("the first {size} from the edge") if from_edge else mark("the first {size} from the end")
    return say(told, size=display.length(work.from_end))
