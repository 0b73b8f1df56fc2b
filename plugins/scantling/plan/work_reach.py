"""Where on a part work is done, and whether the part is large enough for it."""

from __future__ import annotations

import re
from collections.abc import Iterator

from scantling.fault import Fault
from scantling.measure import Length, write_length
from scantling.plan.fitted import FittedPart, FittedWork
from scantling.words import say

_NEAR_END = re.compile(r"\b(?:lower|bottom|left|front) end\b")
_FAR_END = re.compile(r"\b(?:top|upper|right|back) end\b")
_OUTLINES = {"notch", "taper", "curve"}
"""The work that takes something off the outline of a part."""


def ends_worked(work: FittedWork) -> tuple[bool, bool]:
    """Return on which ends the work is done, near (lower, left, front) and far: both, unless one is named."""
    near, far = _NEAR_END.search(work.work.where), _FAR_END.search(work.work.where)
    return (near is not None, far is not None) if near or far else (True, True)


def is_at_far_end(work: FittedWork) -> bool:
    """Return whether the work is done on the top, right or back end alone."""
    return ends_worked(work) == (False, True)


def faults_of_reach(part: FittedPart, work: FittedWork) -> Iterator[Fault]:
    """Yield what is wrong with work on the outline that is longer or deeper than its part."""
    if work.work.kind not in _OUTLINES:
        return
    name, along = ("width", work.width) if work.work.kind == "notch" else ("length", work.length)
    if along is not None and along > part.length:
        yield _beyond(part, work, name, along, part.length)
    across = max(part.width, part.thick)
    if work.depth is not None and work.depth >= across:
        yield _beyond(part, work, "depth", work.depth, across)


def _beyond(part: FittedPart, work: FittedWork, name: str, measure: Length, whole: Length) -> Fault:
    what = say("'{name}' of the {kind} in '{part}'", name=name, kind=say(work.work.kind), part=part.id)
    message = say(
        "{what} comes to {shown} at this size, and the part measures {whole} there",
        what=what,
        shown=write_length(measure, denominator=64),
        whole=write_length(whole, denominator=64),
    )
    help_line = "narrow the range of sizes, or mend the formula"
    return Fault("beyond-part", message, work.work.place.at(name), help_line)
